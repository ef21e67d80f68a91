import { done, error, type Result, refuse } from '#libs/kernel';
import { nodesOf } from '../ticket/node.js';
import {
  attributeOf,
  elementsLike,
  replaceElements,
  withAttributes,
  type XmlDocument,
  type XmlElement,
} from '../xml/index.js';
import { type Act, auditStamp } from './agent.js';
import { inventoryOf } from './inventory.js';
import { placesMarked, withoutToken } from './marks.js';
import { nodeInfoOf, statusOfLeaves, withPooled, withStatus } from './node-info.js';
import { where } from './places.js';
import { modesOf, openRecords, recordsOf, type SpawnRecord } from './records.js';
import { withPlaces } from './scope.js';

/**
 * The ticket as if what left with a SpawnID came back untouched: for what will never come back. The status is again the
 * one it left with, the marks are taken off, and a Merged audit that overwrites nothing closes the spawning, so that the
 * ticket is refused should it turn up after all. Errors: JDF_MERGE where nothing is out with that SpawnID, or where
 * partitions left with several statuses.
 */
export function unspawn(doc: XmlDocument, spawnId: string, act: Act): Result<XmlDocument> {
  const records = recordsOf(doc.root);
  const record = openRecords(records).find(({ token }) => token === spawnId);
  if (record === undefined) {
    const tokens = openRecords(records).map(({ token }) => token);
    const hint = tokens.length === 0 ? 'Nothing of the ticket is out.' : `Out are: ${tokens.join(', ')}.`;
    return refuse(error('JDF_MERGE', `Nothing is out with SpawnID "${spawnId}".`, { hint }));
  }
  const status = attributeOf(record.audit, 'Status');
  if (status === undefined || status === 'Part') {
    const hint = 'Merge the ticket back as it left.';
    const message = `The Spawned audit of "${spawnId}" does not say which status to go back to.`;
    return refuse(error('JDF_MERGE', message, { ...where(doc, record.audit), hint }));
  }
  const unmarked = withoutMarks(doc, record, records, status);
  return done({ ...unmarked, root: closed(unmarked.root, record, status, act) });
}

function withoutMarks(
  doc: XmlDocument,
  record: SpawnRecord,
  records: readonly SpawnRecord[],
  status: string,
): XmlDocument {
  const { resources } = inventoryOf(doc.root);
  const partial = record.parts.length > 0;
  const exchanged = new Map<XmlElement, XmlElement>();
  for (const id of [...record.readOnly, ...record.readWrite]) {
    const root = resources.get(id)?.root;
    if (root === undefined) continue;
    const out = new Set(partial && root.local === 'NodeInfo' ? placesMarked(root, record.token) : []);
    const back = withPlaces(root, (place) =>
      out.has(place) && attributeOf(place, 'NodeStatus') === 'Spawned'
        ? withStatus(place, status)
        : undefined,
    );
    exchanged.set(root, withoutToken(back, record.token, modesOf(records, id)));
  }
  return replaceElements(doc, exchanged);
}

function closed(root: XmlElement, record: SpawnRecord, status: string, act: Act): XmlElement {
  const inventory = inventoryOf(root);
  const make = elementsLike(record.owner);
  const audit = make(
    'Merged',
    { ...auditStamp(act), jRef: record.nodeId, MergeID: record.token },
    record.parts.map((part) => make('Part', part)),
  );
  const left = inventory.nodes.get(record.nodeId);
  const partial = record.parts.length > 0;
  const inner = left === undefined ? [] : partial ? [...nodesOf(left)] : [left];
  const inside = new Set(inner.filter((node) => !partial || attributeOf(node, 'Status') === 'Part'));
  const visit = (node: XmlElement): XmlElement => {
    const children = node.children.map((child) =>
      child.kind === 'element' && child.local === 'JDF' && child.uri === node.uri ? visit(child) : child,
    );
    const next = { ...node, children };
    const own = inside.has(node)
      ? withAttributes(next, { Status: statusBack(node, status, record, inventory) })
      : next;
    return attributeOf(node, 'ID') === attributeOf(record.owner, 'ID')
      ? withPooled(own, 'AuditPool', [audit])
      : own;
  };
  return visit(root);
}

function statusBack(
  node: XmlElement,
  status: string,
  record: SpawnRecord,
  inventory: ReturnType<typeof inventoryOf>,
): string | undefined {
  if (record.parts.length === 0) return status;
  const info = nodeInfoOf(inventory, node);
  return (info && statusOfLeaves(node, info)) ?? attributeOf(node, 'Status');
}
