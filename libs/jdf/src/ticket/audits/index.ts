export { appendAudits, readAudits } from './audit-pool.js';
export { type Audit, type AuditKind, auditCodecs } from './kinds.js';
