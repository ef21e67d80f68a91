import type { PartKeys } from '../../elements/part.js';
import type { Partition } from '../../partition/index.js';
import type { XmlElement } from '../../xml/index.js';
import { xjdfVocabulary } from '../facts.js';
import type { Overflow, Source } from '../source.js';
import { carryAttribute, type Direction, Draft, finish } from '../translate.js';
import { asToken } from '../values.js';
import type { Job } from './job.js';

/** Attributes of a resource that the newer generation says by a partition. */
const AS_KEY: Readonly<Record<string, readonly (readonly [attribute: string, key: string])[]>> = {
  Ink: [
    ['ColorName', 'Separation'],
    ['InkName', 'Separation'],
  ],
  Color: [['Name', 'Separation']],
  Preview: [
    ['PreviewUsage', 'PreviewType'],
    ['PreviewType', 'PreviewType'],
  ],
  TransferCurve: [['Separation', 'Separation']],
};

/** The partitions that a leaf stands for: its own, those that are identical to it, and keys said by attributes. */
export function partsOfLeaf(
  job: Job,
  resource: XmlElement,
  leaf: Partition,
  source: Source,
  id: string,
): { readonly keys: readonly PartKeys[]; readonly source: Source } {
  const { ledger } = job;
  const extra: Record<string, string> = {};
  const attributes = source.attributes.filter((attribute) => {
    if (leaf.keys[attribute.local] === attribute.value && attribute.uri === '') return false;
    const [, key] = AS_KEY[resource.local]?.find(([name]) => name === attribute.local) ?? [];
    const said = key === undefined ? undefined : (leaf.keys[key] ?? extra[key]);
    if (said === attribute.value) {
      ledger.carry(attribute);
      return false;
    }
    if (key === undefined || said !== undefined) return true;
    extra[key] = attribute.value;
    ledger.carry(attribute);
    return false;
  });
  // Positions and assemblies name a binding signature by this key.
  if (resource.local === 'BinderySignature' && leaf.keys.BinderySignatureName === undefined) {
    extra.BinderySignatureName = asToken(id);
  }
  let keys: readonly PartKeys[] = [{ ...leaf.keys, ...extra }];
  if (resource.local === 'Contact') {
    const types = attributes.find(({ local }) => local === 'ContactTypes');
    if (types !== undefined) {
      ledger.carry(types);
      keys = types.value.split(/\s+/).map((ContactType) => ({ ...keys[0], ContactType }));
    }
  }
  return {
    keys: keys.filter((one) => Object.keys(one).length > 0),
    source: {
      ...source,
      attributes: attributes.filter(({ local }) => local !== 'ContactTypes' || resource.local !== 'Contact'),
    },
  };
}

/** A Part element from keys of the older generation; a key that the newer does not have is lost. */
export function partElement(
  direction: Direction,
  at: XmlElement,
  keys: PartKeys,
  overflow: Overflow,
): XmlElement | undefined {
  const draft = new Draft('Part', xjdfVocabulary.named('Part')!);
  for (const [name, value] of Object.entries(keys)) {
    const attribute = { name, prefix: '', local: name, uri: '', value };
    if (!carryAttribute(direction, 'Part', attribute, draft, overflow)) {
      direction.ledger.note(at, `the newer generation has no partition by ${name} "${value}"`);
    }
  }
  return draft.attributes.size === 0 ? undefined : finish(direction, draft);
}

/** A part that is selected is said by the Resources that are there, as far as they can say it. */
export function carryPart(direction: Direction, part: XmlElement): void {
  direction.ledger.carry(part);
  const draft = new Draft('Part', xjdfVocabulary.named('Part')!);
  for (const attribute of part.attributes) {
    // Good and waste are amounts of their own in the newer generation.
    if (attribute.local === 'Condition') direction.ledger.carry(attribute);
    else carryAttribute(direction, 'Part', attribute, draft, { nodes: [], originals: [], keys: {} });
    direction.ledger.reason(attribute, 'the newer generation has no such partition');
  }
}
