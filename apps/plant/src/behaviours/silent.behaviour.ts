import type { Behaviour } from './behaviour.js';

export const silent: Behaviour = {
  name: 'silent',
  does: 'takes connections, but from message n on it neither answers nor says anything',
  make: (n) => ({ silentFrom: n }),
};
