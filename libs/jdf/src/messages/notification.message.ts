import { child, requiredChild } from '../codec/index.js';
import { notification as notificationElement } from '../elements/notification.js';
import { notificationFilter } from '../elements/notification-filter.js';
import { content, perhaps } from '../jmf/content.js';

export const notification = {
  QueryNotification: perhaps(notificationFilter, {}),
  SignalNotification: content({
    notification: requiredChild(notificationElement),
    filter: child(notificationFilter),
  }),
};
