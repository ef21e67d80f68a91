/** Work on a part of a random ticket, done in the ticket itself or in the one that the part has left in. */
import {
  attributeOf,
  childElements,
  element,
  findById,
  firstChild,
  partsOf,
  replaceElements,
  statusOfParts,
  withAttributes,
  withChildren,
  type XmlDocument,
  type XmlElement,
  type XmlNode,
} from '#libs/jdf';
import type { Edit, Work } from './random-tickets.js';

const STATUSES = ['Waiting', 'Setup', 'InProgress', 'Stopped', 'Completed', 'Aborted'] as const;

const named = (doc: XmlDocument, id: string): XmlElement => {
  const found = findById(doc, id);
  if (found === undefined) throw new Error(`${id} is not in the ticket`);
  return found;
};

const swap = (doc: XmlDocument, before: XmlElement, after: XmlElement): XmlDocument =>
  replaceElements(doc, new Map([[before, after]]));

const placeIn = (resource: XmlElement, { parts }: Work): XmlElement =>
  parts.length === 0
    ? resource
    : partsOf(resource).find((one) => attributeOf(one, 'SheetName') === parts[0]!.SheetName)!;

const made = (
  node: XmlElement,
  name: string,
  attributes: Record<string, string>,
  children: readonly XmlNode[] = [],
): XmlElement => {
  const before = node.prefix === '' ? '' : `${node.prefix}:`;
  const prefixed = (child: XmlNode): XmlNode => child;
  return element(before + name, attributes, children.map(prefixed), node.uri);
};

const added = (el: XmlElement, ...children: readonly XmlNode[]): XmlElement =>
  withChildren(el, [...el.children, ...children]);

/** Pools of a node: changed where they are, made where they are not. */
function inPool(doc: XmlDocument, nodeId: string, pool: string, child: XmlElement): XmlDocument {
  const node = named(doc, nodeId);
  const found = firstChild(node, pool);
  if (found !== undefined) return swap(doc, found, added(found, child));
  return swap(doc, node, added(node, made(node, pool, {}, [child])));
}

/** Does one piece of work in a ticket: the whole (`alone` false) or the one that the node has been spawned in. */
export function edited(doc: XmlDocument, work: Work, edit: Edit, alone: boolean): XmlDocument {
  const { nodeId, parts } = work;
  const node = named(doc, nodeId);
  const number = Number(nodeId.slice(1));
  const isGroup = nodeId.startsWith('g');
  const part = parts.map((keys) => made(node, 'Part', keys));
  switch (edit.kind) {
    case 'status':
      return withStatus(doc, work, STATUSES[edit.value]!, alone);
    case 'schedule': {
      if (isGroup) return doc;
      const place = placeIn(named(doc, `info${number}`), work);
      return swap(doc, place, withAttributes(place, { End: `2026-05-0${edit.value + 1}T10:00:00Z` }));
    }
    case 'made': {
      if (isGroup) return doc;
      const place = placeIn(named(doc, `c${number + 1}`), work);
      return swap(
        doc,
        place,
        withAttributes(place, { AmountProduced: edit.value * 10, Status: 'Available' }),
      );
    }
    case 'amount': {
      if (isGroup) return doc;
      const link = childElements(firstChild(node, 'ResourceLinkPool')!).find(
        (one) => attributeOf(one, 'Usage') === 'Output',
      )!;
      const amounts = childElements(firstChild(link, 'AmountPool')!, 'PartAmount');
      const own = amounts.find(
        (one) =>
          parts.length === 0 || attributeOf(firstChild(one, 'Part')!, 'SheetName') === parts[0]!.SheetName,
      )!;
      return swap(doc, own, withAttributes(own, { ActualAmount: edit.value }));
    }
    case 'audit': {
      const time = `2026-05-02T0${edit.value}:00:00Z`;
      return inPool(
        doc,
        nodeId,
        'AuditPool',
        made(
          node,
          'Notification',
          { ID: `a_${edit.key}`, Class: 'Event', Type: 'Barcode', TimeStamp: time },
          part,
        ),
      );
    }
    case 'resource': {
      if (isGroup) return doc;
      const resource = made(node, 'MiscConsumable', {
        ID: `r_${edit.key}`,
        Class: 'Consumable',
        Status: 'Available',
      });
      const link = made(node, 'MiscConsumableLink', { rRef: `r_${edit.key}`, Usage: 'Input' }, part);
      return inPool(inPool(doc, nodeId, 'ResourcePool', resource), nodeId, 'ResourceLinkPool', {
        ...link,
        children: [],
      });
    }
    case 'reference': {
      if (isGroup) return doc;
      const media = made(node, 'Media', { ID: `m_${edit.key}`, Class: 'Consumable', Status: 'Available' });
      const place = placeIn(named(doc, `c${number + 1}`), work);
      const next = swap(doc, place, added(place, made(node, 'MediaRef', { rRef: `m_${edit.key}` })));
      return inPool(next, alone ? attributeOf(next.root, 'ID')! : 'root', 'ResourcePool', media);
    }
    case 'foreign':
      return parts.length > 0
        ? doc
        : swap(doc, node, added(node, element('f:mark', { key: edit.key }, [], 'urn:example:foreign')));
    case 'node': {
      if (!isGroup) return doc;
      const inner = made(node, 'JDF', { ID: `n_${edit.key}`, Type: 'ProcessGroup', Status: 'Waiting' });
      return swap(doc, node, added(node, inner));
    }
  }
}

function withStatus(doc: XmlDocument, work: Work, status: string, alone: boolean): XmlDocument {
  const node = named(doc, work.nodeId);
  if (work.parts.length === 0 || alone) return swap(doc, node, withAttributes(node, { Status: status }));
  const info = named(doc, `info${work.nodeId.slice(1)}`);
  const place = placeIn(info, work);
  const next = swap(doc, place, withAttributes(place, { NodeStatus: status }));
  const leaves = partsOf(named(next, attributeOf(info, 'ID')!)).map(
    (one) => attributeOf(one, 'NodeStatus') as 'Waiting',
  );
  const whole = named(next, work.nodeId);
  return swap(next, whole, withAttributes(whole, { Status: statusOfParts(leaves) }));
}

/** All edits of all work, done in the ticket itself. */
export function workedInPlace(doc: XmlDocument, work: readonly Work[]): XmlDocument {
  return work.reduce(
    (at, one) =>
      workedInPlace(
        one.edits.reduce((so, edit) => edited(so, one, edit, false), at),
        one.inner,
      ),
    doc,
  );
}
