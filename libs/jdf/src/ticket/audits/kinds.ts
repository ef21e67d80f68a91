import type { Of } from '../../codec/index.js';
import { notification } from '../../elements/notification.js';
import { created, deleted, modified } from './change-audits.js';
import { phaseTime } from './phase-time.js';
import { processRun, resourceAudit } from './run-audits.js';
import { merged, spawned } from './spawn-audits.js';

/** Every audit of the standard. */
export const auditCodecs = {
  Created: created,
  Modified: modified,
  Deleted: deleted,
  Spawned: spawned,
  Merged: merged,
  PhaseTime: phaseTime,
  ProcessRun: processRun,
  ResourceAudit: resourceAudit,
  Notification: notification,
};

export type AuditKind = keyof typeof auditCodecs;
export type Audit = { [K in AuditKind]: { readonly kind: K } & Of<(typeof auditCodecs)[K]> }[AuditKind];
