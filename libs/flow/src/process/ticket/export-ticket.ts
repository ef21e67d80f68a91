import type { Plant } from '#libs/craft';
import {
  appended,
  attributeOf,
  childElements,
  elementsLike,
  findById,
  firstChild,
  nodesOf,
  replaceElements,
  text,
  withAttributes,
  withChildren,
  writeXml,
  type XmlDocument,
  type XmlElement,
  type XmlNode,
  XSI_NAMESPACE,
} from '#libs/jdf';
import { done, error, hasErrors, type Instant, isoTime, type Result, refuse } from '#libs/kernel';
import type { StoredDocument } from '../../ports.js';
import type { Resource, TicketFile } from '../../state/ticket.js';
import { madeKey } from '../build/exchange.js';
import { isLast } from '../build/lookup.js';
import { shortText } from '../build/values.js';
import type { Registry } from '../registry.js';
import { type Agent, stepAudits } from './audits.js';
import { describeNode, type NodeDraft } from './describe-node.js';
import { IdBook } from './ids.js';
import { productDocument } from './product-node.js';
import { jdfOf, scopes } from './scope.js';
import { resourcesOf, settledIn, writeChildNode, writeResource } from './write-node.js';

export interface ExportOptions {
  readonly now: Instant;
  /** Who writes the audits; the product's own name where left out. */
  readonly agentName?: string;
  /** Version of this product, for the audits. */
  readonly version: string;
  /** What is known of the machines, such as sizes of plates. */
  readonly plant?: Plant;
}

/**
 * The ticket as JDF: the document as it came, or a product node made from the order, with a node for each step below the
 * product, what passes between them, and the audits of what happened. Nothing of the document is lost; the status, the
 * activation and the product's Component say how far it is. Errors: PLAN_MISSING (no plan, or one that lacks what a node
 * needs), PLAN_IMPOSSIBLE.
 */
export function writeTicket(
  registry: Registry,
  file: TicketFile,
  original: StoredDocument | null,
  options: ExportOptions,
): Result<string> {
  const { plan } = file.ticket;
  if (plan === null) return refuse(error('PLAN_MISSING', `Ticket ${file.ticket.id} has no plan.`));
  const came = jdfOf(original);
  const document = came ?? productDocument(file.ticket, plan);
  const product = productOf(document);
  const ids = new IdBook(document);
  const last = finalResource(file);
  const wanted = last && wantedComponent(document, product);
  if (last && wanted) ids.alias(madeKey(last.id), attributeOf(wanted, 'ID')!);
  const scopeOf = scopes(plan, options.plant ?? null, file, original, ids);
  const nodes = plan.steps.flatMap((planStep): NodeDraft[] => {
    const step = file.steps.find((row) => row.id === planStep.id);
    return step === undefined ? [] : [describeNode(planStep, step, { file, registry, scopeOf })];
  });
  const problems = nodes.flatMap((node) => node.problems);
  if (hasErrors(problems)) return refuse(...problems);
  const changed = wanted && last ? new Map([[wanted, withProgress(wanted, file, last)]]) : new Map();
  const updated = replaceElements(document, changed);
  const at = productOf(updated);
  const overlay = withSteps(at, file, nodes, ids, options, {
    known: last && wanted ? madeKey(last.id) : null,
    declareXsi: !declaresXsi(updated.root),
    fresh: came === null,
  });
  return done(writeXml(replaceElements(updated, new Map([[at, overlay]]))), problems);
}

/** The node that the plan is about: the first product node, as when the ticket was read. */
export function productOf(document: XmlDocument): XmlElement {
  const nodes = [...nodesOf(document.root)];
  return nodes.find((node) => attributeOf(node, 'Type') === 'Product') ?? document.root;
}

/** What the last step makes; null where the job ends in several things, for then none of them is the product. */
function finalResource(file: TicketFile): Resource | null {
  const plan = file.ticket.plan!;
  const ends = plan.steps.filter((step) => isLast(plan, step));
  const ids = file.steps.find((step) => ends.length === 1 && step.id === ends[0]!.id)?.outputs ?? [];
  const row = file.resources.find(({ id }) => ids.length === 1 && id === ids[0]);
  return row?.name === 'Component' ? row : null;
}

