export type { SizeMm as Size } from '../codec/index.js';
export { type Audit, type AuditKind, appendAudits, auditCodecs, readAudits } from './audits/index.js';
export { checkTicket } from './check-ticket.js';
export { type DocumentKind, kindOf } from './kind.js';
export { linksOf, type ResourceLink } from './links.js';
export {
  activationOf,
  inheritedAttribute,
  isNode,
  lineageOf,
  nodesOf,
  processesOf,
} from './node.js';
export type { Placed } from './placed.js';
export { type LinkedResource, type ProcessNode, readProcessNode } from './process-node.js';
export { type ProductIntent, readProduct } from './product.js';
export { productIntents } from './product-intents/index.js';
export { rollUpStatus, statusOfParts } from './status-roll-up.js';
export * from './views/index.js';
