export { convertDocument, type Generation } from './convert-document.js';
export type { Lost } from './ledger.js';
export type { Converted } from './to-xjdf/convert.js';
