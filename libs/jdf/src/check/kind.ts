import { oncePer } from '#libs/kernel';
import type { ChildType, Dictionary, ElementType } from '../standard/index.js';
import type { ValueCheck, ValueChecks } from './values.js';

/** What is checked of an attribute of one kind of element. */
export interface AttributeRule {
  readonly value: ValueCheck;
  readonly required: boolean;
  /** The only value that it has. */
  readonly fixed: string | null;
  readonly since: Since | null;
}

/** What is checked of a child in one kind of element. */
export interface ChildRule {
  readonly kind: Kind;
  readonly since: Since | null;
  /** How often it stands there, where that is limited. */
  readonly limit: ChildType | undefined;
}

/** The version that brought something, with its place among the versions. */
export interface Since {
  readonly version: string;
  readonly at: number;
}

/** What the kinds of a generation are made of. */
export interface KindFacts {
  readonly dictionary: Dictionary;
  readonly values: ValueChecks;
  /** Its minor versions, oldest first. */
  readonly versions: readonly string[];
}

/**
 * An element type of the standard with all that its facts name looked up: a ticket has thousands of elements and few kinds
 * of them. What is in an element is looked up when it is first met.
 */
export class Kind {
  readonly #attributes = new Map<string, AttributeRule>();
  readonly #children = new Map<string, ChildRule>();

  constructor(
    readonly type: ElementType,
    private readonly facts: KindFacts,
    private readonly kindOf: (type: ElementType) => Kind,
  ) {}

  /** Undefined for an attribute that it does not have. */
  attribute(name: string): AttributeRule | undefined {
    const known = this.#attributes.get(name);
    if (known !== undefined) return known;
    const fact = this.type.attributes.get(name);
    if (fact === undefined) return undefined;
    const { required, fixed, versions } = fact;
    const rule = { value: this.facts.values.of(fact), required, fixed, since: this.#since(versions) };
    this.#attributes.set(name, rule);
    return rule;
  }

  /** Undefined for an element that may not stand in it. */
  child(name: string): ChildRule | undefined {
    const known = this.#children.get(name);
    if (known !== undefined) return known;
    const type = this.facts.dictionary.childType(this.type, name);
    if (type === undefined) return undefined;
    const versions = this.type.children.get(name)?.versions ?? type.versions;
    const limit = this.type.limited.get(name);
    const rule = { kind: this.kindOf(type), since: this.#since(versions), limit };
    this.#children.set(name, rule);
    return rule;
  }

  #since(versions: ElementType['versions']): Since | null {
    const version = versions?.since ?? null;
    return version === null ? null : { version, at: this.facts.versions.indexOf(version) };
  }
}

/** The kinds of a generation, each made once. */
export function kindsOf(facts: KindFacts): (type: ElementType) => Kind {
  const kindOf = oncePer((type: ElementType): Kind => new Kind(type, facts, kindOf));
  return kindOf;
}
