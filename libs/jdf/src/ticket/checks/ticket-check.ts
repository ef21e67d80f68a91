import type { Findings } from '../../codec/index.js';
import { splitTokens } from '../../codec/index.js';
import {
  attributeOf,
  childElements,
  firstChild,
  firstOfEach,
  identified,
  type XmlDocument,
  type XmlElement,
} from '../../xml/index.js';
import { isNode, processesOf } from '../node.js';
import { isTicket } from './scope.js';

/** One check of a ticket as a whole. Adding one is a file with one of these and a line in the index. */
export interface TicketCheck {
  /** Its number in our list of what no schema can find; null for a plain rule. */
  readonly number: number | null;
  readonly name: string;
  run(ticket: Ticket, findings: Findings): void;
}

/** What all checks look at, found once. */
export interface Ticket {
  readonly doc: XmlDocument;
  /** All nodes in document order, the root first. */
  readonly nodes: readonly TicketNode[];
  /** The elements of the standard, without foreign ones and descriptions of what devices can do. */
  readonly elements: readonly XmlElement[];
  /** The same by their local name. */
  readonly named: ReadonlyMap<string, readonly XmlElement[]>;
  /** Those with an rRef. */
  readonly references: readonly TicketReference[];
  /** The node in whose own pools a resource lies, by the root of the resource. */
  readonly owners: ReadonlyMap<XmlElement, TicketNode>;
  /** The first element of each ID, those in descriptions of devices with them. */
  readonly ids: ReadonlyMap<string, XmlElement>;
  /** A part that was sent away: what it refers to may have stayed in the ticket that it came from. */
  readonly spawned: boolean;
}

/** A link or reference to a resource. */
export interface TicketReference {
  readonly element: XmlElement;
  /** The innermost node that it lies in. */
  readonly node: TicketNode;
  /** What it leads to; undefined where that is not in the document. */
  readonly target: XmlElement | undefined;
}

export interface TicketNode {
  readonly element: XmlElement;
  readonly parent: TicketNode | undefined;
  readonly children: readonly TicketNode[];
  readonly type: string;
  /** As Types states them. */
  readonly types: readonly string[];
  /** Those of Types, or the node's own Type if that is a process. */
  readonly processes: readonly string[];
  /** A ProcessGroup with Types: the least that is to be done, still to be worked out by whoever receives it. */
  readonly grayBox: boolean;
  /** Resources in its own pools: their roots. */
  readonly resources: readonly XmlElement[];
  readonly links: readonly TicketLink[];
}

/** A resource link of a node. */
export interface TicketLink {
  readonly element: XmlElement;
  /** Name of the resource: that of the link without "Link". */
  readonly name: string;
  readonly usage: string;
  /** ProcessUsage; '' where it has none. */
  readonly role: string;
  /** What it leads to; undefined where that is not in the document. */
  readonly resource: XmlElement | undefined;
}

/**
 * Everything that the checks look at, found in one walk over a document: its elements, IDs, nodes with their links and
 * resources.
 */
export function ticketOf(doc: XmlDocument): Ticket {
  const ids = firstOfEach(identified(doc).filter(({ element }) => element.uri === doc.root.uri));
  const spawned = firstChild(doc.root, 'AncestorPool') !== undefined;
  const nodes = [...withInner(nodeOf(doc.root, undefined, ids))];
  const owners = new Map(
    nodes.flatMap((node) => node.resources.map((resource) => [resource, node] as const)),
  );
  return { doc, ids, spawned, nodes, owners, ...elementsOf(nodes, ids) };
}

/** Goes through all elements once, each with the node that it lies in. */
function elementsOf(
  nodes: readonly TicketNode[],
  ids: ReadonlyMap<string, XmlElement>,
): Pick<Ticket, 'elements' | 'named' | 'references'> {
  const elements: XmlElement[] = [];
  const named = new Map<string, XmlElement[]>();
  const references: TicketReference[] = [];
  const nodeAt = new Map(nodes.map((node) => [node.element, node]));
  const waiting = [nodes[0]!.element];
  const around = [nodes[0]!];
  for (let element = waiting.pop(); element !== undefined; element = waiting.pop()) {
    const outer = around.pop()!;
    const node = isNode(element) ? (nodeAt.get(element) ?? outer) : outer;
    elements.push(element);
    const alike = named.get(element.local);
    if (alike === undefined) named.set(element.local, [element]);
    else alike.push(element);
    const id = attributeOf(element, 'rRef')?.trim();
    if (id !== undefined) references.push({ element, node, target: ids.get(id) });
    for (let i = element.children.length - 1; i >= 0; i--) {
      const child = element.children[i]!;
      if (child.kind !== 'element' || !isTicket(child)) continue;
      waiting.push(child);
      around.push(node);
    }
  }
  return { elements, named, references };
}

function nodeOf(
  element: XmlElement,
  parent: TicketNode | undefined,
  ids: ReadonlyMap<string, XmlElement>,
): TicketNode {
  const type = attributeOf(element, 'Type')?.trim() ?? '';
  const types = splitTokens(attributeOf(element, 'Types') ?? '');
  const children: TicketNode[] = [];
  const node: TicketNode = {
    element,
    parent,
    children,
    type,
    types,
    processes: processesOf(element),
    grayBox: type === 'ProcessGroup' && types.length > 0,
    resources: childElements(element, 'ResourcePool').flatMap((pool) => childElements(pool)),
    links: childElements(element, 'ResourceLinkPool').flatMap((pool) => linksIn(pool, ids)),
  };
  for (const child of childElements(element, 'JDF')) children.push(nodeOf(child, node, ids));
  return node;
}

function* withInner(node: TicketNode): Generator<TicketNode> {
  yield node;
  for (const child of node.children) yield* withInner(child);
}

function linksIn(pool: XmlElement, ids: ReadonlyMap<string, XmlElement>): TicketLink[] {
  return childElements(pool).flatMap((element) => {
    if (!element.local.endsWith('Link')) return [];
    return [
      {
        element,
        name: element.local.slice(0, -'Link'.length),
        usage: attributeOf(element, 'Usage')?.trim() ?? '',
        role: attributeOf(element, 'ProcessUsage')?.trim() ?? '',
        resource: ids.get(attributeOf(element, 'rRef')?.trim() ?? ''),
      },
    ];
  });
}
