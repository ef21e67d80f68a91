import type { Findings } from '../codec/index.js';
import { childElements, type XmlElement } from '../xml/index.js';
import { identicalKeys, identityOf } from './identical.js';
import { wordsOf } from './misses.js';
import { type PartNode, type PartTree, partTreeOf } from './part-tree.js';

const CODE = 'JDF_PARTITION';

/**
 * The elements Identical of a resource: each names one other part of its level
 * that is there and is not itself, or within, a part that is identical to another. So there is no chain and no loop.
 */
export function checkIdenticals(resource: XmlElement, findings: Findings): void {
  const tree = partTreeOf(resource);
  for (const identical of childElements(resource, 'Identical')) {
    const hint = `Put it into a part of ${resource.local}.`;
    findings.error(CODE, identical, 'The root of a resource is not identical to a part.', hint);
  }
  checkBelow(tree, tree.root, findings);
}

function checkBelow(tree: PartTree, around: PartNode, findings: Findings): void {
  for (const node of around.parts) {
    if (findings.full) return;
    if (node.identical !== undefined) checkPart(tree, node, node.identical, findings);
    checkBelow(tree, node, findings);
  }
}

function checkPart(tree: PartTree, node: PartNode, identical: XmlElement, findings: Findings): void {
  const [, second] = childElements(node.element, 'Identical');
  if (second !== undefined) {
    findings.error(CODE, second, 'A part is identical to one other part.', 'Leave out the others.');
  }
  if (childElements(identical, 'Part').length > 1) {
    findings.error(CODE, identical, 'Identical names several parts.', 'Name the one that this part is.');
  }
  if (node.parts.length > 0) {
    const hint = 'Its parts are those of the other: leave them out here.';
    findings.error(CODE, node.parts[0]!.element, 'A part that is identical to another has parts.', hint);
  }
  const fault = faultOf(tree, node, identical);
  if (fault !== undefined) findings.error(CODE, identical, ...fault);
}

function faultOf(tree: PartTree, node: PartNode, identical: XmlElement): [string, string] | undefined {
  const named = wordsOf(identicalKeys(identical));
  const keys = Object.keys(node.keys).join(', ');
  switch (identityOf(tree, node, identical).kind) {
    case 'part':
      return undefined;
    case 'nothing':
      return ['Identical names no part.', `Put a Part with ${keys} into it.`];
    case 'level':
      return [`Identical names a part of another level: ${named}.`, `It must name ${keys}.`];
    case 'absent':
      return [
        `Identical names ${named}, which is not there.`,
        `Name a part of ${tree.root.element.local} by ${keys}.`,
      ];
    case 'twice':
      return [`Identical names ${named}, which is there twice.`, 'Leave one of the two out.'];
    case 'itself':
      return ['Identical names the part that it stands in.', 'Name the other one, or leave Identical out.'];
    case 'chain':
      return [
        `Identical names ${named}, which is itself identical to another part.`,
        'Name that other part instead.',
      ];
  }
}
