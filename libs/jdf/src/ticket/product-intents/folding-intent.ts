import { children, lengthMm, oneOf, optional, required, share, string, xyPair } from '../../codec/index.js';
import { fullElement } from '../../elements/base.js';
import { enumerationSpan, nameSpan, spans } from './span-types.js';

/** One fold; how far the sheet travels in as a length or as a share of its size. */
export const fold = fullElement('Fold', {
  from: required('From', oneOf(['Front', 'Left'])),
  to: required('To', oneOf(['Up', 'Down'])),
  travelMm: optional('Travel', lengthMm),
  relativeTravel: optional('RelativeTravel', share),
});

export const foldingIntent = fullElement('FoldingIntent', {
  foldingDetails: optional('FoldingDetails', string),
  folds: optional('Folds', xyPair),
  /** A code of the fold catalogue, such as F16-6. */
  ...spans(nameSpan, 'FoldingCatalog'),
  ...spans(enumerationSpan, 'Orientation'),
  foldList: children(fold),
});
