/** What is to be proofed, screened, numbered, varied and published. */
import {
  boolean,
  children,
  ids,
  integerOrInfinity,
  integerRangeList,
  oneOf,
  optional,
  string,
  url,
} from '../../codec/index.js';
import { fullElement } from '../../elements/base.js';
import { colorsUsed, separationSpec } from './color-intent.js';
import {
  enumerationSpan,
  integerSpan,
  lengthSpan,
  nameSpan,
  numberSpan,
  optionSpan,
  spans,
  spansIn,
  stringSpan,
  timeSpan,
} from './span-types.js';

const proofItem = fullElement('ProofItem', {
  proofName: optional('ProofName', string),
  contract: optional('Contract', boolean),
  pageIndex: optional('PageIndex', integerRangeList),
  proofTarget: optional('ProofTarget', url),
  ...spans(integerSpan, 'Amount'),
  ...spans(stringSpan, 'BrandName'),
  ...spans(enumerationSpan, 'ColorType', 'ImageStrategy', 'ProofType'),
  ...spans(optionSpan, 'HalfTone'),
  ...spans(nameSpan, 'Technology'),
  separations: children(separationSpec),
});

const preflightItem = fullElement('PreflightItem', {
  preflightLevel: optional('PreflightLevel', oneOf(['Basic', 'Extended', 'Premium'])),
});

export const proofingIntent = fullElement('ProofingIntent', {
  proofItems: children(proofItem),
  preflightItems: children(preflightItem),
});

export const screeningIntent = fullElement('ScreeningIntent', {
  ...spansIn('Um', numberSpan, 'DotSize'),
  ...spansIn('PerInch', numberSpan, 'Frequency'),
  ...spans(enumerationSpan, 'FrequencySelection', 'ScreeningType'),
});

const numberItem = fullElement('NumberItem', {
  startValue: optional('StartValue', string),
  step: optional('Step', integerOrInfinity),
  ...spans(enumerationSpan, 'ColorName'),
  ...spans(stringSpan, 'ColorNameDetails'),
  ...spansIn('Mm', lengthSpan, 'XPosition', 'YPosition'),
  ...spansIn('Deg', numberSpan, 'Orientation'),
  separations: children(separationSpec),
});

export const numberingIntent = fullElement('NumberingIntent', {
  ...spans(enumerationSpan, 'ColorName'),
  ...spans(stringSpan, 'ColorNameDetails'),
  items: children(numberItem),
});

export const variableIntent = fullElement('VariableIntent', {
  colorsUsed,
  ...spansIn('Pct', numberSpan, 'Area'),
  // The small letter of maxPages is the standard's.
  ...spans(integerSpan, 'AveragePages', 'maxPages', 'MinPages', 'NumberOfCopies'),
  ...spans(enumerationSpan, 'VariableType', 'VariableQuality'),
});

export const publishingIntent = fullElement('PublishingIntent', {
  contentDataRefs: optional('ContentDataRefs', ids),
  ...spans(timeSpan, 'IssueDate'),
  ...spans(stringSpan, 'IssueName'),
  ...spans(nameSpan, 'IssueType'),
  ...spans(integerSpan, 'Circulation'),
});
