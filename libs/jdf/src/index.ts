export { checkDocument, type DocumentVerdict } from './check-document.js';
export { formatDuration, parseDateTime, parseDuration } from './codec/index.js';
export type * from './elements/index.js';
export * from './enumerations.js';
export * from './jmf/index.js';
export * from './standard/index.js';
export * from './ticket/index.js';
export * from './xml/index.js';
