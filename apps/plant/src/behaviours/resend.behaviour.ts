import type { Behaviour } from './behaviour.js';

export const resend: Behaviour = {
  name: 'resend',
  does: 'sends every signal twice, and old ones again after a lost connection',
  make: () => ({ repeats: true }),
};
