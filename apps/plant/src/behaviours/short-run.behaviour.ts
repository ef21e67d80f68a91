import type { Behaviour } from './behaviour.js';

const THERE = 0.6;

export const shortRun: Behaviour = {
  name: 'shortRun',
  does: 'finds too little material in run n and ends short',
  make: (n) => ({ inputShare: (run) => (run === n ? THERE : 1) }),
};
