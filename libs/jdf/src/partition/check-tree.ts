import type { Findings } from '../codec/index.js';
import { attributeOf, isElement, type XmlAttribute, type XmlElement } from '../xml/index.js';
import { canonical, type Interval, intervals } from './key-value.js';
import { isOwnAttribute, isPartitionKey, kindOfKey } from './keys.js';
import { wordsOf } from './misses.js';
import { keyValueOf, partitionKeysOf, partsOf } from './part-tree.js';

const CODE = 'JDF_PARTITION';

// What only the root states (attributes of the official JDF 1.9 schema).
const OF_ROOT: ReadonlySet<string> = new Set(['ID', 'Class', 'PartIDKeys', 'PartUsage']);

interface Tree {
  readonly root: XmlElement;
  readonly keys: readonly string[];
  /** Levels may be left out. */
  readonly sparse: boolean;
}

/**
 * The partition tree of a resource (JDF PartIDKeys): one key a level in the order of PartIDKeys,
 * siblings told apart by its value, and nothing on a part that belongs to the root.
 */
export function checkPartTree(root: XmlElement, findings: Findings): void {
  const named = partitionKeysOf(root);
  for (const key of named.filter((name) => !isPartitionKey(name) && !name.includes(':'))) {
    findings.error(CODE, root, `PartIDKeys of ${root.name} names "${key}", which is no key.`);
  }
  const keys = [...new Set(named)];
  if (keys.length < named.length) findings.error(CODE, root, `PartIDKeys of ${root.name} names a key twice.`);
  for (const key of keys) {
    const value = keyValueOf(root, key);
    if (value === undefined || isOwnAttribute(root.local, key)) continue;
    const hint = `Put a ${root.local} with ${wordsOf({ [key]: value })} into it.`;
    findings.error(CODE, root, `The root of ${root.name} states ${key}, which divides it.`, hint);
  }
  checkParts({ root, keys, sparse: attributeOf(root, 'PartUsage') === 'Sparse' }, root, 0, findings);
}

function checkParts(tree: Tree, around: XmlElement, level: number, findings: Findings): void {
  // Most parts have none inside: nothing is made for those.
  let siblings: Siblings | undefined;
  for (const part of around.children) {
    if (!isElement(part, around.local, around.uri)) continue;
    if (findings.full) return;
    siblings ??= new Siblings(findings);
    const key = onlyKey(tree, part);
    const at = key === undefined ? -1 : tree.keys.indexOf(key);
    if (key === undefined || (tree.sparse ? at < level : at !== level)) {
      const stated = statedKeys(tree, part);
      // Without keys on either side these are sub-elements that happen to be called like the resource.
      if (tree.keys.length === 0 && stated.length === 0) continue;
      const has = stated.join(' and ') || 'no key';
      findings.error(CODE, part, `This part of ${tree.root.name} has ${has}.`, expected(tree, level));
      continue;
    }
    siblings.add(part, key, keyValueOf(part, key)!);
    for (const { local: name, uri } of part.attributes) {
      if (uri !== '' || !OF_ROOT.has(name)) continue;
      const hint = `${name} stands on the root of the resource.`;
      findings.error(CODE, part, `A part of ${part.name} states ${name} of its own.`, hint);
    }
    checkParts(tree, part, at + 1, findings);
  }
  siblings?.tellOverlaps();
}

/** The key that an attribute of a part is; undefined where it is none. */
function keyIn({ root, keys }: Tree, { name, local, uri }: XmlAttribute): string | undefined {
  const key = uri === '' ? local : name;
  if (keys.includes(key)) return key;
  return uri === '' && isPartitionKey(key) && !isOwnAttribute(root.local, key) ? key : undefined;
}

/** The key that a part states; undefined where it states none or several. */
function onlyKey(tree: Tree, part: XmlElement): string | undefined {
  let only: string | undefined;
  for (const attribute of part.attributes) {
    const key = keyIn(tree, attribute);
    if (key === undefined) continue;
    if (only !== undefined) return undefined;
    only = key;
  }
  return only;
}

/** The keys that a part states, those of its resource first in their order. */
function statedKeys(tree: Tree, part: XmlElement): readonly string[] {
  const { keys } = tree;
  const stated = part.attributes.flatMap((attribute) => keyIn(tree, attribute) ?? []);
  const place = (key: string): number => (keys.includes(key) ? keys.indexOf(key) : keys.length);
  return stated.sort((a, b) => place(a) - place(b));
}

function expected({ keys, sparse }: Tree, level: number): string {
  const left = keys.slice(level);
  if (left.length === 0) return 'PartIDKeys of the resource names no further key.';
  return sparse ? `It must have one of ${left.join(', ')}.` : `It must have ${left[0]} and no other.`;
}

/** The parts in one part, to see that no two have the same value of a key, or ranges that hold the same place. */
class Siblings {
  readonly #seen = new Map<string, XmlElement>();
  readonly #ranges: (Interval & { readonly part: XmlElement; readonly words: string })[] = [];

  constructor(readonly findings: Findings) {}

  add(part: XmlElement, key: string, value: string): void {
    const name = `${key} ${canonical(key, value)}`;
    const first = this.#seen.get(name);
    if (first !== undefined) {
      const hint = `The first is that of line ${first.line}.`;
      this.findings.error(CODE, part, `There are two parts with ${wordsOf({ [key]: value })}.`, hint);
      return;
    }
    this.#seen.set(name, part);
    if (kindOfKey(key) !== 'integerRanges') return;
    const words = wordsOf({ [key]: value });
    for (const range of intervals(key, value)) this.#ranges.push({ ...range, part, words });
  }

  /** After the last: looks through the ranges from the lowest on, with what reaches furthest so far at hand. */
  tellOverlaps(): void {
    this.#ranges.sort((a, b) => (a.low < b.low ? -1 : a.low > b.low ? 1 : 0));
    let [furthest] = this.#ranges;
    for (const range of this.#ranges.slice(1)) {
      if (range.part !== furthest!.part && range.low <= furthest!.high) {
        const hint = `The part of line ${furthest!.part.line} has ${furthest!.words}: divide them anew, so that each place is in one.`;
        this.findings.warning(CODE, range.part, `${range.words} overlaps with another part.`, hint);
      }
      if (range.high > furthest!.high) furthest = range;
    }
  }
}

/** A sub-element written inline may not be partitioned: only a resource of its own may, by a reference. */
export function checkInline(el: XmlElement, findings: Findings): void {
  if (el.attributes.length === 0 && el.children.length === 0) return;
  const hint = `Make ${el.local} a resource of its own and refer to it by ${el.local}Ref.`;
  if (attributeOf(el, 'PartIDKeys') !== undefined) {
    findings.error(CODE, el, `${el.name} is written inline and has PartIDKeys.`, hint);
    return;
  }
  const isKeyed = (part: XmlElement): boolean =>
    part.attributes.some(
      ({ uri, local }) => uri === '' && isPartitionKey(local) && !isOwnAttribute(el.local, local),
    );
  const part = partsOf(el).find(isKeyed);
  if (part !== undefined) findings.error(CODE, part, `${el.name} is written inline and has parts.`, hint);
}
