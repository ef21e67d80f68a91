import type { ChildType, ElementType } from './element-type.js';
import type { AttributeFact, ChildFact, KindRow, ParticleFact, ResourceForm } from './notation.js';

export interface FactTables {
  /** Kinds with a base of their own. */
  readonly kinds: readonly KindRow[];
  /** Members of the general elements that heads name. */
  readonly heads: ReadonlyMap<string, readonly string[]>;
  /** Closed lists of values. */
  readonly lists: ReadonlyMap<string, readonly string[]>;
}

/**
 * The standard's element types, made from the fact tables when they are first asked for. One generation each; see
 * jdf-dictionary.ts and xjdf-dictionary.ts.
 */
export abstract class Dictionary {
  readonly #types = new Map<string, ElementType | null>();
  readonly #lists = new Map<string, ReadonlySet<string>>();
  protected readonly rows: ReadonlyMap<string, KindRow>;

  constructor(protected readonly tables: FactTables) {
    this.rows = new Map(tables.kinds.map((row) => [row.name, row]));
  }

  /** The type with this key; undefined if the standard has none. */
  typeOf(key: string): ElementType | undefined {
    const known = this.#types.get(key);
    if (known !== undefined) return known ?? undefined;
    const made = this.make(key);
    this.#types.set(key, made ?? null);
    return made;
  }

  /** The type of an element that stands alone or inside something foreign. */
  abstract elementType(name: string): ElementType | undefined;

  /** The type that xsi:type names; undefined if the standard has none. */
  abstract namedType(name: string): ElementType | undefined;

  /** The type of a child element; undefined if it may not stand there. */
  childType(parent: ElementType, name: string): ElementType | undefined {
    const child = parent.children.get(name);
    if (child !== undefined) return this.typeOf(child.key);
    for (const head of parent.heads) {
      if (this.isMember(head, name)) return this.elementType(name);
    }
    return undefined;
  }

  /** Whether an element may stand where a general one is named. */
  abstract isMember(head: string, name: string): boolean;

  /** The values of a closed list; undefined if there is no such list. */
  listOf(name: string): ReadonlySet<string> | undefined {
    const known = this.#lists.get(name);
    if (known !== undefined) return known;
    const values = this.tables.lists.get(name);
    if (values === undefined) return undefined;
    const made = new Set(values);
    this.#lists.set(name, made);
    return made;
  }

  protected abstract make(key: string): ElementType | undefined;
}

/** Those of the facts that a form of a resource has. */
export function inForm<F extends { readonly forms: readonly ResourceForm[] | null }>(
  facts: readonly F[],
  form: ResourceForm | null,
): F[] {
  return facts.filter(({ forms }) => forms === null || form === null || forms.includes(form));
}

/** Whether one of several children stands here. */
export function isChoice(fact: ParticleFact): fact is Extract<ParticleFact, { choice: unknown }> {
  return 'choice' in fact;
}

/** All children that a content names, in and out of choices. */
export function childFacts(content: readonly ParticleFact[]): ChildFact[] {
  return content.flatMap((fact) => (isChoice(fact) ? fact.choice : [fact]));
}

/** Attributes of a kind: those of its base, replaced or added to by its own. */
export function attributeMap(
  base: ElementType | null,
  own: readonly AttributeFact[],
): { attributes: ReadonlyMap<string, AttributeFact>; required: readonly AttributeFact[] } {
  const attributes = new Map(base?.attributes);
  for (const fact of own) attributes.set(fact.name, fact);
  return { attributes, required: [...attributes.values()].filter(({ required }) => required) };
}

/** Children of a kind: those of its base, replaced or added to by its own; a limited one may come as a reference. */
export function childMap(
  base: ReadonlyMap<string, ChildType> | undefined,
  own: readonly ChildType[],
): Pick<ElementType, 'children' | 'limited' | 'needed'> {
  const children = new Map(base);
  for (const child of own) children.set(child.name, child);
  const limits = [...children.values()].filter(
    ({ min, max, key }) => key !== 'ResourceRef' && (min > 0 || max < Number.POSITIVE_INFINITY),
  );
  const limited = new Map(
    limits.flatMap((child) => [
      [child.name, child],
      [`${child.name}Ref`, child],
    ]),
  );
  return { children, limited, needed: limits.filter(({ min }) => min > 0) };
}
