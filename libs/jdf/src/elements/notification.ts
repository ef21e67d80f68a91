import {
  child,
  children,
  elementCodec,
  integer,
  integers,
  type Of,
  oneOf,
  optional,
  required,
  text,
  time,
} from '../codec/index.js';
import { notificationClasses } from '../enumerations.js';
import { base, fullElement } from './base.js';
import { costCenter, employee } from './device.js';
import { part } from './part.js';
import { event } from './work.js';

// Of what every element may have, it has the elements only.
const errorData = elementCodec('ErrorData', {
  comment: base.comment,
  generalIds: base.generalIds,
  errorType: required('ErrorType', oneOf(['Invalid', 'Missing', 'Unsupported'])),
  /** XPath of what is wrong, and of what in which document. */
  path: optional('Path', text),
  errorUrl: optional('ErrorURL', text),
  /** What a right value looks like. */
  fixExpression: optional('FixExpression', text),
});

const errorDetails = fullElement('Error', {
  errorId: required('ErrorID', text),
  resend: optional('Resend', oneOf(['Required', 'Prohibited'])),
  returnCode: optional('ReturnCode', integer),
  data: children(errorData),
});

const milestone = fullElement('Milestone', {
  milestoneType: optional('MilestoneType', text),
  typeAmount: optional('TypeAmount', integer),
});

const counterReset = fullElement('CounterReset', {
  counterId: optional('CounterID', text),
  lastCount: optional('LastCount', integer),
});

const systemTimeSet = fullElement('SystemTimeSet', {
  newTime: required('NewTime', time),
  oldTime: optional('OldTime', time),
});

/** An event, a warning or a fault, in words: an audit of a node, a signal, or the reason in a response. */
export const notification = fullElement('Notification', {
  class: required('Class', oneOf(notificationClasses)),
  timeStamp: required('TimeStamp', time),
  id: optional('ID', text),
  /** Which of the details there is. */
  type: optional('Type', text),
  agentName: optional('AgentName', text),
  agentVersion: optional('AgentVersion', text),
  author: optional('Author', text),
  refId: optional('refID', text),
  spawnId: optional('SpawnID', text),
  queueEntryId: optional('QueueEntryID', text),
  jobId: optional('JobID', text),
  jobPartId: optional('JobPartID', text),
  moduleId: optional('ModuleID', text),
  moduleIndex: optional('ModuleIndex', text),
  moduleType: optional('ModuleType', text),
  combinedProcessIndex: optional('CombinedProcessIndex', integers),
  parts: children(part),
  employees: children(employee),
  costCenter: child(costCenter),
  barcode: child(fullElement('Barcode', { code: required('Code', text) })),
  functionKey: child(fullElement('FCNKey', { key: required('Key', integer) })),
  milestone: child(milestone),
  counterReset: child(counterReset),
  systemTimeSet: child(systemTimeSet),
  error: child(errorDetails),
  event: child(event),
});
export type Notification = Of<typeof notification>;
