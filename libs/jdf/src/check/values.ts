import { dataTypes, type ValueType, xjdfDataTypes } from '../codec/index.js';
import type { AttributeFact, Dictionary } from '../standard/index.js';

/** Says whether a stated value is possible, and what would be. */
export interface ValueCheck {
  readonly possible: (value: string) => boolean;
  readonly expects: string;
}

// More names than this are not read by anybody in one sentence.
const MOST_NAMES = 24;

// Ink zones and curves are long lists of plain numbers: these are recognised at once.
const NUMBER_LISTS: ReadonlySet<string> = new Set(['DoubleList', 'FloatList']);
const PLAIN_NUMBERS = /^-?\d+(?:\.\d+)?(?: -?\d+(?:\.\d+)?)*$/;

const MOST_REMEMBERED = 512;
const LONGEST_REMEMBERED = 64;

/** The checks of attribute values of one generation, made when a type is first met. */
export class ValueChecks {
  readonly #checks = new Map<string, ValueCheck>();

  constructor(
    private readonly dictionary: Dictionary,
    private readonly types: Readonly<Record<string, ValueType<unknown>>>,
  ) {}

  /** The check of an attribute's values. */
  of(fact: AttributeFact): ValueCheck {
    const key = fact.list ? `${fact.type}[]` : fact.type;
    const known = this.#checks.get(key);
    if (known !== undefined) return known;
    const made = this.#make(fact);
    const check = { ...made, possible: remembered(made.possible) };
    this.#checks.set(key, check);
    return check;
  }

  /** Throws Error where the tables name a type that nobody reads; a test asks for all of them. */
  #make({ type, list }: AttributeFact): ValueCheck {
    const names = this.dictionary.listOf(type);
    if (names !== undefined) return ofNames(names, list);
    // The second generation uses types of XML Schema itself, which have a prefix of their own.
    const reader = this.types[type] ?? this.types[`xs:${type}`];
    if (reader === undefined) throw new Error(`The fact tables name the type ${type}, which is not read.`);
    const possible = NUMBER_LISTS.has(type)
      ? (value: string): boolean => PLAIN_NUMBERS.test(value) || reader.read(value) !== undefined
      : (value: string): boolean => reader.read(value) !== undefined;
    return list
      ? { possible: everyWord(possible), expects: reader.expects }
      : { possible, expects: reader.expects };
  }
}

function ofNames(names: ReadonlySet<string>, list: boolean): ValueCheck {
  const shown = [...names];
  const some = shown.length > MOST_NAMES ? `${shown.slice(0, MOST_NAMES).join(', ')} …` : shown.join(', ');
  const possible = (value: string): boolean => names.has(value) || names.has(value.trim());
  return list
    ? { possible: everyWord(possible), expects: `a list of ${some}` }
    : { possible, expects: `one of ${some}` };
}

/**
 * Tickets say the same few values thousands of times, so what was judged once is looked up. Only so much is kept, and
 * nothing long: a document must not decide how much memory that takes.
 */
function remembered(possible: (value: string) => boolean): (value: string) => boolean {
  const known = new Map<string, boolean>();
  return (value) => {
    if (value.length > LONGEST_REMEMBERED) return possible(value);
    const before = known.get(value);
    if (before !== undefined) return before;
    const verdict = possible(value);
    if (known.size >= MOST_REMEMBERED) known.clear();
    known.set(value, verdict);
    return verdict;
  };
}

const everyWord =
  (possible: (word: string) => boolean) =>
  (value: string): boolean =>
    value.split(/[ \t\r\n]+/).every((word) => word === '' || possible(word));

export const jdfValueTypes: Readonly<Record<string, ValueType<unknown>>> = dataTypes;
export const xjdfValueTypes: Readonly<Record<string, ValueType<unknown>>> = xjdfDataTypes;
