import {
  boolean,
  children,
  duration,
  inside,
  number,
  numbers,
  type Of,
  oneOf,
  optional,
  required,
  text,
  time,
} from '../codec/index.js';
import { orientations, resourceStatuses } from '../enumerations.js';
import { fullElement } from './base.js';
import { part } from './part.js';

/** How much comes from one lot, and whether it is used up. */
export const lot = fullElement('Lot', {
  lotId: required('LotID', text),
  amount: optional('Amount', number),
  actualAmount: optional('ActualAmount', number),
  consumption: optional('Consumption', oneOf(['Full', 'Partial'])),
});
export type Lot = Of<typeof lot>;

/** Planned and actual amounts of a part of a resource, in the unit of the resource. */
export const partAmount = fullElement('PartAmount', {
  amount: optional('Amount', number),
  actualAmount: optional('ActualAmount', number),
  maxAmount: optional('MaxAmount', number),
  minAmount: optional('MinAmount', number),
  draftOk: optional('DraftOK', boolean),
  minStatus: optional('MinStatus', oneOf(resourceStatuses)),
  minLateStatus: optional('MinLateStatus', oneOf(resourceStatuses)),
  orientation: optional('Orientation', oneOf(orientations)),
  transformation: optional('Transformation', numbers),
  start: optional('Start', time),
  startOffsetS: optional('StartOffset', duration),
  durationS: optional('Duration', duration),
  pipePause: optional('PipePause', number),
  pipeResume: optional('PipeResume', number),
  pipeUrl: optional('PipeURL', text),
  remotePipeEndPause: optional('RemotePipeEndPause', number),
  remotePipeEndResume: optional('RemotePipeEndResume', number),
  lots: children(lot),
  parts: children(part),
});
export type PartAmount = Of<typeof partAmount>;

/** The AmountPool of a link or of a message. */
export const amountPool = inside('AmountPool', children(partAmount));
