import type { DeviceStatus } from '../state/device.js';
import type { Machine } from './machine.js';

const any: readonly DeviceStatus[] = ['Unknown', 'Idle', 'Down', 'Setup', 'Running', 'Cleanup', 'Stopped'];

/** Status of a device. A device says what it is; none of its moves is refused, for the hall is right and the book is not. */
export const deviceStatus: Machine<DeviceStatus> = {
  name: 'device status',
  initial: 'Unknown',
  moves: { Unknown: any, Idle: any, Down: any, Setup: any, Running: any, Cleanup: any, Stopped: any },
};
