import {
  boolean,
  children,
  elementCodec,
  type Of,
  oneOf,
  optional,
  required,
  someOf,
  text,
  tokens,
} from '../codec/index.js';
import { channelModes } from '../elements/subscription.js';
import { content, perhaps } from '../jmf/content.js';

const params = elementCodec('KnownMsgQuParams', {
  listCommands: optional('ListCommands', boolean),
  listQueries: optional('ListQueries', boolean),
  listSignals: optional('ListSignals', boolean),
  listRegistrations: optional('ListRegistrations', boolean),
  persistent: optional('Persistent', boolean),
  exact: optional('Exact', boolean),
  channelMode: optional('ChannelMode', someOf(channelModes)),
});

const messageService = elementCodec('MessageService', {
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
});
export type MessageService = Of<typeof messageService>;

export const knownMessages = {
  QueryKnownMessages: perhaps(params, {}),
  ResponseKnownMessages: content({ services: children(messageService) }),
};
