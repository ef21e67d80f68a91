export * from './ancestor-pool.js';
export * from './contact.js';
export * from './customer-info.js';
export * from './node.js';
export * from './node-info.js';
export * from './resource.js';
export { type LinkView as AuditLink, type LinkView, resourceLink } from './resource-link.js';
