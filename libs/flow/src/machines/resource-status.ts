import type { ResourceStatus } from '../state/ticket.js';
import type { Machine } from './machine.js';

/** Status of what passes between steps: the part of the standard's seven values that a plant's own products go through. */
export const resourceStatus: Machine<ResourceStatus> = {
  name: 'resource status',
  initial: 'Unavailable',
  moves: {
    Unavailable: ['Available', 'InUse'],
    InUse: ['Available', 'Unavailable'],
    Available: ['InUse', 'Unavailable'],
  },
};
