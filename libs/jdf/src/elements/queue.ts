import {
  children,
  integer,
  kept,
  named,
  type Of,
  oneOf,
  optional,
  percent,
  required,
  someOf,
  text,
  time,
  tokens,
} from '../codec/index.js';
import { activations, queueEntryStatuses, queueStatuses } from '../enumerations.js';
import { fullElement } from './base.js';
import { device } from './device.js';
import { jobPhase } from './job-phase.js';
import { part } from './part.js';
import { gangSource } from './work.js';

/** Whether an entry may be printed together with others, and whether it waits for them. */
export const gangPolicies = ['Gang', 'GangAndForce', 'NoGang'] as const;

/** One job in the queue of a device: its status, priority (0 to 100), place and times. */
export const queueEntry = fullElement('QueueEntry', {
  queueEntryId: required('QueueEntryID', text),
  status: required('Status', oneOf(queueEntryStatuses)),
  statusDetails: optional('StatusDetails', text),
  activation: optional('Activation', oneOf(activations)),
  jobId: optional('JobID', text),
  jobPartId: optional('JobPartID', text),
  deviceId: optional('DeviceID', text),
  /** 0 to 100, 100 first; 1 where left out. */
  priority: optional('Priority', percent),
  submissionTime: optional('SubmissionTime', time),
  startTime: optional('StartTime', time),
  endTime: optional('EndTime', time),
  relatedJobId: optional('RelatedJobID', text),
  relatedJobPartId: optional('RelatedJobPartID', text),
  gangName: optional('GangName', text),
  gangPolicy: optional('GangPolicy', oneOf(gangPolicies)),
  gangSources: children(gangSource),
  parts: children(part),
  jobPhases: children(jobPhase),
  previews: kept(named('Preview', 'PreviewRef')),
});
export type QueueEntry = Of<typeof queueEntry>;

/** The queue of a device: its status, and its entries as far as they are asked for. */
export const queue = fullElement('Queue', {
  deviceId: required('DeviceID', text),
  status: required('Status', oneOf(queueStatuses)),
  queueSize: optional('QueueSize', integer),
  maxQueueSize: optional('MaxQueueSize', integer),
  devices: children(device),
  entries: children(queueEntry),
});
export type Queue = Of<typeof queue>;

const queueEntryDef = fullElement('QueueEntryDef', { queueEntryId: required('QueueEntryID', text) });

/** Which queue entries are meant; all conditions must hold. */
export const queueFilter = fullElement('QueueFilter', {
  queueEntryDetails: optional('QueueEntryDetails', oneOf(['None', 'Brief', 'JobPhase', 'JDF'])),
  statusList: optional('StatusList', someOf(queueEntryStatuses)),
  activation: optional('Activation', oneOf(activations)),
  jobId: optional('JobID', text),
  jobPartId: optional('JobPartID', text),
  minPriority: optional('MinPriority', integer),
  maxPriority: optional('MaxPriority', integer),
  olderThan: optional('OlderThan', time),
  newerThan: optional('NewerThan', time),
  firstEntry: optional('FirstEntry', text),
  lastEntry: optional('LastEntry', text),
  maxEntries: optional('MaxEntries', integer),
  gangNames: optional('GangNames', tokens),
  updateGranularity: optional('UpdateGranularity', oneOf(['All', 'ChangesOnly'])),
  /** Which previews the entries shall have. */
  previewUsages: optional(
    'PreviewUsages',
    someOf(['3D', 'Animation', 'Separation', 'SeparationRaw', 'SeparatedThumbNail', 'ThumbNail', 'Viewable']),
  ),
  entries: children(queueEntryDef),
  gangSources: children(gangSource),
  devices: children(device),
  parts: children(part),
});
export type QueueFilter = Of<typeof queueFilter>;

export { queueEntryDef };
