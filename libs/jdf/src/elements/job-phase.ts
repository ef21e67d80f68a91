import {
  child,
  children,
  duration,
  integers,
  keptOne,
  named,
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
import { fullElement } from './base.js';
import { employee } from './device.js';
import { part } from './part.js';
import { activity, costCenter, gangSource, misDetails } from './work.js';

/** The state of modules of a device, such as its printing units. */
export const moduleStatus = fullElement('ModuleStatus', {
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
export const jobPhase = fullElement('JobPhase', {
  status: required('Status', oneOf(nodeStatuses)),
  statusDetails: optional('StatusDetails', text),
  activation: optional('Activation', oneOf(activations)),
  jobId: optional('JobID', text),
  jobPartId: optional('JobPartID', text),
  queueEntryId: optional('QueueEntryID', text),
  workStepId: optional('WorkStepID', text),
  relatedJobId: optional('RelatedJobID', text),
  relatedJobPartId: optional('RelatedJobPartID', text),
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
  toolIds: optional('ToolIDs', tokens),
  /** Where the ticket is. */
  url: optional('URL', text),
  parts: children(part),
  modules: children(moduleStatus),
  activities: children(activity),
  costCenter: child(costCenter),
  misDetails: child(misDetails),
  gangSources: children(gangSource),
  /** The node itself, as it stands in the message. */
  node: keptOne(named('JDF')),
});
export type JobPhase = Of<typeof jobPhase>;
