import { dataTypes, splitTokens, xjdfDataTypes } from '../codec/index.js';
import {
  type AttributeFact,
  type Dictionary,
  type ElementType,
  isChoice,
  jdfDictionary,
  xjdfDictionary,
} from '../standard/index.js';

/** What the standard says of one attribute. `type` is one of the kinds of values of values.ts. */
export interface AttributeShape {
  readonly type: string;
  /** Whether a text is a value of exactly this attribute. */
  allows(text: string): boolean;
  readonly required: boolean;
}

export interface ChildShape {
  readonly name: string;
  readonly shape: string;
  readonly min: number;
  readonly max: number;
}

/** What the standard says of one kind of element; children in the order in which they must be written. */
export interface ElementShape {
  readonly key: string;
  readonly attributes: ReadonlyMap<string, AttributeShape>;
  readonly children: readonly ChildShape[];
  readonly byName: ReadonlyMap<string, ChildShape>;
  readonly text: boolean;
  /** Elements of other namespaces are allowed inside. */
  readonly foreign: boolean;
}

/** The elements of one generation of the standard, as the conversion asks for them. */
export interface Vocabulary {
  shape(key: string): ElementShape | undefined;
  /** The shape of an element that may stand where its name alone decides: a root, a resource, a message. */
  named(name: string): ElementShape | undefined;
  /** Whether an element may stand for an abstract one. */
  isMember(head: string, name: string): boolean;
  /** Whether a kind of element may hold a child of a name, by itself or for an abstract one. */
  mayHold(key: string, name: string): boolean;
}

/** Kinds of values that may have to be written differently, by the names of their types in both generations. */
const KINDS: Readonly<Record<string, string>> = {
  NMTOKEN: 'tok',
  NMTOKENS: 'toks',
  name: 'tok',
  IDREF: 'idref',
  IDREFS: 'idrefs',
  boolean: 'bool',
  int: 'int',
  Integer: 'int',
  Integer0To100: 'int',
  LongInteger: 'int',
  XYPair: 'nums2',
  shape: 'nums3',
  rectangle: 'nums4',
  matrix: 'nums6',
  IntegerList: 'ints',
  IntegerRangeList: 'ranges',
  NameRangeList: 'names',
};

/** Types of one name that are different things in the two generations. */
const OWN_KINDS: Readonly<Record<Generation, Readonly<Record<string, string>>>> = {
  jdf: { IntegerRange: 'ranges' },
  xjdf: { IntegerRange: 'range' },
};

type Generation = 'jdf' | 'xjdf';

function attributeShape(dictionary: Dictionary, generation: Generation, fact: AttributeFact): AttributeShape {
  const { type, list, required } = fact;
  const kind = OWN_KINDS[generation][type] ?? KINDS[type];
  const types: Readonly<Record<string, { read(text: string): unknown }>> =
    generation === 'jdf' ? dataTypes : xjdfDataTypes;
  const exact = generation === 'xjdf' ? (types[`xs:${type}`] ?? types[fact.name]) : undefined;
  const read =
    (generation === 'xjdf' && OWN_NAMES.has(fact.name) ? types[fact.name] : undefined) ??
    types[type] ??
    exact;
  const values = read === undefined ? dictionary.listOf(type) : undefined;
  return {
    type: kind ?? (values === undefined ? 'text' : list ? 'several' : 'one'),
    allows: (text) => {
      if (values !== undefined) {
        const words = list ? splitTokens(text) : [text];
        return words.length > 0 && words.every((word) => values.has(word));
      }
      return read === undefined || read.read(text) !== undefined;
    },
    required,
  };
}

/** Attributes of the newer generation with a type of their own. */
const OWN_NAMES: ReadonlySet<string> = new Set(['ChildRefs', 'CommonFolds', 'CountryCode']);

function vocabulary(generation: Generation, dictionary: () => Dictionary): Vocabulary {
  const shapes = new Map<string, ElementShape>();
  const shapeOf = (type: ElementType | undefined): ElementShape | undefined => {
    if (type === undefined) return undefined;
    const known = shapes.get(type.key);
    if (known !== undefined) return known;
    const children = childrenOf(type);
    const made: ElementShape = {
      key: type.key,
      attributes: new Map(
        [...type.attributes].map(([name, fact]) => [name, attributeShape(dictionary(), generation, fact)]),
      ),
      children,
      byName: new Map(children.map((child) => [child.name, child])),
      text: type.text,
      foreign: type.foreignElements,
    };
    shapes.set(type.key, made);
    return made;
  };
  return {
    shape: (key) => shapeOf(dictionary().typeOf(key)),
    named: (name) => shapeOf(dictionary().elementType(name)),
    isMember: (head, name) => dictionary().isMember(head, name),
    mayHold: (key, name) => {
      const type = dictionary().typeOf(key);
      return type !== undefined && dictionary().childType(type, name) !== undefined;
    },
  };
}

function childrenOf(type: ElementType): ChildShape[] {
  const order = (type.sequence ?? []).flatMap((fact) => (isChoice(fact) ? fact.choice : [fact]));
  const places = new Map(order.map(({ name }, i) => [name, i]));
  const place = (name: string): number => places.get(name) ?? order.length;
  // What is one of several need not be there, and may be there as often as the choice.
  const choices = new Map(
    (type.sequence ?? []).flatMap((fact) =>
      isChoice(fact) ? fact.choice.map(({ name, max }) => [name, Math.max(max, fact.max)] as const) : [],
    ),
  );
  return [...type.children.values()]
    .map(({ name, key, min, max }) => ({
      name,
      shape: key,
      min: type.counted && !choices.has(name) ? min : 0,
      max: type.counted || type.sequence !== null ? (choices.get(name) ?? max) : Number.POSITIVE_INFINITY,
    }))
    .sort((a, b) => place(a.name) - place(b.name));
}

export const xjdfVocabulary: Vocabulary = vocabulary('xjdf', xjdfDictionary);
export const jdfVocabulary: Vocabulary = vocabulary('jdf', jdfDictionary);
