import { child, children, type Of, optional, requiredChild, text, tokens } from '../codec/index.js';
import { fullElement } from '../elements/base.js';
import { part } from '../elements/part.js';
import { subscription } from '../elements/subscription.js';
import { content, perhaps, signal } from '../jmf/content.js';

/** Which channels are asked for; all conditions must hold. */
const filter = fullElement('SubscriptionFilter', {
  channelId: optional('ChannelID', text),
  deviceId: optional('DeviceID', text),
  families: optional('Families', tokens),
  jobId: optional('JobID', text),
  jobPartId: optional('JobPartID', text),
  messageTypes: optional('MessageTypes', tokens),
  queueEntryId: optional('QueueEntryID', text),
  url: optional('URL', text),
  parts: children(part),
});

/** A channel that is open. */
const info = fullElement('SubscriptionInfo', {
  /** ID of the query or registration that subscribed. */
  channelId: optional('ChannelID', text),
  senderId: optional('SenderID', text),
  family: optional('Family', text),
  messageType: optional('MessageType', text),
  jobId: optional('JobID', text),
  jobPartId: optional('JobPartID', text),
  queueEntryId: optional('QueueEntryID', text),
  languages: optional('Languages', tokens),
  parts: children(part),
  subscription: requiredChild(subscription),
});
export type SubscriptionInfo = Of<typeof info>;

/** Which channels are open, with the query that each answers and where it goes. */
export const knownSubscriptions = {
  QueryKnownSubscriptions: perhaps(filter, {}),
  SignalKnownSubscriptions: signal({ filter: child(filter), subscriptions: children(info) }),
  ResponseKnownSubscriptions: content({ subscriptions: children(info) }),
};
