import {
  child,
  children,
  duration,
  elementCodec,
  integers,
  number,
  type Of,
  oneOf,
  optional,
  required,
  text,
  time,
  tokens,
} from '../codec/index.js';
import { activations, deviceStatuses, nodeStatuses } from '../enumerations.js';
import { costCenter, device, employee, misDetails } from './device.js';
import { part } from './part.js';

/** The state of modules of a device, such as its printing units. */
export const moduleStatus = elementCodec('ModuleStatus', {
  deviceStatus: required('DeviceStatus', oneOf(deviceStatuses)),
  statusDetails: optional('StatusDetails', text),
  moduleId: optional('ModuleID', text),
  /** A range list, from 0: "0 ~ 3 6". */
  moduleIndex: optional('ModuleIndex', text),
  moduleType: optional('ModuleType', text),
  combinedProcessIndex: optional('CombinedProcessIndex', integers),
  employees: children(employee),
});
export type ModuleStatus = Of<typeof moduleStatus>;

/** One job on a device: `amount` and `waste` count since `startTime`, `phaseAmount` and `phaseWaste` since `phaseStartTime`. */
export const jobPhase = elementCodec('JobPhase', {
  status: required('Status', oneOf(nodeStatuses)),
  statusDetails: optional('StatusDetails', text),
  activation: optional('Activation', oneOf(activations)),
  jobId: optional('JobID', text),
  jobPartId: optional('JobPartID', text),
  queueEntryId: optional('QueueEntryID', text),
  workStepId: optional('WorkStepID', text),
  spawnId: optional('SpawnID', text),
  startTime: optional('StartTime', time),
  endTime: optional('EndTime', time),
  phaseStartTime: optional('PhaseStartTime', time),
  /** Good pieces. */
  amount: optional('Amount', number),
  waste: optional('Waste', number),
  phaseAmount: optional('PhaseAmount', number),
  phaseWaste: optional('PhaseWaste', number),
  /** Planned pieces. */
  totalAmount: optional('TotalAmount', number),
  /** 0 to 100. */
  percentCompleted: optional('PercentCompleted', number),
  restTimeS: optional('RestTime', duration),
  speedPerHour: optional('Speed', number),
  deadLine: optional('DeadLine', oneOf(['InTime', 'Warning', 'Late'])),
  url: optional('URL', text),
  parts: children(part),
  modules: children(moduleStatus),
  costCenter: child(costCenter),
  misDetails: child(misDetails),
});
export type JobPhase = Of<typeof jobPhase>;

export const deviceInfo = elementCodec('DeviceInfo', {
  deviceStatus: required('DeviceStatus', oneOf(deviceStatuses)),
  statusDetails: optional('StatusDetails', text),
  deviceId: optional('DeviceID', text),
  deviceCondition: optional('DeviceCondition', oneOf(['OK', 'NeedsAttention', 'Failure', 'OffLine'])),
  deviceOperationMode: optional('DeviceOperationMode', oneOf(['Productive', 'NonProductive', 'Maintenance'])),
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
  employees: children(employee),
  device: child(device),
});
export type DeviceInfo = Of<typeof deviceInfo>;
