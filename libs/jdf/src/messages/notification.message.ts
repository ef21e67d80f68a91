import {
  child,
  children,
  elementCodec,
  optional,
  requiredChild,
  someOf,
  text,
  tokens,
} from '../codec/index.js';
import { notification as notificationElement } from '../elements/notification.js';
import { part } from '../elements/part.js';
import { notificationClasses } from '../enumerations.js';
import { content, perhaps } from '../jmf/content.js';

const filter = elementCodec('NotificationFilter', {
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

export const notification = {
  QueryNotification: perhaps(filter, {}),
  SignalNotification: content({
    notification: requiredChild(notificationElement),
    filter: child(filter),
  }),
};
