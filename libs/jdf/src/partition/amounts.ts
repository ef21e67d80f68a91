import { parseNumber } from '../codec/index.js';
import type { PartKeys } from '../elements/part.js';
import { attributeOf, childElements, type XmlElement } from '../xml/index.js';
import { partAttribute } from './effective-part.js';
import { freeInAmounts } from './keys.js';
import { partsNamed } from './references.js';
import { type Partition, resolveParts } from './resolve.js';
import { type Amounts, Tally } from './tally.js';

/** Amounts that a link or a PartAmount states, in the unit of the resource. */
export type LinkAmountKind = 'Amount' | 'ActualAmount' | 'MinAmount' | 'MaxAmount';

/** Amounts that a physical resource states, in its unit. */
export type ResourceAmountKind = 'Amount' | 'AmountProduced' | 'AmountRequired';

/**
 * One kind of amount of a link, added up for the parts that share the keys `by` (none: one group; all of PartIDKeys: one
 * for each leaf). An amount of a link belongs to everything that it names together, so it is not inherited: a PartAmount
 * to what its Part elements mean within the link's own, the link's attribute to all that the link means. The attribute
 * is the total of the PartAmounts (JDF AmountPool), so it counts only where none of them states
 * this kind. Parts that are identical count as one. What is no number counts as not stated.
 */
export function linkAmounts(
  link: XmlElement,
  resource: XmlElement,
  kind: LinkAmountKind,
  by: readonly string[] = [],
): Amounts {
  const free = freeInAmounts(resource.local);
  const meant = resolveParts(resource, partsNamed(link), { free }).found;
  const below = leavesBelow(meant);
  const pooled = childElements(link, 'AmountPool')
    .flatMap((pool) => childElements(pool, 'PartAmount'))
    .flatMap((el) => statedAmount(el, kind));
  const stated = pooled.length > 0 ? pooled : statedAmount(link, kind);
  const tally = new Tally(meant, by);
  for (const { value, parts } of stated) {
    const leaves = resolveParts(resource, parts, { free }).found.flatMap(
      (part) => below.get(placeOf(part)) ?? [],
    );
    tally.add(value, conditionOf(parts), leaves);
  }
  return tally.amounts();
}

/**
 * One kind of amount of a physical resource, added up for the parts that share the keys `by`. As every attribute of a
 * resource it is inherited: what a part states holds for each leaf in it that states nothing else (JDF
 * PartIDKeys), so two plates of a set of eight with Amount="2" are sixteen.
 */
export function resourceAmounts(
  resource: XmlElement,
  kind: ResourceAmountKind,
  by: readonly string[] = [],
): Amounts {
  const leaves = resolveParts(resource, []).found;
  const tally = new Tally(leaves, by);
  for (const leaf of leaves) {
    const value = parseNumber(partAttribute(leaf, kind) ?? '');
    if (value !== undefined) tally.add(value, leaf.keys.Condition, [placeOf(leaf)]);
  }
  return tally.amounts();
}

interface Stated {
  readonly value: number;
  readonly parts: readonly PartKeys[];
}

function statedAmount(el: XmlElement, kind: LinkAmountKind): Stated[] {
  const value = parseNumber(attributeOf(el, kind) ?? '');
  return value === undefined ? [] : [{ value, parts: partsNamed(el) }];
}

/** The Condition that all Part elements agree on. */
function conditionOf(parts: readonly PartKeys[]): string | undefined {
  const [first, ...others] = new Set(parts.map(({ Condition }) => Condition));
  return others.length === 0 ? first : undefined;
}

/** What makes two names the same part. */
const placeOf = ({ chain }: Partition): XmlElement => chain.at(-1)!;

/** The leaves in each part around them, themselves included: what an inner part that stands in for another stands for. */
function leavesBelow(leaves: readonly Partition[]): ReadonlyMap<XmlElement, readonly XmlElement[]> {
  const below = new Map<XmlElement, XmlElement[]>();
  for (const leaf of leaves) {
    for (const el of leaf.chain) {
      const there = below.get(el);
      if (there === undefined) below.set(el, [placeOf(leaf)]);
      else there.push(placeOf(leaf));
    }
  }
  return below;
}
