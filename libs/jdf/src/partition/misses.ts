import type { PartKeys } from '../elements/part.js';
import { keysBelow, valuesBelow } from './part-index.js';
import type { PartNode, PartTree } from './part-tree.js';

/** Why a selection leads to nothing: the place deepest in the tree where it went on no further. */
export interface Miss {
  /** Which selection, from 0. */
  readonly selection: number;
  /**
   * `key`: the resource is not divided by it. `value`: parts around go by this key, none with this value. `ends`: the
   * part around is not divided by it.
   */
  readonly lacks: 'key' | 'value' | 'ends';
  readonly key: string;
  readonly value: string;
  /** The keys of the part around. */
  readonly around: PartKeys;
  /** What there is instead: the keys of the resource, the first values that the parts around have, or nothing. */
  readonly exist: readonly string[];
}

// More are of no help to whoever reads the message.
const SHOWN = 8;

/** Keeps the miss that lies deepest, since it tells most; the first of several. */
export class Misses {
  #depth = -1;
  #best: Omit<Miss, 'selection'> | undefined;

  constructor(readonly tree: PartTree) {}

  /** Nothing can be found any more. */
  get hopeless(): boolean {
    return this.#best?.lacks === 'key';
  }

  /** The resource is not partitioned by this key at all. */
  unknown(key: string, value: string): void {
    this.#best ??= { lacks: 'key', key, value, around: {}, exist: this.tree.keys };
  }

  /** Below this part none has the wanted value. */
  noValue(node: PartNode, wanted: PartKeys): void {
    if (!this.#isDeeper(node)) return;
    const named = keysBelow(node).find((name) => Object.hasOwn(wanted, name));
    // Only a wrongly written part with several keys disagrees by another than its last.
    const key = named ?? Object.keys(wanted)[0]!;
    this.#best = {
      lacks: 'value',
      key,
      value: wanted[key]!,
      around: node.keys,
      exist: valuesBelow(node, key, SHOWN + 1),
    };
  }

  /** The tree ends here, before a wanted key is told apart. */
  ends(node: PartNode, wanted: PartKeys): void {
    if (!this.#isDeeper(node)) return;
    const key = this.tree.keys.find(
      (name) => Object.hasOwn(wanted, name) && !Object.hasOwn(node.keys, name),
    )!;
    this.#best = { lacks: 'ends', key, value: wanted[key]!, around: node.keys, exist: [] };
  }

  /** The miss to tell of the selection with this index. One must have been kept. */
  told(selection: number): Miss {
    return { selection, ...this.#best! };
  }

  #isDeeper(node: PartNode): boolean {
    const depth = Object.keys(node.keys).length;
    if (depth <= this.#depth) return false;
    this.#depth = depth;
    return true;
  }
}

/** The miss in words, and how to mend it. */
export function explainMiss(
  resource: string,
  miss: Miss,
): { readonly message: string; readonly hint: string } {
  const { lacks, key, value, exist } = miss;
  const around = wordsOf(miss.around);
  const asked = `${key}="${cut(value)}"`;
  const shown = exist.slice(0, SHOWN).map(cut).join(', ') + (exist.length > SHOWN ? ' …' : '');
  if (lacks === 'key') {
    return {
      message: `${resource} is not divided by ${key}, which the Part names.`,
      hint:
        exist.length === 0
          ? 'It has no PartIDKeys: leave the Part out, or divide the resource.'
          : `Its PartIDKeys are ${shown}; with PartUsage="Implicit" further keys are passed over.`,
    };
  }
  if (lacks === 'ends') {
    return {
      message: `No part of ${resource} has ${asked}: ${around === '' ? 'it' : `the part ${around}`} is not divided by ${key}.`,
      hint: `Leave ${key} out of the Part, or add the parts that it names.`,
    };
  }
  return {
    message: `No part of ${resource}${around === '' ? '' : ` in ${around}`} has ${asked}.`,
    hint: `There ${exist.length === 1 ? 'is' : 'are'} ${key} ${shown}.`,
  };
}

/** Keys with their values, as one reads them in the document. */
export const wordsOf = (keys: PartKeys): string =>
  Object.entries(keys)
    .map(([key, value]) => `${key}="${cut(value)}"`)
    .join(' ');

const cut = (text: string): string => (text.length > 40 ? `${text.slice(0, 40)}…` : text);
