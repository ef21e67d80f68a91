export { checkXjdf } from './check/check-xjdf.js';
export { convertDocument, type Generation } from './convert-document.js';
export { type ConvertedStep, type ConvertedSteps, convertSteps } from './convert-steps.js';
export type { Lost } from './ledger.js';
export { placeInSource } from './places.js';
export type { Converted } from './to-xjdf/convert.js';
