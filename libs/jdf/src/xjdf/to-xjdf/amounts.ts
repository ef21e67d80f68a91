import { oncePer } from '#libs/kernel';
import { keysOf, type PartKeys } from '../../elements/part.js';
import { childElements, firstChild, type XmlElement } from '../../xml/index.js';
import { addAll } from '../add-all.js';
import { attributeNode } from '../ledger.js';
import { OF_LINK } from '../resource-set.js';
import type { Overflow } from '../source.js';
import { carryAttribute, Draft, finish } from '../translate.js';
import { asToken } from '../values.js';
import type { Job } from './job.js';
import { carryPart, partElement } from './parts.js';
import { type Resources, shapeOf } from './resources.js';

/** What is planned, and its limits. */
const PLANNED = ['Amount', 'MinAmount', 'MaxAmount'] as const;
/** What was really used or made. */
const ACTUAL = ['ActualAmount'] as const;

type Names = typeof PLANNED | typeof ACTUAL;

/** Amounts of a link (or, where it has none, of the resource itself) as the AmountPool of one leaf. */
export function amountPool(
  job: Job,
  resources: Resources,
  resource: XmlElement,
  chain: readonly XmlElement[],
  links: readonly XmlElement[],
  keys: PartKeys,
  alone: boolean,
): XmlElement | undefined {
  const { parts, draftFor } = amountsOf(job, resources, resource, links, keys, alone, PLANNED);
  // What a partition inherits holds for each of its parts.
  const level = [...chain].reverse().find((one) => attributeNode(one, 'Amount') !== undefined);
  const own = level && attributeNode(level, 'Amount');
  const plain = parts.get('{}');
  if (own !== undefined) {
    if (plain?.attributes.has('Amount') !== true) {
      if (parts.size === 0) takeAmounts(resources, level!, draftFor, {}, undefined, PLANNED);
      else job.ledger.reason(own, 'the link says other amounts, which go before');
    } else if (plain.attributes.get('Amount') === own.value) job.ledger.carry(own);
    else job.ledger.reason(own, 'the link says another amount, which goes before');
  }
  return poolOf(resources, parts);
}

/**
 * What a link says was really used or made, as an AmountPool with all parts in it; undefined where it says nothing. The
 * newer generation has such amounts in audits and signals only.
 */
export function actualPool(
  job: Job,
  resources: Resources,
  resource: XmlElement,
  link: XmlElement,
): XmlElement | undefined {
  return poolOf(resources, amountsOf(job, resources, resource, [link], {}, true, ACTUAL).parts);
}

// Before it may stand thousands of parts, and each leaf that the link selects asks for it.
const poolIn = oncePer((link: XmlElement) => firstChild(link, 'AmountPool'));

interface DraftAmounts {
  /** By the keys of the part beyond those of the leaf, as JSON. */
  readonly parts: ReadonlyMap<string, Draft>;
  readonly draftFor: (rest: PartKeys) => Draft;
}

function amountsOf(
  job: Job,
  resources: Resources,
  resource: XmlElement,
  links: readonly XmlElement[],
  keys: PartKeys,
  alone: boolean,
  names: Names,
): DraftAmounts {
  const parts = new Map<string, Draft>();
  const draftFor = (rest: PartKeys): Draft => {
    const key = JSON.stringify(rest);
    const known = parts.get(key);
    if (known !== undefined) return known;
    const draft = new Draft('PartAmount', shapeOf('PartAmount'));
    const part =
      Object.keys(rest).length === 0 ? undefined : partElement(resources.direction, resource, rest, NOWHERE);
    if (part !== undefined) draft.children.push(part);
    parts.set(key, draft);
    return draft;
  };
  for (const link of links) {
    const pool = poolIn(link);
    if (alone) takeAmounts(resources, link, draftFor, {}, undefined, names);
    for (const { amount, part, named, condition } of pool === undefined ? [] : statedOf(pool, keys)) {
      const rest = Object.fromEntries(Object.entries(named).filter(([key]) => keys[key] === undefined));
      takeAmounts(resources, amount, draftFor, rest, condition, names);
      carryPart(resources.direction, part);
      job.ledger.carry(pool!, amount);
    }
  }
  return { parts, draftFor };
}

