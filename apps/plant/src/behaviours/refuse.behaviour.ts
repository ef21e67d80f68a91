import type { Behaviour } from './behaviour.js';

const NOT_CAPABLE = 101;

export const refuse: Behaviour = {
  name: 'refuse',
  does: 'refuses submission n',
  make: (n) => ({
    refuses: (submission) =>
      submission === n ? { code: NOT_CAPABLE, text: 'This machine cannot do this job.' } : null,
  }),
};
