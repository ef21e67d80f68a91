import { duration, elementCodec, integer, number, type Of, oneOf, optional, text } from '../codec/index.js';

export const channelModes = ['FireAndForget', 'Reliable'] as const;

/** Asks for signals: on every change where neither `repeatTimeS` nor `repeatStep` is given. */
export const subscription = elementCodec('Subscription', {
  url: optional('URL', text),
  repeatTimeS: optional('RepeatTime', number),
  repeatStep: optional('RepeatStep', integer),
  minDelayTimeS: optional('MinDelayTime', duration),
  channelMode: optional('ChannelMode', oneOf(channelModes)),
  retryPolicy: optional('RetryPolicy', oneOf(['DiscardAtNextSignal', 'RetryForever'])),
});
export type Subscription = Of<typeof subscription>;
