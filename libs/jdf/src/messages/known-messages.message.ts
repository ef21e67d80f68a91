import {
  boolean,
  child,
  children,
  kept,
  notNamed,
  type Of,
  oneOf,
  optional,
  required,
  someOf,
  text,
  tokens,
} from '../codec/index.js';
import { fullElement } from '../elements/base.js';
import { channelModes } from '../elements/subscription.js';
import { content, perhaps, signal } from '../jmf/content.js';

const params = fullElement('KnownMsgQuParams', {
  listCommands: optional('ListCommands', boolean),
  listQueries: optional('ListQueries', boolean),
  listSignals: optional('ListSignals', boolean),
  listRegistrations: optional('ListRegistrations', boolean),
  persistent: optional('Persistent', boolean),
  exact: optional('Exact', boolean),
  channelMode: optional('ChannelMode', someOf(channelModes)),
});

const messageService = fullElement('MessageService', {
  type: required('Type', text),
  query: optional('Query', boolean),
  command: optional('Command', boolean),
  signal: optional('Signal', boolean),
  registration: optional('Registration', boolean),
  acknowledge: optional('Acknowledge', boolean),
  persistent: optional('Persistent', boolean),
  channelMode: optional('ChannelMode', someOf(channelModes)),
  jmfRole: optional('JMFRole', oneOf(['Receiver', 'Sender'])),
  urlSchemes: optional('URLSchemes', tokens),
  genericAttributes: optional('GenericAttributes', tokens),
  /** What the message may contain, as the message describes it. */
  capabilities: kept(notNamed('Comment', 'GeneralID', 'Preview', 'PreviewRef')),
});
export type MessageService = Of<typeof messageService>;

/**
 * Which messages a device or controller understands, in which families; what it says of their contents is kept as
 * sent.
 */
export const knownMessages = {
  QueryKnownMessages: perhaps(params, {}),
  SignalKnownMessages: signal({ params: child(params), services: children(messageService) }),
  ResponseKnownMessages: content({ services: children(messageService) }),
};
