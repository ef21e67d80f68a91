import type { Plant } from '#libs/craft';
import {
  attributeOf,
  auditStamp,
  elementsLike,
  firstChild,
  replaceElements,
  text,
  withAttributes,
  withChildren,
  type XmlDocument,
  type XmlElement,
  type XmlNode,
  XSI_NAMESPACE,
} from '#libs/jdf';
import { done, error, hasErrors, type Instant, type Result, refuse } from '#libs/kernel';
import type { StoredDocument } from '../../ports.js';
import type { TicketFile } from '../../state/ticket.js';
import { madeKey } from '../build/exchange.js';
import { shortText } from '../build/values.js';
import type { Registry } from '../registry.js';
import { type Agent, stepAudits } from './audits.js';
import { describeNode, infoKey, type NodeDraft } from './describe-node.js';
import { type FinalProduct, nameProduct, productInParts, productOf } from './final-product.js';
import { IdBook } from './ids.js';
import { productDocument } from './product-node.js';
import { jdfOf, scopes } from './scope.js';
import { restated } from './stated-status.js';
import { nodeKey, resourcesOf, settledIn, writeChildNode, writeResource } from './write-node.js';

export interface ComposeOptions {
  readonly now: Instant;
  /** Who writes the audits. */
  readonly agent: Agent;
  /** What is known of the machines, such as sizes of plates. */
  readonly plant?: Plant;
  /** Only the node of this step, as its device is sent it: inputs as they really are, and no log. */
  readonly forDevice?: { readonly stepId: string; readonly targetRoute: string };
}

export interface ComposedTicket {
  readonly doc: XmlDocument;
  /** The ID of the product node, which the steps lie in. */
  readonly productId: string;
  readonly nodes: readonly ComposedNode[];
}

export interface ComposedNode {
  readonly draft: NodeDraft;
  /** IDs of the node, of its NodeInfo and of what it makes. */
  readonly id: string;
  readonly infoId: string;
  readonly outputs: readonly string[];
}

/**
 * The ticket with all that is planned and recorded, as if no step had ever left: the document as it came, or a product node
 * made from the order, with a node for each step below the product, what passes between them, and the audits of what
 * happened. Nothing of the document is lost. The same thing has the same ID each time. Errors: PLAN_MISSING (no plan, or
 * one that lacks what a node needs), PLAN_IMPOSSIBLE.
 */
export function composeTicket(
  registry: Registry,
  file: TicketFile,
  original: StoredDocument | null,
  options: ComposeOptions,
): Result<ComposedTicket> {
  const { plan } = file.ticket;
  if (plan === null) return refuse(error('PLAN_MISSING', `Ticket ${file.ticket.id} has no plan.`));
  const { forDevice } = options;
  const came = jdfOf(original);
  const document = came ?? productDocument(file.ticket, plan);
  const product = productOf(document);
  const ids = new IdBook(document);
  const idOf = (key: string): string => ids.idOf(key);
  // All nodes are named in their order, so that a step alone has the ID that it has among all.
  for (const { id } of plan.steps) idOf(nodeKey(id));
  const final = nameProduct(document, product, file, ids);
  const scopeOf = scopes(plan, options.plant ?? null, file, original, ids);
  const nodes = plan.steps.flatMap((planStep): NodeDraft[] => {
    const step = file.steps.find((row) => row.id === planStep.id);
    if (step === undefined || (forDevice !== undefined && step.id !== forDevice.stepId)) return [];
    return [describeNode(planStep, step, { file, registry, scopeOf, ...sentTo(forDevice) })];
  });
  const problems = nodes.flatMap((node) => node.problems);
  if (hasErrors(problems)) return refuse(...problems);
  const changes = restated(document, product, file.ticket.status);
  if (final !== null) changes.set(final.component, withProgress(final, file));
  const inParts = productInParts(document, product, file);
  if (inParts !== null) changes.set(inParts, withAttributes(inParts, { Status: 'Available' }));
  const updated = replaceElements(document, changes);
  const at = productOf(updated);
  const overlay = withSteps(at, file, nodes, idOf, options, {
    known: final && madeKey(final.row.id),
    declareXsi: !declaresXsi(updated.root),
    fresh: came === null,
  });
  const composed: ComposedTicket = {
    doc: replaceElements(updated, new Map([[at, overlay]])),
    productId: attributeOf(at, 'ID')!,
    nodes: nodes.map((draft) => namesOf(draft, idOf)),
  };
  return done(composed, problems);
}

const sentTo = (forDevice: ComposeOptions['forDevice']) =>
  forDevice === undefined ? {} : { targetRoute: forDevice.targetRoute, realInputs: true };

function namesOf(draft: NodeDraft, idOf: (key: string) => string): ComposedNode {
  const { step, links } = draft;
  const outputs = links.filter(({ usage }) => usage === 'Output').map(({ resource }) => idOf(resource.key));
  return { draft, id: idOf(nodeKey(step.id)), infoId: idOf(infoKey(step.id)), outputs };
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
  idOf: (key: string) => string,
  { agent, forDevice, now }: ComposeOptions,
  overlay: Overlay,
): XmlElement {
  const { ticket } = file;
  const make = elementsLike(product);
  const shared = resourcesOf(nodes).filter((draft) => draft.shared && draft.key !== overlay.known);
  let at = product;
  if (overlay.fresh) {
    const created = make('Created', auditStamp({ at: ticket.createdAt, agent }));
    at = withPooled(at, 'AuditPool', [created]);
  }
  at = withPooled(
    at,
    'ResourcePool',
    shared.map((draft) => settledIn(writeResource(draft, idOf), product, 2)),
  );
  const children = nodes.map((node) => {
    const log = stepAudits(file, node, idOf, agent, now);
    // A device is sent the work to be done; what others did before is no log of its own.
    const audits = forDevice === undefined ? log : log.slice(0, 1);
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
export function withPooled(node: XmlElement, name: string, more: readonly XmlElement[]): XmlElement {
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
