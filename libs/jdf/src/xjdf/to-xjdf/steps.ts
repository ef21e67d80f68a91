import { splitTokens } from '../../codec/index.js';
import { nodesOf } from '../../ticket/node.js';
import { attributeOf, childElements, type XmlElement } from '../../xml/index.js';
import { addAll } from '../add-all.js';

/** The nodes of a ticket with their places in the list of processes that stands for them in the newer generation. */
export interface Steps {
  readonly types: readonly string[];
  /** Positions in `types`; a node that only groups others has none. */
  readonly indexes: ReadonlyMap<XmlElement, readonly number[]>;
}

/** All processes of the nodes in document order, one list; products that say nothing of how are one entry, Product. */
export function stepsOf(root: XmlElement, only: XmlElement | undefined): Steps {
  const nodes = only === undefined ? [...nodesOf(root)] : [only];
  const products = nodes.filter((node) => attributeOf(node, 'Type') === 'Product');
  const types: string[] = [];
  const indexes = new Map<XmlElement, readonly number[]>();
  for (const product of products) indexes.set(product, []);
  for (const node of nodes) {
    if (indexes.has(node)) continue;
    const own = typesOf(node);
    indexes.set(
      node,
      own.map((_, i) => types.length + i),
    );
    addAll(types, own);
  }
  if (types.length === 0 && products.length > 0) {
    types.push('Product');
    for (const product of products) indexes.set(product, [0]);
  }
  // A group that says nothing of what is to be done in it remains a group.
  if (types.length === 0) {
    types.push(attributeOf(nodes[0]!, 'Type') ?? 'ProcessGroup');
    indexes.set(nodes[0]!, [0]);
  }
  return { types, indexes };
}

/** The processes of a node itself; none of one that only groups others. */
export function typesOf(node: XmlElement): readonly string[] {
  const type = attributeOf(node, 'Type') ?? '';
  const types = splitTokens(attributeOf(node, 'Types') ?? '');
  if (type === 'Combined' || (type === 'ProcessGroup' && types.length > 0)) return types;
  return type === 'ProcessGroup' || type === '' || childElements(node, 'JDF').length > 0 ? [] : [type];
}
