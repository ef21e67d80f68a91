import { elementCodec, number, type Of, optional, required, text, tokens } from '../codec/index.js';
import { baseAttributes } from './base.js';

/** Which gangs are asked about; all where left out. */
export const gangFilter = elementCodec('GangQuFilter', {
  ...baseAttributes,
  gangNames: optional('GangNames', tokens),
});

/** How much of a gang is full. */
export const gangInfo = elementCodec('GangInfo', {
  ...baseAttributes,
  gangName: required('GangName', text),
  amount: optional('Amount', number),
});
export type GangInfo = Of<typeof gangInfo>;
