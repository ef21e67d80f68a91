import type { Findings } from '../../codec/index.js';
import { keysOf } from '../../elements/part.js';
import { attributeOf, childElements, type XmlElement } from '../../xml/index.js';
import { isNode } from '../node.js';
import { partitionKeysOf, partsOf, selectPart } from '../partition.js';
import { partitionKeys } from '../partition-keys.js';
import { ticketElements } from './scope.js';
import type { TicketCheck } from './ticket-check.js';

const KEYS: ReadonlySet<string> = new Set(partitionKeys);

/** Standard reference, section 9, checks 5 and 7: the partition tree of each resource. */
export const partitions: TicketCheck = {
  number: 5,
  name: 'partitions',
  run({ nodes }, findings) {
    for (const { resources } of nodes) {
      for (const resource of resources) {
        checkPartition(resource, findings);
        for (const el of ticketElements(resource)) {
          for (const child of childElements(el)) {
            if (child.local !== el.local && !isNode(child)) checkInline(child, findings);
          }
        }
      }
    }
  },
};

/** The partition tree below a resource. */
function checkPartition(resource: XmlElement, findings: Findings): void {
  const names = partitionKeysOf(resource);
  for (const name of names) {
    if (!KEYS.has(name) && !name.includes(':')) {
      findings.error(
        'JDF_PARTITION',
        resource,
        `PartIDKeys of ${resource.name} names "${name}", which is no key.`,
      );
    }
  }
  if (new Set(names).size < names.length) {
    findings.error('JDF_PARTITION', resource, `PartIDKeys of ${resource.name} names a key twice.`);
  }
  checkParts(resource, resource, names, 0, findings);
}

function checkParts(
  root: XmlElement,
  parent: XmlElement,
  names: readonly string[],
  level: number,
  findings: Findings,
): void {
  const parts = partsOf(parent);
  // Same-named elements without keys in a resource without PartIDKeys are sub-elements of their own kind.
  const seen = new Set<string>();
  for (const part of parts) {
    if (findings.full) return;
    const stated = part.attributes.filter(({ uri, local }) => uri === '' && KEYS.has(local));
    if (names.length === 0 && stated.length === 0) continue;
    const name = names[level];
    const right = stated.length === 1 && stated[0]!.local === name;
    if (!right) {
      const has = stated.map(({ local }) => local).join(' and ') || 'no key';
      const hint =
        name === undefined
          ? 'PartIDKeys of the resource names no further key.'
          : `It must have ${name} and no other.`;
      findings.error('JDF_PARTITION', part, `This part of ${root.name} has ${has}.`, hint);
      continue;
    }
    const { value } = stated[0]!;
    if (seen.has(value)) {
      findings.error('JDF_PARTITION', part, `There are two parts with ${name}="${value}".`);
    }
    seen.add(value);
    checkLeafAttributes(part, findings);
    checkIdentical(root, part, names, level + 1, findings);
    checkParts(root, part, names, level + 1, findings);
  }
}

function checkLeafAttributes(part: XmlElement, findings: Findings): void {
  for (const name of ['ID', 'Class', 'PartIDKeys']) {
    if (attributeOf(part, name) !== undefined) {
      const hint = `${name} stands on the root of the resource.`;
      findings.error('JDF_PARTITION', part, `A part of ${part.name} states ${name} of its own.`, hint);
    }
  }
}

/** Identical must name one part of the same level that is there and is not itself Identical to another. */
function checkIdentical(
  root: XmlElement,
  part: XmlElement,
  names: readonly string[],
  level: number,
  findings: Findings,
): void {
  for (const identical of childElements(part, 'Identical')) {
    const named = childElements(identical, 'Part')[0];
    const selection = named === undefined ? {} : keysOf(named);
    const found = selectPart(root, selection);
    const target = found?.chain.at(-1);
    if (target === undefined || found!.chain.length !== Object.keys(selection).length + 1) {
      findings.error('JDF_PARTITION', identical, `Identical names a part of ${root.name} that is not there.`);
    } else if (found!.chain.length - 1 !== level) {
      findings.error(
        'JDF_PARTITION',
        identical,
        'Identical names a part of another level.',
        `It must name ${names.slice(0, level).join(', ')}.`,
      );
    } else if (target === part || childElements(target, 'Identical').length > 0) {
      findings.error(
        'JDF_PARTITION',
        identical,
        'Identical names a part that is itself Identical to another.',
      );
    }
  }
}

/** A sub-element written inline may not be partitioned: only a resource of its own may, by a reference. */
function checkInline(el: XmlElement, findings: Findings): void {
  const hint = `Make ${el.local} a resource of its own and refer to it by ${el.local}Ref.`;
  if (attributeOf(el, 'PartIDKeys') !== undefined) {
    findings.error('JDF_PARTITION', el, `${el.name} is written inline and has PartIDKeys.`, hint);
    return;
  }
  for (const part of partsOf(el)) {
    if (part.attributes.some(({ uri, local }) => uri === '' && KEYS.has(local))) {
      findings.error('JDF_PARTITION', part, `${el.name} is written inline and has parts.`, hint);
      return;
    }
  }
}
