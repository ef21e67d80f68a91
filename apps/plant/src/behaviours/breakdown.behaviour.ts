import type { Behaviour } from './behaviour.js';

const REPAIR_S = 1800;

export const breakdown: Behaviour = {
  name: 'breakdown',
  does: 'breaks down in the middle of run n, is repaired and goes on',
  make: (n) => ({
    stop: (run) =>
      run === n
        ? {
            statusDetails: 'BreakDown',
            durationS: REPAIR_S,
            waste: 0,
            notice: { class: 'Warning', text: 'The drive has tripped; a technician is called.' },
          }
        : null,
  }),
};
