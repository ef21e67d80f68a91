import { oneOf, optional, xyPair } from '../../codec/index.js';
import { fullElement } from '../../elements/base.js';
import { orientations } from '../../enumerations.js';
import {
  enumerationSpan,
  integerSpan,
  lengthSpan,
  shapeSpan,
  sizeSpan,
  spans,
  spansIn,
} from './span-types.js';

/** Size and pages of a product. `pages` are faces, not leaves. */
export const layoutIntent = fullElement('LayoutIntent', {
  sides: optional(
    'Sides',
    oneOf(['OneSided', 'OneSidedBack', 'TwoSidedHeadToHead', 'TwoSidedHeadToFoot', 'Unprinted']),
  ),
  folioCount: optional('FolioCount', oneOf(['Booklet', 'Flat'])),
  /** Columns and rows of pages on one side. */
  numberUp: optional('NumberUp', xyPair),
  spreadType: optional('SpreadType', oneOf(['SinglePage', 'Spread'])),
  rotatePolicy: optional(
    'RotatePolicy',
    oneOf(['NoRotate', 'RotateOrthogonal', 'RotateClockwise', 'RotateCounterClockwise']),
  ),
  orientation: optional('Orientation', oneOf(orientations)),
  finishedPageOrientation: optional('FinishedPageOrientation', oneOf(['Portrait', 'Landscape'])),
  ...spansIn('Mm', lengthSpan, 'Bleed'),
  /** Flat. */
  ...spansIn('Mm', sizeSpan, 'Dimensions'),
  /** Closed and trimmed. */
  ...spansIn('Mm', shapeSpan, 'FinishedDimensions'),
  ...spans(integerSpan, 'Pages', 'PageVariance'),
  ...spans(enumerationSpan, 'FinishedGrainDirection', 'SizePolicy'),
});

/** Until version 1.0. */
export const sizeIntent = fullElement('SizeIntent', {
  type: optional('Type', oneOf(['Folded', 'Flat'])),
  ...spansIn('Mm', sizeSpan, 'Dimensions'),
  ...spans(integerSpan, 'Pages'),
});
