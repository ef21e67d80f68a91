export * from './check/index.js';
export { checkDocument, type DocumentVerdict } from './check-document.js';
export {
  dataTypes,
  type ElementCodec,
  enumerationTypes,
  type Field,
  Findings,
  formatDuration,
  parseDateTime,
  parseDuration,
  stricterThanSchema,
  updateElement,
  type ValueType,
  xjdfDataTypes,
} from './codec/index.js';
export type * from './elements/index.js';
export * from './enumerations.js';
export * from './jmf/index.js';
export {
  type AmountGroup,
  type AmountSum,
  type Amounts,
  effectivePart,
  explainMiss,
  isOwnAttribute,
  type KeyKind,
  kindOfKey,
  type LinkAmountKind,
  linkAmounts,
  type Miss,
  type Partition,
  partAttribute,
  partitionKeys,
  partitionKeysOf,
  partitionLeaves,
  partOnlyKeys,
  partReferredTo,
  partsOf,
  type Resolution,
  type ResourceAmountKind,
  resolveOne,
  resolveParts,
  resourceAmounts,
  selectPart,
  subElements,
  targetOf,
} from './partition/index.js';
export * from './spawn/index.js';
export * from './standard/index.js';
export * from './ticket/index.js';
export * from './xjdf/index.js';
export * from './xml/index.js';
