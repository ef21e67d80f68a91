import { activation } from './activation.js';
import { alternatives } from './alternatives.js';
import { amounts } from './amounts.js';
import { audits } from './audits.js';
import { combined } from './combined.js';
import { cutting } from './cutting.js';
import { foldGrid } from './fold-grid.js';
import { folds } from './folds.js';
import { knownVersions } from './known-versions.js';
import { linkTargets } from './link-targets.js';
import { network } from './network.js';
import { nodeStatus } from './node-status.js';
import { nodeStructure } from './node-structure.js';
import { identicals, partitions } from './partitions.js';
import { partsInUse } from './parts-named.js';
import { partsRecorded } from './parts-recorded.js';
import { phaseOrder } from './phase-order.js';
import { phases } from './phases.js';
import { plateSets } from './plate-sets.js';
import { positions } from './positions.js';
import { processLinks } from './process-links.js';
import { references } from './references.js';
import { resourceAudits } from './resource-audits.js';
import { resourceClass } from './resource-class.js';
import { runPages } from './run-pages.js';
import { schedule } from './schedule.js';
import { sectionPages } from './section-pages.js';
import { separations } from './separations.js';
import { spawning } from './spawning.js';
import { statedVersion } from './stated-version.js';
import { template } from './template.js';
import type { TicketCheck } from './ticket-check.js';
import { turnedSheets } from './turned-sheets.js';
import { units } from './units.js';

export { type Ticket, ticketOf } from './ticket-check.js';

/** Every check of a ticket, in the order in which their findings are told: first what keeps others from being true. */
export const ticketChecks: readonly TicketCheck[] = [
  statedVersion,
  knownVersions,
  template,
  activation,
  nodeStructure,
  combined,
  references,
  linkTargets,
  processLinks,
  resourceClass,
  network,
  alternatives,
  nodeStatus,
  audits,
  phases,
  phaseOrder,
  resourceAudits,
  units,
  amounts,
  cutting,
  positions,
  foldGrid,
  turnedSheets,
  separations,
  plateSets,
  runPages,
  folds,
  sectionPages,
  schedule,
  partitions,
  identicals,
  partsInUse,
  partsRecorded,
  spawning,
];
