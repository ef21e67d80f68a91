import { boolean, child, children, integerOrInfinity, nmtoken, optional, string } from '../../codec/index.js';
import { fullElement } from '../../elements/base.js';
import {
  enumerationSpan,
  integerSpan,
  nameSpan,
  numberSpan,
  optionSpan,
  sizeSpan,
  spanCodec,
  spans,
  spansIn,
  stringSpan,
} from './span-types.js';

/** By whom and under which number something is certified. */
export const certification = fullElement('Certification', {
  organization: optional('Organization', nmtoken),
  identifier: optional('Identifier', string),
  claim: optional('Claim', string),
});

/** The paper, or whatever else is printed on. */
export const mediaIntent = fullElement('MediaIntent', {
  mediaSetCount: optional('MediaSetCount', integerOrInfinity),
  userMediaType: optional('UserMediaType', nmtoken),
  prePrinted: optional('PrePrinted', boolean),
  certifications: children(certification),
  isoPaperSubstrate: child(spanCodec('ISOPaperSubstrate', enumerationSpan)),
  ...spans(
    enumerationSpan,
    'BackCoatings',
    'FrontCoatings',
    'FluteDirection',
    'GrainDirection',
    'MediaColor',
    'MediaType',
    'MediaUnit',
    'Opacity',
  ),
  ...spans(nameSpan, 'Flute', 'MediaTypeDetails', 'StockType', 'Texture'),
  ...spans(stringSpan, 'HoleType', 'MediaColorDetails', 'MediaQuality', 'StockBrand'),
  ...spans(integerSpan, 'Grade', 'HoleCount'),
  ...spans(optionSpan, 'BuyerSupplied', 'Recycled'),
  ...spans(numberSpan, 'Brightness', 'OpacityLevel', 'RecycledPercentage'),
  ...spansIn('Gsm', numberSpan, 'Weight'),
  ...spansIn('Um', numberSpan, 'Thickness'),
  /** Pounds for a ream of the basic size (until version 1.1). */
  usWeightLb: child(spanCodec('USWeight', numberSpan)),
  ...spansIn('Mm', sizeSpan, 'Dimensions'),
});
