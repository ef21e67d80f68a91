import { child, children, type Of, optional, someOf, text } from '../codec/index.js';
import { fullElement } from '../elements/base.js';
import { notificationFilter } from '../elements/notification-filter.js';
import { notificationClasses } from '../enumerations.js';
import { content, perhaps, signal } from '../jmf/content.js';

/** A kind of notification that a device sends. */
const definition = fullElement('NotificationDef', {
  classes: optional('Classes', someOf(notificationClasses)),
  type: optional('Type', text),
  signalType: optional('SignalType', text),
});
export type NotificationDefinition = Of<typeof definition>;

/** Which notifications there are. Until 1.4. */
export const events = {
  QueryEvents: perhaps(notificationFilter, {}),
  SignalEvents: signal({ filter: child(notificationFilter), definitions: children(definition) }),
  ResponseEvents: content({ definitions: children(definition) }),
};