/** The Component that the product node has as output, if it lies where its child nodes may link it. */
function wantedComponent(document: XmlDocument, product: XmlElement): XmlElement | null {
  const pool = firstChild(product, 'ResourceLinkPool');
  const links = pool === undefined ? [] : childElements(pool, 'ComponentLink');
  const link = links.find((one) => attributeOf(one, 'Usage') === 'Output');
  const resource = link && findById(document, attributeOf(link, 'rRef') ?? '');
  return resource?.local === 'Component' ? resource : null;
}

function withProgress(wanted: XmlElement, file: TicketFile, last: Resource): XmlElement {
  return withAttributes(wanted, {
    Status: last.status,
    Amount: attributeOf(wanted, 'Amount') ?? file.ticket.quantity,
    ...(last.produced > 0 ? { AmountProduced: last.produced } : {}),
  });
}

function declaresXsi(root: XmlElement): boolean {
  return root.attributes.some(({ name, value }) => name === 'xmlns:xsi' && value === XSI_NAMESPACE);
}

interface Overlay {
  /** Key of the resource that is in the document already. */
  readonly known: string | null;
  readonly declareXsi: boolean;
  /** The product node was made here. */
  readonly fresh: boolean;
}

function withSteps(
  product: XmlElement,
  file: TicketFile,
  nodes: readonly NodeDraft[],
  ids: IdBook,
  options: ExportOptions,
  overlay: Overlay,
): XmlElement {
  const { ticket } = file;
  const idOf = (key: string): string => ids.idOf(key);
  const agent: Agent = { name: options.agentName ?? 'Sidelay', version: options.version };
  const make = elementsLike(product);
  const shared = resourcesOf(nodes).filter((draft) => draft.shared && draft.key !== overlay.known);
  const audit = make(overlay.fresh ? 'Created' : 'Modified', {
    TimeStamp: isoTime(overlay.fresh ? ticket.createdAt : ticket.updatedAt),
    AgentName: agent.name,
    AgentVersion: agent.version,
  });
  let at = withPooled(product, 'AuditPool', [audit]);
  at = withPooled(
    at,
    'ResourcePool',
    shared.map((draft) => settledIn(writeResource(draft, idOf), product, 2)),
  );
  const children = nodes.map((node) => {
    const audits = stepAudits(file, node, idOf, agent, options.now);
    return settledIn(writeChildNode(node, idOf, audits, overlay.declareXsi), product, 1);
  });
  return withAttributes(appended(at, ...children.flatMap((child) => [text('\n  '), child]), text('\n')), {
    Status: ticket.status,
    StatusDetails: ticket.statusDetails === null ? undefined : shortText(ticket.statusDetails),
    Activation: ticket.activation,
    JobID: attributeOf(product, 'JobID') ?? shortText(ticket.jobId),
  });
}

/** The node with more in one of its pools, which is made if it is not there. */
function withPooled(node: XmlElement, name: string, more: readonly XmlElement[]): XmlElement {
  const added = more.flatMap((el): XmlNode[] => [text('\n    '), el]);
  const pool = firstChild(node, name);
  if (pool !== undefined) {
    const grown = withChildren(pool, [...trimmed(pool.children), ...added, text('\n  ')]);
    return withChildren(
      node,
      node.children.map((child) => (child === pool ? grown : child)),
    );
  }
  const fresh = elementsLike(node)(name, {}, [...added, text('\n  ')]);
  return withChildren(node, [text('\n  '), fresh, ...node.children]);
}

/** Without the line end before the end tag, which comes after what is added. */
function trimmed(children: readonly XmlNode[]): readonly XmlNode[] {
  const end = children.at(-1);
  return end?.kind === 'text' && end.value.trim() === '' ? children.slice(0, -1) : children;
}
