import { keysOf, type PartKeys } from '../elements/part.js';
import { firstChild, type XmlElement } from '../xml/index.js';
import { isKey } from './keys.js';
import { partsWith } from './part-index.js';
import type { PartNode, PartTree } from './part-tree.js';

/** What a part says to be identical with, or why that cannot be. */
export type Identity =
  | { readonly kind: 'part'; readonly part: PartNode }
  | { readonly kind: 'nothing' | 'level' | 'absent' | 'itself' | 'chain' | 'twice' };

/** The keys that the Part of an Identical names, without attributes that are no keys. */
export function identicalKeys(identical: XmlElement): PartKeys {
  const part = firstChild(identical, 'Part');
  const all = part === undefined ? [] : Object.entries(keysOf(part));
  return Object.fromEntries(all.filter(([name]) => isKey(name)));
}

/**
 * The part that a part with Identical is physically one with (JDF Identical): of the same level, so
 * that it is named by the same keys, and neither it nor a part around it is itself identical to another. Therefore
 * following it leads deeper with every step, and never round.
 */
export function identityOf(tree: PartTree, node: PartNode, identical: XmlElement): Identity {
  const wanted = identicalKeys(identical);
  const names = Object.keys(wanted);
  if (names.length === 0) return { kind: 'nothing' };
  if (
    names.length !== Object.keys(node.keys).length ||
    names.some((name) => !Object.hasOwn(node.keys, name))
  ) {
    return { kind: 'level' };
  }
  let at = tree.root;
  for (const step of nodesTo(node)) {
    const found = partsWith(at, step.key, wanted[step.key]!).filter(({ more }) => more.length === 0);
    if (found.length === 0) return { kind: 'absent' };
    if (found.length > 1) return { kind: 'twice' };
    at = found[0]!;
    if (at === node) return { kind: 'itself' };
    if (at.identical !== undefined) return { kind: 'chain' };
  }
  return { kind: 'part', part: at };
}

/** The part whose content a part has: its own, or that of the part it is identical to. A wrong Identical says nothing. */
export function physicalPart(tree: PartTree, node: PartNode): PartNode {
  if (node.identical === undefined) return node;
  const identity = identityOf(tree, node, node.identical);
  return identity.kind === 'part' ? identity.part : node;
}

/** The parts from the outermost down to this one, without the root. */
function nodesTo(node: PartNode): readonly PartNode[] {
  const nodes: PartNode[] = [];
  for (let at = node; at.parent !== undefined; at = at.parent) nodes.unshift(at);
  return nodes;
}