function poolOf(resources: Resources, parts: ReadonlyMap<string, Draft>): XmlElement | undefined {
  const written = [...parts.values()].filter(
    (draft) => draft.attributes.size > 0 || draft.count('PartWaste') > 0,
  );
  if (written.length === 0) return undefined;
  const pool = new Draft('AmountPool', shapeOf('AmountPool'));
  addAll(
    pool.children,
    written.map((draft) => finish(resources.direction, draft)),
  );
  return finish(resources.direction, pool);
}

/** What an AmountPool says of one part. */
interface Stated {
  readonly amount: XmlElement;
  readonly part: XmlElement;
  readonly named: PartKeys;
  readonly condition: string | undefined;
}

// A link may state amounts of thousands of parts, and each leaf asks for its own: each pool is gone through once for the
// keys that leaves have, not once a leaf.
const indexesOf = oncePer((_pool: XmlElement) => new Map<string, ReadonlyMap<string, readonly Stated[]>>());

/** What a pool says of a leaf with these keys or of parts of it. */
function statedOf(pool: XmlElement, keys: PartKeys): readonly Stated[] {
  const names = Object.keys(keys).sort();
  const byNames = indexesOf(pool);
  const known = byNames.get(names.join(' ')) ?? indexedBy(pool, names);
  byNames.set(names.join(' '), known);
  return known.get(valuesOf(names, keys)) ?? [];
}

function indexedBy(pool: XmlElement, names: readonly string[]): ReadonlyMap<string, readonly Stated[]> {
  const index = new Map<string, Stated[]>();
  for (const amount of childElements(pool, 'PartAmount')) {
    for (const part of childElements(amount, 'Part')) {
      const { Condition: condition, ...named } = keysOf(part);
      const values = valuesOf(names, named);
      const stated = index.get(values) ?? [];
      index.set(values, stated);
      stated.push({ amount, part, named, condition });
    }
  }
  return index;
}

const valuesOf = (names: readonly string[], keys: PartKeys): string =>
  JSON.stringify(names.map((name) => keys[name] ?? null));

const NOWHERE: Overflow = { nodes: [], originals: [], keys: {} };

/** Good and waste are conditions of a part in the older generation; here waste has its own attribute. */
function takeAmounts(
  resources: Resources,
  el: XmlElement,
  draftFor: (rest: PartKeys) => Draft,
  rest: PartKeys,
  condition: string | undefined,
  names: Names,
): void {
  for (const name of names) {
    const attribute = attributeNode(el, name);
    if (attribute === undefined) continue;
    const local = name === 'ActualAmount' ? 'Amount' : name;
    if (condition === undefined || condition === 'Good') {
      carryAttribute(resources.direction, 'PartAmount', attribute, draftFor(rest), NOWHERE, { local });
    } else if (local === 'Amount' && condition === 'Waste') {
      const draft = draftFor(rest);
      carryAttribute(resources.direction, 'PartAmount', attribute, draft, NOWHERE, { local: 'Waste' });
    } else if (local === 'Amount') {
      const waste = new Draft('PartWaste', shapeOf('PartWaste'));
      waste.attributes.set('WasteDetails', asToken(condition));
      if (carryAttribute(resources.direction, 'PartWaste', attribute, waste, NOWHERE, { local: 'Waste' })) {
        draftFor(rest).children.push(finish(resources.direction, waste));
      }
    }
  }
}

/** What links say beside amounts, put onto a Resource that was written. */
export function withLinkAttributes(
  resources: Resources,
  written: XmlElement,
  links: readonly XmlElement[],
): XmlElement {
  const draft = new Draft('Resource', shapeOf('Resource'));
  for (const link of links) {
    for (const name of OF_LINK) {
      const attribute = attributeNode(link, name);
      if (attribute !== undefined) carryAttribute(resources.direction, 'Resource', attribute, draft, NOWHERE);
    }
  }
  if (draft.attributes.size === 0) return written;
  const more = finish(resources.direction, draft).attributes;
  return { ...written, attributes: [...written.attributes, ...more] };
}
