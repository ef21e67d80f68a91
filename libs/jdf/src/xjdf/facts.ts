import { jdfRules, type StructureRules, xjdfRules } from '../check/index.js';
import { type AttributeFact, type ElementType, isChoice } from '../standard/index.js';

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

function attributeShape(rules: StructureRules, generation: Generation, fact: AttributeFact): AttributeShape {
  const { type, list, required } = fact;
  const names = rules.dictionary.listOf(type) !== undefined;
  return {
    type: OWN_KINDS[generation][type] ?? KINDS[type] ?? (names ? (list ? 'several' : 'one') : 'text'),
    allows: rules.values.of(fact).possible,
    required,
  };
}

function vocabulary(generation: Generation, rules: () => StructureRules): Vocabulary {
  const shapes = new Map<string, ElementShape>();
  const shapeOf = (type: ElementType | undefined): ElementShape | undefined => {
    if (type === undefined) return undefined;
    const known = shapes.get(type.key);
    if (known !== undefined) return known;
    const children = childrenOf(type);
    const made: ElementShape = {
      key: type.key,
      attributes: new Map(
        [...type.attributes].map(([name, fact]) => [name, attributeShape(rules(), generation, fact)]),
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
    shape: (key) => shapeOf(rules().dictionary.typeOf(key)),
    named: (name) => shapeOf(rules().dictionary.elementType(name)),
    isMember: (head, name) => rules().dictionary.isMember(head, name),
    mayHold: (key, name) => {
      const type = rules().dictionary.typeOf(key);
      return type !== undefined && rules().dictionary.childType(type, name) !== undefined;
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

export const xjdfVocabulary: Vocabulary = vocabulary('xjdf', xjdfRules);
export const jdfVocabulary: Vocabulary = vocabulary('jdf', jdfRules);
