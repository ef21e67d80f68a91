/** What is done to the surface or the outline of a product. */
import {
  boolean,
  boxMm,
  children,
  integerRangeList,
  nmtoken,
  oneOf,
  optional,
  pdfPath,
  string,
} from '../../codec/index.js';
import { fullElement } from '../../elements/base.js';
import {
  enumerationSpan,
  lengthSpan,
  nameSpan,
  numberSpan,
  optionSpan,
  sizeSpan,
  spans,
  spansIn,
  stringSpan,
} from './span-types.js';

export const laminatingIntent = fullElement('LaminatingIntent', {
  ...spans(optionSpan, 'Laminated'),
  ...spans(enumerationSpan, 'Temperature', 'Surface'),
  ...spans(nameSpan, 'Texture'),
  ...spansIn('Um', numberSpan, 'Thickness'),
});

const embossingItem = fullElement('EmbossingItem', {
  location: optional('Location', oneOf(['Top', 'Bottom', 'Left', 'Right', 'Front', 'Back'])),
  separation: optional('Separation', string),
  toolName: optional('ToolName', nmtoken),
  ...spans(enumerationSpan, 'Direction', 'EdgeShape', 'FoilColor', 'Level'),
  ...spans(stringSpan, 'EmbossingType', 'FoilColorDetails'),
  ...spansIn('Deg', numberSpan, 'EdgeAngle'),
  ...spansIn('Mm', lengthSpan, 'Height'),
  ...spansIn('Mm', sizeSpan, 'ImageSize', 'Position'),
});

export const embossingIntent = fullElement('EmbossingIntent', { items: children(embossingItem) });

const shapeCut = fullElement('ShapeCut', {
  cutBoxMm: optional('CutBox', boxMm),
  cutOut: optional('CutOut', boolean),
  /** In points, as in PDF. */
  cutPath: optional('CutPath', pdfPath),
  pages: optional('Pages', integerRangeList),
  shapeTypeDetails: optional('ShapeTypeDetails', string),
  ...spans(stringSpan, 'Material'),
  ...spans(enumerationSpan, 'CutType', 'CutDepth', 'ShapeType'),
  ...spans(numberSpan, 'ShapeDepth', 'TeethPerDimension'),
});

export const shapeCuttingIntent = fullElement('ShapeCuttingIntent', { cuts: children(shapeCut) });
