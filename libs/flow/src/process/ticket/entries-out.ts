import {
  attributeOf,
  checkDocument,
  childElements,
  findById,
  firstChild,
  merge,
  parseDateTime,
  parseXml,
  replaceElements,
  spawn,
  withAttributes,
  withChildren,
  type XmlDocument,
  type XmlElement,
} from '#libs/jdf';
import type { Instant, Problem } from '#libs/kernel';
import type { QueueEntry, Step, TicketFile } from '../../state/ticket.js';
import { shortText } from '../build/values.js';
import type { Agent } from './audits.js';
import type { ComposedNode, ComposedTicket } from './compose-ticket.js';

export interface WithEntries {
  readonly doc: XmlDocument;
  /** Warnings of merging, and why a step could not be shown as out. */
  readonly problems: readonly Problem[];
}

/**
 * The ticket with every step spawned that a device was given, and merged once it came back, in the order of time: what the
 * device gave back where that can be merged, otherwise what was recorded here. What the books say of status and of what
 * was made is stated anew after each, for they may have been corrected since. JDF Spawned, Merged.
 */
export function withEntries(
  ticket: ComposedTicket,
  file: TicketFile,
  returned: ReadonlyMap<string, Uint8Array>,
  agent: Agent,
): WithEntries {
  let doc = ticket.doc;
  const children = new Map<string, XmlDocument>();
  const problems: Problem[] = [];
  for (const { entry, at, left } of movesOf(file)) {
    const node = ticket.nodes.find(({ draft }) => draft.step.id === entry.stepId);
    if (node === undefined) continue;
    const act = { at, agent };
    if (left) {
      const out = spawn(waiting(doc, node), { nodeId: node.id }, { ...act, spawnId: entry.id });
      // A document can itself be out elsewhere: then it stays as it is, and why is said.
      if (out.ok) {
        children.set(entry.id, out.value.child);
        doc = outside(out.value.parent, node);
      } else problems.push(...out.problems.map(asWarning));
      continue;
    }
    const child = children.get(entry.id);
    if (child === undefined) continue;
    const bytes = returned.get(entry.id);
    const came = bytes === undefined ? undefined : mergedBack(doc, bytes, node, act);
    const merged = came?.ok === true ? came : merge(doc, child, act);
    if (came?.ok === false) problems.push(...came.problems.map(asWarning));
    if (!merged.ok) {
      problems.push(...merged.problems.map(asWarning));
      continue;
    }
    problems.push(...merged.problems);
    doc = asBooked(merged.value, ticket, node);
  }
  return { doc, problems };
}

const asWarning = (problem: Problem): Problem => ({ ...problem, severity: 'warning' });

interface Move {
  readonly entry: QueueEntry;
  readonly at: Instant;
  /** Left for the device, or came back. */
  readonly left: boolean;
}

/** When entries left and came back. One that no device took has not left; one is back when it has ended here. */
function movesOf({ entries }: TicketFile): readonly Move[] {
  const taken = entries
    .filter(({ delivery }) => delivery === 'delivered')
    .toSorted((a, b) => a.submitted - b.submitted);
  const moves = taken.flatMap((entry): Move[] => {
    const gone = { entry, at: entry.submitted, left: true };
    if (entry.status !== 'Completed' && entry.status !== 'Aborted') return [gone];
    const next = taken.find(
      ({ stepId, submitted }) => stepId === entry.stepId && submitted > entry.submitted,
    );
    // A device's clock may be ahead of ours: a step is back before it leaves again.
    const end = Math.min(entry.end ?? entry.submitted, next?.submitted ?? Infinity);
    return [gone, { entry, at: Math.max(end, entry.submitted), left: false }];
  });
  return moves.toSorted((a, b) => a.at - b.at);
}

/** The node as it was when it left: the Spawned audit keeps that status. */
function waiting(doc: XmlDocument, { id }: ComposedNode): XmlDocument {
  return changed(doc, id, { Status: 'Waiting', StatusDetails: undefined });
}

/** A node that is out says Spawned; what the device does with it stands beside. */
function outside(doc: XmlDocument, { id, infoId, draft }: ComposedNode): XmlDocument {
  const { status } = draft.step;
  const told = changed(doc, id, { StatusDetails: status });
  return changed(told, infoId, { NodeStatus: status, NodeStatusDetails: detailsOf(draft.step) });
}

const detailsOf = ({ statusDetails }: Step): string | undefined =>
  statusDetails === null ? undefined : shortText(statusDetails);

/** What the books say of the node and of what it makes. */
function asBooked(doc: XmlDocument, composed: ComposedTicket, node: ComposedNode): XmlDocument {
  const { step } = node.draft;
  let at = changed(doc, node.infoId, { NodeStatus: undefined, NodeStatusDetails: undefined });
  at = changed(at, node.id, {
    Status: step.status,
    StatusDetails: detailsOf(step),
    Activation: step.activation,
  });
  for (const id of node.outputs) {
    const booked = findById(composed.doc, id);
    const own = (booked?.attributes ?? []).filter(({ uri }) => uri === '');
    at = changed(at, id, Object.fromEntries(own.map(({ name, value }) => [name, value])));
  }
  return at;
}

function changed(doc: XmlDocument, id: string, attributes: Record<string, string | undefined>): XmlDocument {
  const el = findById(doc, id);
  return el === undefined ? doc : replaceElements(doc, new Map([[el, withAttributes(el, attributes)]]));
}

/** The ticket with what the device gave back; refused where that is not sound, or is not what it was sent. */
function mergedBack(
  doc: XmlDocument,
  bytes: Uint8Array,
  { id }: ComposedNode,
  act: { readonly at: Instant; readonly agent: Agent },
): ReturnType<typeof merge> {
  const parsed = parseXml(bytes);
  if (!parsed.ok) return parsed;
  const faults = checkDocument(parsed.value).problems.filter(({ severity }) => severity === 'error');
  if (faults.length > 0) return { ok: false, problems: faults };
  const node = findById(doc, id);
  const pool = node && firstChild(node, 'AuditPool');
  if (pool === undefined) return merge(doc, parsed.value, act);
  const rest = withoutTold(pool, firstChild(parsed.value.root, 'AuditPool'));
  return merge(replaceElements(doc, new Map([[pool, rest]])), parsed.value, act);
}

/** The log without what the device's own log tells as well: its phases, its run, and what it used. */
function withoutTold(pool: XmlElement, device: XmlElement | undefined): XmlElement {
  const told = new Set((device === undefined ? [] : childElements(device)).map(subjectOf));
  return withChildren(
    pool,
    pool.children.filter((audit) => audit.kind !== 'element' || !told.has(subjectOf(audit))),
  );
}

function subjectOf(audit: XmlElement): string {
  if (audit.local === 'PhaseTime') return `PhaseTime ${parseDateTime(attributeOf(audit, 'Start') ?? '')}`;
  if (audit.local === 'ResourceAudit') {
    const link = childElements(audit).find(({ local }) => local.endsWith('Link'));
    return `ResourceAudit ${link && attributeOf(link, 'rRef')}`;
  }
  return audit.local;
}
