export * from './check/index.js';
export { checkDocument, type DocumentVerdict } from './check-document.js';
export {
  dataTypes,
  enumerationTypes,
  formatDuration,
  parseDateTime,
  parseDuration,
  stricterThanSchema,
  type ValueType,
  xjdfDataTypes,
} from './codec/index.js';
export type * from './elements/index.js';
export * from './enumerations.js';
export * from './jmf/index.js';
export * from './standard/index.js';
export * from './ticket/index.js';
export * from './xml/index.js';
