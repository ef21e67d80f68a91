import type { Behaviour } from './behaviour.js';

export const slow: Behaviour = {
  name: 'slow',
  does: 'takes n times as long for everything (with 1: three times)',
  make: (n) => ({ slowness: n > 1 ? n : 3 }),
};
