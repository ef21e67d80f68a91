import { child, requiredChild } from '../codec/index.js';
import { notification as notificationElement } from '../elements/notification.js';
import { notificationFilter } from '../elements/notification-filter.js';
import { content, perhaps } from '../jmf/content.js';

/** What a device says of itself (events, warnings, faults), and the query that subscribes to it. */
export const notification = {
  QueryNotification: perhaps(notificationFilter, {}),
  SignalNotification: content({
    notification: requiredChild(notificationElement),
    filter: child(notificationFilter),
  }),
};
