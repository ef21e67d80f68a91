import {
  boolean,
  child,
  children,
  integer,
  oneOf,
  optional,
  required,
  someOf,
  text,
  time,
  tokens,
  type ValueOf,
} from '../codec/index.js';
import { base } from '../elements/base.js';
import { employee } from '../elements/device.js';
import { notification } from '../elements/notification.js';
import { channelModes, subscription } from '../elements/subscription.js';
import { trigger } from '../elements/trigger.js';
import { versions } from '../enumerations.js';
import type { Family } from './family.js';

const acknowledgeTypes = ['Received', 'Applied', 'Completed'] as const;

const first = {
  id: required('ID', text),
  /** Who had it sent. */
  employees: children(employee),
};

const common = {
  time: optional('Time', time),
  senderId: optional('SenderID', text),
  version: optional('Version', oneOf(versions)),
  agentName: optional('AgentName', text),
  agentVersion: optional('AgentVersion', text),
  icsVersions: optional('ICSVersions', tokens),
  ...base,
};

const asking = {
  /** Where an Acknowledge shall be sent, should the answer take long … */
  acknowledgeUrl: optional('AcknowledgeURL', text),
  /** … and after what: when the message was received, has taken effect, or all is done. */
  acknowledgeTypes: optional('AcknowledgeType', someOf(acknowledgeTypes)),
  /** Name of the file, where an Acknowledge is a file: a pattern and what fills it. */
  acknowledgeFormat: optional('AcknowledgeFormat', text),
  acknowledgeTemplate: optional('AcknowledgeTemplate', text),
};

const query = {
  ...asking,
  /** Languages that texts are wanted in, best first. */
  languages: optional('Languages', tokens),
  subscription: child(subscription),
};

const command = {
  ...asking,
  relatedCommands: optional('RelatedCommands', tokens),
  /** Commands of one transaction succeed or fail together. */
  transactionId: optional('TransactionID', text),
};

const refId = {
  /** The message that this one answers, or the query whose subscription it serves. */
  refId: optional('refID', text),
};

const signal = {
  ...refId,
  channelMode: optional('ChannelMode', oneOf(channelModes)),
  /** No more signals will follow on this channel. */
  lastRepeat: optional('LastRepeat', boolean),
  /** It replaces the signals of a time that it ends or begins. */
  replaceBefore: optional('ReplaceBefore', time),
  replaceAfter: optional('ReplaceAfter', time),
  trigger: child(trigger),
};

const answering = {
  /** 0 where left out; `returnCodes` tells what it means. */
  returnCode: optional('ReturnCode', integer),
  /** The reason in words. */
  notification: child(notification),
};

const response = {
  ...refId,
  ...answering,
  subscribed: optional('Subscribed', boolean),
  /** An Acknowledge will follow. */
  acknowledged: optional('Acknowledged', boolean),
  languages: optional('Languages', tokens),
};

const acknowledge = {
  ...answering,
  refId: required('refID', text),
  acknowledgeTypes: optional('AcknowledgeType', someOf(acknowledgeTypes)),
};

const registration = { subscription: child(subscription) };

/**
 * Fields of the message element itself, by family. Child elements are in the order that holds for every type: some
 * the schema has in the family only, before all that it has in family and type. Source: the official JDF 1.9 schema
 * (JDFCore, base message types).
 */
export const headFields: Record<Family, Readonly<Record<string, unknown>>> = {
  Query: { ...first, ...query, ...common },
  Command: { ...first, ...command, ...common },
  Registration: { ...first, ...registration, ...common },
  Signal: { ...first, ...signal, ...common },
  Response: { ...first, ...response, ...common },
  Acknowledge: { ...first, ...acknowledge, ...common },
};

/** What messages of all types may say. Which of it has a meaning depends on the family. */
export type MessageHead = ValueOf<
  typeof first & typeof common & typeof query & typeof command & typeof signal & typeof response
>;
