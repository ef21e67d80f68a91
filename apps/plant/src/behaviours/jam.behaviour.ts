import type { Behaviour } from './behaviour.js';

export const jam: Behaviour = {
  name: 'jam',
  does: 'has a jam in the middle of run n that spoils a few pieces',
  make: (n) => ({
    stop: (run) =>
      run === n
        ? {
            statusDetails: 'PaperJam',
            durationS: 240,
            waste: 5,
            notice: {
              class: 'Event',
              text: 'A jam is being cleared; the machine is stopped and secured as its manual says.',
            },
          }
        : null,
  }),
};
