import { children, optional, someOf, text, tokens } from '../codec/index.js';
import { notificationClasses } from '../enumerations.js';
import { fullElement } from './base.js';
import { part } from './part.js';

/** Which notifications are wanted: by class, type, device and job. */
export const notificationFilter = fullElement('NotificationFilter', {
  types: optional('Types', tokens),
  classes: optional('Classes', someOf(notificationClasses)),
  signalTypes: optional('SignalTypes', tokens),
  milestoneTypes: optional('MilestoneTypes', tokens),
  deviceId: optional('DeviceID', text),
  jobId: optional('JobID', text),
  jobPartId: optional('JobPartID', text),
  queueEntryId: optional('QueueEntryID', text),
  parts: children(part),
});
