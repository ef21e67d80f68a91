import { duration, integer, type Of, oneOf, optional, time } from '../codec/index.js';
import { usages } from '../enumerations.js';
import { fullElement } from './base.js';

/** When the receiver may delete or file away what it was given. */
export const disposition = fullElement('Disposition', {
  action: optional('DispositionAction', oneOf(['Delete', 'Archive'])),
  usage: optional('DispositionUsage', oneOf(usages)),
  extraDurationS: optional('ExtraDuration', duration),
  minDurationS: optional('MinDuration', duration),
  priority: optional('Priority', integer),
  until: optional('Until', time),
});
export type Disposition = Of<typeof disposition>;
