import { children, elementCodec, inside, number, type Of, optional } from '../codec/index.js';
import { part } from './part.js';

/** Planned and actual amounts of a part of a resource, in the unit of the resource. */
export const partAmount = elementCodec('PartAmount', {
  amount: optional('Amount', number),
  actualAmount: optional('ActualAmount', number),
  maxAmount: optional('MaxAmount', number),
  minAmount: optional('MinAmount', number),
  parts: children(part),
});
export type PartAmount = Of<typeof partAmount>;

/** The AmountPool of a link or of a message. */
export const amountPool = inside('AmountPool', children(partAmount));
