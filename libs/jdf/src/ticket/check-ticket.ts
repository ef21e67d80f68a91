import type { Problem } from '#libs/kernel';
import { Findings } from '../codec/index.js';
import { childElements, type XmlDocument, type XmlElement } from '../xml/index.js';
import { checkNode } from './checks/node-checks.js';
import { checkInline, checkPartition } from './checks/partition-checks.js';
import { checkReferences, collectIds } from './checks/reference-checks.js';
import { ticketElements } from './checks/scope.js';
import { kindOf } from './kind.js';
import { isNode, nodesOf } from './node.js';

/**
 * What is wrong with a JDF ticket beyond its XML: required attributes and closed lists, IDs, references, links, nodes
 * and partitions; each with line, XPath and remedy. Foreign elements and capability descriptions are passed over. Empty
 * for a sound ticket; for a document that is no JDF, why it is none.
 */
export function checkTicket(doc: XmlDocument): readonly Problem[] {
  const kind = kindOf(doc);
  if (!kind.ok) return kind.problems;
  if (kind.value !== 'jdf') return [];
  const findings = new Findings(doc, { missing: 'JDF_MISSING', wrong: 'JDF_VALUE' });
  for (const node of nodesOf(doc.root)) checkNode(node, node === doc.root, findings);
  const ids = collectIds(ticketElements(doc.root), findings);
  for (const el of ticketElements(doc.root)) {
    if (findings.full) return findings.problems;
    checkReferences(doc, el, ids, findings);
  }
  for (const node of nodesOf(doc.root)) {
    for (const pool of childElements(node, 'ResourcePool')) {
      for (const resource of childElements(pool)) checkResourceTree(resource, findings);
    }
  }
  return findings.problems;
}

function checkResourceTree(resource: XmlElement, findings: Findings): void {
  checkPartition(resource, findings);
  for (const el of ticketElements(resource)) {
    for (const child of childElements(el)) {
      if (child.local !== el.local && !isNode(child)) checkInline(child, findings);
    }
  }
}
