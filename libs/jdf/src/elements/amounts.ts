import {
  boolean,
  children,
  dateTime,
  durationOrInfinity,
  inside,
  matrix,
  number,
  type Of,
  oneOf,
  optional,
  required,
  string,
  url,
} from '../codec/index.js';
import { orientations, resourceStatuses } from '../enumerations.js';
import { fullElement } from './base.js';
import { part } from './part.js';

/** How much comes from one lot, and whether it is used up. */
export const lot = fullElement('Lot', {
  lotId: required('LotID', string),
  amount: optional('Amount', number),
  actualAmount: optional('ActualAmount', number),
  consumption: optional('Consumption', oneOf(['Full', 'Partial'])),
});
export type Lot = Of<typeof lot>;

/** What a link says of the whole, and a PartAmount of a part. Amounts are in the unit of the resource. */
export const amounts = {
  /** Planned. */
  amount: optional('Amount', number),
  actualAmount: optional('ActualAmount', number),
  minAmount: optional('MinAmount', number),
  maxAmount: optional('MaxAmount', number),
  /** The lowest Status of the resource that will do, and that will do in the end. */
  minStatus: optional('MinStatus', oneOf(resourceStatuses)),
  minLateStatus: optional('MinLateStatus', oneOf(resourceStatuses)),
  draftOk: optional('DraftOK', boolean),
  orientation: optional('Orientation', oneOf(orientations)),
  transformation: optional('Transformation', matrix),
  start: optional('Start', dateTime),
  startOffset: optional('StartOffset', durationOrInfinity),
  duration: optional('Duration', durationOrInfinity),
  /** What is in the pipe when the consumer must stop and may go on. */
  pipePause: optional('PipePause', number),
  pipeResume: optional('PipeResume', number),
  remotePipeEndPause: optional('RemotePipeEndPause', number),
  remotePipeEndResume: optional('RemotePipeEndResume', number),
  pipeUrl: optional('PipeURL', url),
  lots: children(lot),
  parts: children(part),
};

/**
 * What a link says of some of its parts: amounts in the unit of the resource, good and waste told apart by
 * Part/@Condition.
 */
export const partAmount = fullElement('PartAmount', amounts);
export type PartAmount = Of<typeof partAmount>;

/** The AmountPool of a link or of a message. */
export const amountPool = inside('AmountPool', children(partAmount));
