export { type Behaviour, behaviours } from './behaviours/index.js';
export type { Answered, Send } from './device/outbox.js';
export {
  type SimulatedDevice,
  type SimulatedDeviceOptions,
  simulatedDevice,
} from './device/simulated-device.js';
export type { DeviceState } from './device/state.js';
export { type DeviceKind, kinds, type Profile, profiles } from './profiles/index.js';
export { type DeviceOptions, type RunningDevice, runDevice } from './shell/run-device.js';
export {
  checkDevices,
  type PlantDevice,
  type PlantOptions,
  type RunningPlant,
  runPlant,
} from './shell/run-plant.js';
