import {
  children,
  duration,
  integer,
  number,
  type Of,
  oneOf,
  optional,
  text,
  tokens,
} from '../codec/index.js';
import { fullElement } from './base.js';

/** Whether a receiver of signals must acknowledge them. */
export const channelModes = ['FireAndForget', 'Reliable'] as const;

/** What to watch: attributes of elements by name or ID, or a path into the ticket. */
const observationTarget = fullElement('ObservationTarget', {
  elementType: optional('ElementType', text),
  attributes: optional('Attributes', tokens),
  elementIds: optional('ElementIDs', tokens),
  path: optional('ObservationPath', text),
});

/** Asks for signals: on every change where neither `repeatTimeS` nor `repeatStep` is given. */
export const subscription = fullElement('Subscription', {
  url: optional('URL', text),
  repeatTimeS: optional('RepeatTime', number),
  /** A signal each time so many units more are made. */
  repeatStep: optional('RepeatStep', integer),
  minDelayTimeS: optional('MinDelayTime', duration),
  channelMode: optional('ChannelMode', oneOf(channelModes)),
  retryPolicy: optional('RetryPolicy', oneOf(['DiscardAtNextSignal', 'RetryForever'])),
  languages: optional('Languages', tokens),
  /** Names of the files when signals are files: a pattern and what fills it. */
  format: optional('Format', text),
  template: optional('Template', text),
  targets: children(observationTarget),
});
export type Subscription = Of<typeof subscription>;
