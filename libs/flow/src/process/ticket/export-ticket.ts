import type { Plant } from '#libs/craft';
import { auditStamp, elementsLike, findById, replaceElements, writeXml, type XmlDocument } from '#libs/jdf';
import { done, type Instant, type Result } from '#libs/kernel';
import type { StoredDocument } from '../../ports.js';
import type { TicketFile } from '../../state/ticket.js';
import type { Registry } from '../registry.js';
import type { Agent } from './audits.js';
import { composeTicket, withPooled } from './compose-ticket.js';
import { withEntries } from './entries-out.js';

export interface ExportOptions {
  readonly now: Instant;
  /** Who writes the audits; the product's own name where left out. */
  readonly agentName?: string;
  /** Version of this product, for the audits. */
  readonly version: string;
  /** What is known of the machines, such as sizes of plates. */
  readonly plant?: Plant;
  /** The tickets that devices gave back, by the id of the queue entry; what is not there counts as recorded. */
  readonly returned?: ReadonlyMap<string, Uint8Array>;
}

/**
 * The ticket as JDF: the document as it came, or a product node made from the order, with a node for each step below the
 * product, what passes between them, and the audits of what happened. Nothing of the document is lost; the status, the
 * activation and the product's Component say how far it is. A step that a device has is Spawned, and its real status
 * stands in its NodeInfo; one that came back is merged. Warnings: those of merging. Errors: PLAN_MISSING (no plan, or one
 * that lacks what a node needs), PLAN_IMPOSSIBLE.
 */
export function writeTicket(
  registry: Registry,
  file: TicketFile,
  original: StoredDocument | null,
  options: ExportOptions,
): Result<string> {
  const { now, plant, returned = new Map() } = options;
  const agent: Agent = { name: options.agentName ?? 'Sidelay', version: options.version };
  const composed = composeTicket(registry, file, original, { now, plant, agent });
  if (!composed.ok) return composed;
  const { doc, problems } = withEntries(composed.value, file, returned, agent);
  const { productId } = composed.value;
  const changed =
    original === null || file.ticket.kind === 'order' ? doc : withModified(doc, productId, file, agent);
  return done(writeXml(changed), [...composed.problems, ...problems]);
}

/** The last audit of a document that came from elsewhere: that this is no longer all its own. */
function withModified(doc: XmlDocument, productId: string, file: TicketFile, agent: Agent): XmlDocument {
  const product = findById(doc, productId)!;
  const at = Math.max(file.ticket.updatedAt, ...file.entries.map(({ end, submitted }) => end ?? submitted));
  const audit = elementsLike(product)('Modified', auditStamp({ at, agent }));
  return replaceElements(doc, new Map([[product, withPooled(product, 'AuditPool', [audit])]]));
}
