import {
  boolean,
  child,
  type Field,
  integer,
  oneOf,
  optional,
  required,
  text,
  time,
} from '../codec/index.js';
import { notification } from '../elements/notification.js';
import { channelModes, subscription } from '../elements/subscription.js';
import type { Family } from './message.js';

const common = {
  id: required('ID', text),
  time: optional('Time', time),
  senderId: optional('SenderID', text),
};

const refId: Field<string, false> = optional('refID', text);

/** Fields of the message element itself, by family. Source: the official JDF 1.9 schema (JDFCore, base message types). */
export const headFields: Record<Family, Readonly<Record<string, unknown>>> = {
  Query: { ...common, acknowledgeUrl: optional('AcknowledgeURL', text), subscription: child(subscription) },
  Command: { ...common, acknowledgeUrl: optional('AcknowledgeURL', text) },
  Registration: { ...common, subscription: child(subscription) },
  Signal: {
    ...common,
    refId,
    channelMode: optional('ChannelMode', oneOf(channelModes)),
    lastRepeat: optional('LastRepeat', boolean),
  },
  Response: {
    ...common,
    refId,
    returnCode: optional('ReturnCode', integer),
    subscribed: optional('Subscribed', boolean),
    acknowledged: optional('Acknowledged', boolean),
    notification: child(notification),
  },
  Acknowledge: {
    ...common,
    refId: required('refID', text),
    returnCode: optional('ReturnCode', integer),
    notification: child(notification),
  },
};
