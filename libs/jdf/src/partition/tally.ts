import type { PartKeys } from '../elements/part.js';
import type { XmlElement } from '../xml/index.js';
import { canonical } from './key-value.js';
import type { Partition } from './resolve.js';

/** Amounts added up; `stated` says from how many figures, so that nothing said is told from zero. */
export interface AmountSum {
  readonly stated: number;
  readonly total: number;
  /** What is stated for Condition="Good". */
  readonly good: number;
  /** What is stated for any other Condition: Waste, or a reason for it. */
  readonly waste: number;
}

export interface AmountGroup {
  /** The keys asked for, as far as the parts of the group have them. */
  readonly keys: PartKeys;
  /** How many leaves it has. */
  readonly leaves: number;
  /** Stated for parts that all belong to this group. */
  readonly own: AmountSum;
  /** Stated for parts of this group and of others together: it cannot be told how much of it belongs here. */
  readonly shared: AmountSum;
}

export interface Amounts {
  /** In the order of the document. */
  readonly groups: readonly AmountGroup[];
  /** Everything, that of no known part too. */
  readonly all: AmountSum;
  /** Stated for parts that are not there. */
  readonly unplaced: AmountSum;
}

type Counting = { -readonly [K in keyof AmountSum]: AmountSum[K] };
interface Group {
  readonly keys: PartKeys;
  leaves: number;
  readonly own: Counting;
  readonly shared: Counting;
}

/** Adds up amounts for groups of leaves that share some keys. */
export class Tally {
  readonly #groups = new Map<string, Group>();
  readonly #groupOf = new Map<XmlElement, Group>();
  readonly #all = nothing();
  readonly #unplaced = nothing();

  constructor(leaves: readonly Partition[], by: readonly string[]) {
    for (const { chain, keys } of leaves) {
      const shared = by.filter((key) => Object.hasOwn(keys, key));
      const name = JSON.stringify(shared.map((key) => [key, canonical(key, keys[key]!)]));
      let group = this.#groups.get(name);
      if (group === undefined) {
        const common = Object.fromEntries(shared.map((key) => [key, keys[key]!]));
        group = { keys: common, leaves: 0, own: nothing(), shared: nothing() };
        this.#groups.set(name, group);
      }
      group.leaves += 1;
      this.#groupOf.set(chain.at(-1)!, group);
    }
  }

  /** An amount that is stated for all these leaves together. */
  add(value: number, condition: string | undefined, leaves: readonly XmlElement[]): void {
    count(this.#all, value, condition);
    const touched = new Set(leaves.flatMap((leaf) => this.#groupOf.get(leaf) ?? []));
    if (touched.size === 0) count(this.#unplaced, value, condition);
    for (const group of touched) count(touched.size === 1 ? group.own : group.shared, value, condition);
  }

  /** What was added up so far, in the unit of the resource. */
  amounts(): Amounts {
    return { groups: [...this.#groups.values()], all: this.#all, unplaced: this.#unplaced };
  }
}

const nothing = (): Counting => ({ stated: 0, total: 0, good: 0, waste: 0 });

function count(sum: Counting, value: number, condition: string | undefined): void {
  sum.stated += 1;
  sum.total += value;
  if (condition === 'Good') sum.good += value;
  else if (condition !== undefined) sum.waste += value;
}
