/** How the product is to be made, filled and packed. */
import {
  children,
  inside,
  integerRangeList,
  optional,
  pointMm,
  required,
  transformMm,
} from '../../codec/index.js';
import { fullElement } from '../../elements/base.js';
import { glueLine } from '../views/glue-line.js';
import { certification } from './media-intent.js';
import {
  enumerationSpan,
  integerSpan,
  lengthSpan,
  nameSpan,
  numberSpan,
  shapeSpan,
  sizeSpan,
  spans,
  spansIn,
} from './span-types.js';

export const productionIntent = fullElement('ProductionIntent', {
  certifications: children(certification),
  ...spans(enumerationSpan, 'PrintPreference'),
  ...spans(nameSpan, 'PrintProcess'),
});

/** Something put loose or fixed between pages. */
const insert = fullElement('Insert', {
  folio: required('Folio', integerRangeList),
  wrapPages: optional('WrapPages', integerRangeList),
  sheetOffsetMm: optional('SheetOffset', pointMm),
  transformationMm: optional('Transformation', transformMm),
  ...spans(enumerationSpan, 'GlueType', 'Method'),
  glueLines: children(glueLine),
});

export const insertingIntent = fullElement('InsertingIntent', {
  ...spans(enumerationSpan, 'GlueType', 'Method'),
  inserts: inside('InsertList', children(insert)),
});

export const packingIntent = fullElement('PackingIntent', {
  ...spans(integerSpan, 'BoxedQuantity', 'CartonQuantity', 'PalletQuantity', 'WrappedQuantity'),
  ...spansIn('Mm', shapeSpan, 'BoxShape', 'CartonShape'),
  ...spansIn('Mm', sizeSpan, 'PalletSize'),
  ...spansIn('Mm', lengthSpan, 'PalletMaxHeight'),
  // The unit of these weights is not among the facts at hand.
  ...spans(numberSpan, 'CartonMaxWeight', 'CartonStrength', 'PalletMaxWeight'),
  ...spans(
    nameSpan,
    'FoldingCatalog',
    'PalletCornerBoards',
    'PalletType',
    'PalletWrapping',
    'WrappingMaterial',
  ),
});
