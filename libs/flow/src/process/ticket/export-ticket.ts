import type { Plant } from '#libs/craft';
import {
  attributeOf,
  elementsLike,
  firstChild,
  replaceElements,
  text,
  withAttributes,
  withChildren,
  writeXml,
  type XmlElement,
  type XmlNode,
  XSI_NAMESPACE,
} from '#libs/jdf';
import { done, error, hasErrors, type Instant, isoTime, type Result, refuse } from '#libs/kernel';
import type { StoredDocument } from '../../ports.js';
import type { TicketFile } from '../../state/ticket.js';
import { madeKey } from '../build/exchange.js';
import { shortText } from '../build/values.js';
import type { Registry } from '../registry.js';
import { type Agent, stepAudits } from './audits.js';
import { describeNode, type NodeDraft } from './describe-node.js';
import { type FinalProduct, nameProduct, productOf } from './final-product.js';
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
  const final = nameProduct(document, product, file, ids);
  const scopeOf = scopes(plan, options.plant ?? null, file, original, ids);
  const nodes = plan.steps.flatMap((planStep): NodeDraft[] => {
    const step = file.steps.find((row) => row.id === planStep.id);
    return step === undefined ? [] : [describeNode(planStep, step, { file, registry, scopeOf })];
  });
  const problems = nodes.flatMap((node) => node.problems);
  if (hasErrors(problems)) return refuse(...problems);
  const updated =
    final === null
      ? document
      : replaceElements(document, new Map([[final.component, withProgress(final, file)]]));
  const at = productOf(updated);
  const overlay = withSteps(at, file, nodes, ids, options, {
    known: final && madeKey(final.row.id),
    declareXsi: !declaresXsi(updated.root),
    fresh: came === null,
  });
  return done(writeXml(replaceElements(updated, new Map([[at, overlay]]))), problems);
}

function withProgress({ component, row }: FinalProduct, file: TicketFile): XmlElement {
  return withAttributes(component, {
    Status: row.status,
    Amount: attributeOf(component, 'Amount') ?? file.ticket.quantity,
    ...(row.produced > 0 ? { AmountProduced: row.produced } : {}),
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
  return withAttributes(withNodes(at, children), {
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

function withNodes(node: XmlElement, nodes: readonly XmlElement[]): XmlElement {
  const added = nodes.flatMap((child): XmlNode[] => [text('\n  '), child]);
  return withChildren(node, [...trimmed(node.children), ...added, text('\n')]);
}

/** Without the line end before the end tag, which comes after what is added. */
function trimmed(children: readonly XmlNode[]): readonly XmlNode[] {
  const end = children.at(-1);
  return end?.kind === 'text' && end.value.trim() === '' ? children.slice(0, -1) : children;
}
