import { oncePer } from '#libs/kernel';
import type { Findings } from '../../codec/index.js';
import { keysOf, type PartKeys } from '../../elements/part.js';
import {
  explainMiss,
  freeInAmounts,
  type Miss,
  partitionKeysOf,
  partitionLeaves,
  resolveParts,
  wordsOf,
} from '../../partition/index.js';
import { attributeOf, childElements, type XmlElement } from '../../xml/index.js';
import type { Ticket, TicketCheck, TicketNode } from './ticket-check.js';

const CODE = 'JDF_PARTITION';
const FREE = freeInAmounts('');

/**
 * JDF Part, PartIDKeys, for what speaks of a part of a node: audits, the parts of NodeInfo, and the
 * part that was spawned. A node has no parts of its own; they are those of the resources that it links. A warning, since
 * audits tell of what was, and a plan may run ahead of the resources.
 */
export const partsRecorded: TicketCheck = {
  number: 6,
  name: 'parts of nodes',
  run(ticket, findings) {
    for (const node of ticket.nodes) {
      const own = resourcesOf(node);
      for (const pool of childElements(node.element, 'AuditPool')) {
        for (const audit of childElements(pool)) {
          const resources = [...own, ...resourcesNamed(ticket, attributeOf(audit, 'jRef'))];
          for (const part of childElements(audit, 'Part')) checkPart(part, keysOf(part), resources, findings);
        }
      }
      for (const pool of childElements(node.element, 'AncestorPool')) {
        for (const part of childElements(pool, 'Part')) checkPart(part, keysOf(part), own, findings);
      }
      for (const { name, resource } of node.links) {
        if (name !== 'NodeInfo' || resource === undefined || partitionKeysOf(resource).length === 0) continue;
        const others = own.filter((other) => other !== resource);
        for (const { chain, keys } of partitionLeaves(resource)) {
          // Where nothing of the node is divided by these keys yet, NodeInfo is simply the first that is.
          if (isDivided(keys, others)) checkPart(chain.at(-1)!, keys, others, findings);
        }
      }
    }
  },
};

const resourcesOf = ({ links }: TicketNode): readonly XmlElement[] => [
  ...new Set(links.flatMap(({ resource }) => resource ?? [])),
];

/** Those of the node that a Spawned or Merged audit tells of, which is one below. */
function resourcesNamed({ nodes }: Ticket, id: string | undefined): readonly XmlElement[] {
  const node = id === undefined ? undefined : nodes.find(({ element }) => attributeOf(element, 'ID') === id);
  return node === undefined ? [] : resourcesOf(node);
}

/** The part is that of at least one resource, as far as it speaks of what that one is divided by. */
function checkPart(
  el: XmlElement,
  selection: PartKeys,
  resources: readonly XmlElement[],
  findings: Findings,
): void {
  const keys = only(selection, (key) => !FREE.has(key));
  let first: { readonly resource: XmlElement; readonly miss: Miss } | undefined;
  for (const resource of resources) {
    const meant = within(keys, resource);
    if (Object.keys(meant).length === 0) continue;
    const { missing } = resolveParts(resource, [meant], { most: 1 });
    if (missing.length === 0) return;
    first ??= { resource, miss: missing[0]! };
  }
  if (first !== undefined) {
    const { message, hint } = explainMiss(first.resource.name, first.miss);
    findings.warning(CODE, el, message, hint);
  } else if (Object.keys(keys).length > 0 && resources.some((one) => partitionKeysOf(one).length > 0)) {
    const hint = 'Name a part by the PartIDKeys of what the node uses or makes.';
    findings.warning(CODE, el, `No resource of the node is divided by ${wordsOf(keys)}.`, hint);
  }
}

const isDivided = (keys: PartKeys, resources: readonly XmlElement[]): boolean =>
  resources.some((resource) => Object.keys(within(keys, resource)).length > 0);

/** The keys of a selection that a resource is divided by. */
function within(keys: PartKeys, resource: XmlElement): PartKeys {
  const own = keySetOf(resource);
  return own.size === 0 ? NO_KEYS : only(keys, (key) => own.has(key));
}

const NO_KEYS: PartKeys = {};

const keySetOf = oncePer((resource: XmlElement): ReadonlySet<string> => new Set(partitionKeysOf(resource)));

/** Some of the keys of a selection. */
function only(keys: PartKeys, isWanted: (key: string) => boolean): PartKeys {
  const names = Object.keys(keys);
  if (names.every(isWanted)) return keys;
  return Object.fromEntries(names.filter(isWanted).map((key) => [key, keys[key]!]));
}
