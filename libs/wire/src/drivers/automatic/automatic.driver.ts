import { type DriverKind, taken } from '../device-driver.js';

/**
 * A workstation of this server's own that works by itself, such as imposing and separating. Nothing is sent; the engine
 * lets the planned time pass and calls the step done.
 */
export const automatic: DriverKind = {
  name: 'automatic',
  make: () => ({
    name: 'automatic',
    abilities: { hold: true, abort: true, queueStatus: false },
    submit: async (_device, parcel) => taken(parcel.stepId),
    instruct: async (_device, deviceEntryId) => taken(deviceEntryId),
    queueStatus: async () => ({ kind: 'unknown' }),
  }),
};
