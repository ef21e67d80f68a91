import { type DriverKind, taken } from '../device-driver.js';

/**
 * Work that a person does: nothing is sent, the step simply stands on that person's list under its own id. Holding and
 * resuming happen on the list, so they are always possible.
 */
export const bench: DriverKind = {
  name: 'bench',
  make: () => ({
    name: 'bench',
    abilities: { hold: true, abort: true, queueStatus: false },
    submit: async (_device, parcel) => taken(parcel.stepId),
    instruct: async (_device, deviceEntryId) => taken(deviceEntryId),
    queueStatus: async () => ({ kind: 'unknown' }),
  }),
};
