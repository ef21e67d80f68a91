import {
  attributeOf,
  childElements,
  findById,
  firstChild,
  nodesOf,
  type XmlDocument,
  type XmlElement,
} from '#libs/jdf';
import type { Resource, TicketFile } from '../../state/ticket.js';
import { madeKey } from '../build/exchange.js';
import { isLast } from '../build/lookup.js';
import type { IdBook } from './ids.js';

/** The product's own Component, which the last step makes. */
export interface FinalProduct {
  readonly component: XmlElement;
  readonly row: Resource;
}

/**
 * Finds what the last step makes among the document's own resources, and gives it that ID: the last process of a product
 * has the product's Component as its output. Null where the job ends in several things or the document has none.
 */
export function nameProduct(
  document: XmlDocument,
  product: XmlElement,
  file: TicketFile,
  ids: IdBook,
): FinalProduct | null {
  const row = finalResource(file);
  const component = row && wantedComponent(document, product);
  const id = component && attributeOf(component, 'ID');
  if (!row || !component || !id) return null;
  ids.alias(madeKey(row.id), id);
  return { component, row };
}

/**
 * The product's Component where the job ends in several things, e.g. versions on several forms, and all of them are made:
 * then the product is there, though no single step made it.
 */
export function productInParts(
  document: XmlDocument,
  product: XmlElement,
  file: TicketFile,
): XmlElement | null {
  if (file.ticket.status !== 'Completed' || finalResource(file) !== null) return null;
  return wantedComponent(document, product);
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
