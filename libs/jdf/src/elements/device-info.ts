import {
  child,
  children,
  duration,
  number,
  type Of,
  oneOf,
  optional,
  required,
  text,
  time,
  tokens,
} from '../codec/index.js';
import { deviceStatuses } from '../enumerations.js';
import { fullElement } from './base.js';
import { device, employee } from './device.js';
import { jobPhase, moduleStatus } from './job-phase.js';
import { activity, deviceOperationModes, event } from './work.js';

/** How a device stands: its status, speed and counters (pieces an hour, pieces), and the phases of the jobs on it. */
export const deviceInfo = fullElement('DeviceInfo', {
  deviceStatus: required('DeviceStatus', oneOf(deviceStatuses)),
  statusDetails: optional('StatusDetails', text),
  deviceId: optional('DeviceID', text),
  deviceCondition: optional('DeviceCondition', oneOf(['OK', 'NeedsAttention', 'Failure', 'OffLine'])),
  deviceOperationMode: optional('DeviceOperationMode', oneOf(deviceOperationModes)),
  /** What all amounts and counters of this device count. */
  counterUnit: optional('CounterUnit', text),
  /** Since power-on or reset. */
  productionCounter: optional('ProductionCounter', number),
  /** Over the device's life. */
  totalProductionCounter: optional('TotalProductionCounter', number),
  speedPerHour: optional('Speed', number),
  hourCounterS: optional('HourCounter', duration),
  powerOnTime: optional('PowerOnTime', time),
  idleStartTime: optional('IdleStartTime', time),
  endTime: optional('EndTime', time),
  toolIds: optional('ToolIDs', tokens),
  jobPhases: children(jobPhase),
  modules: children(moduleStatus),
  activities: children(activity),
  employees: children(employee),
  events: children(event),
  device: child(device),
});
export type DeviceInfo = Of<typeof deviceInfo>;
