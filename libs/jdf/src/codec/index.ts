export * from './fields.js';
export { Findings } from './findings.js';
export { formatDuration, parseDateTime, parseDuration } from './time.js';
export * from './values.js';
