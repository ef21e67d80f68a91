import type { Behaviour } from './behaviour.js';

export const forget: Behaviour = {
  name: 'forget',
  does: 'has lost its queue after a restart',
  make: () => ({ forgets: true }),
};
