import {
  children,
  elementCodec,
  integers,
  type Of,
  oneOf,
  optional,
  required,
  text,
  time,
} from '../codec/index.js';
import { notificationClasses } from '../enumerations.js';
import { comment, part } from './part.js';

/** An event, a warning or a fault, in words: an audit of a node, a signal, or the reason in a response. */
export const notification = elementCodec('Notification', {
  class: required('Class', oneOf(notificationClasses)),
  timeStamp: required('TimeStamp', time),
  id: optional('ID', text),
  type: optional('Type', text),
  agentName: optional('AgentName', text),
  author: optional('Author', text),
  queueEntryId: optional('QueueEntryID', text),
  jobId: optional('JobID', text),
  jobPartId: optional('JobPartID', text),
  moduleId: optional('ModuleID', text),
  combinedProcessIndex: optional('CombinedProcessIndex', integers),
  parts: children(part),
  comment,
});
export type Notification = Of<typeof notification>;
