/** Reads what an XML Schema says of elements, attributes and values, as far as the standard's own schemas go. Tests only. */
import { readFileSync } from 'node:fs';
import { attributeOf, childElements, parseXml, type XmlElement } from '#libs/jdf';

/** The namespace of XML Schema itself (W3C). */
export const XS = 'http://www.w3.org/2001/XMLSchema';
const PARTICLES = new Set(['sequence', 'choice', 'group', 'any', 'element']);

export interface SchemaAttribute {
  readonly values: ValueSpace;
  readonly required: boolean;
  readonly fixed: string | null;
  readonly preset: string | null;
}

/** A closed list of values, or the name of a data type; of one value or of a list. */
export interface ValueSpace {
  readonly name: string;
  readonly values: readonly string[] | null;
  readonly list: boolean;
}

export type SchemaParticle =
  | {
      readonly kind: 'element';
      readonly name: string;
      readonly type: string;
      readonly min: number;
      readonly max: number;
    }
  | { readonly kind: 'head'; readonly name: string; readonly min: number; readonly max: number }
  | { readonly kind: 'any'; readonly min: number; readonly max: number }
  | {
      readonly kind: 'sequence' | 'choice';
      readonly of: readonly SchemaParticle[];
      readonly min: number;
      readonly max: number;
    };

export interface SchemaType {
  readonly name: string;
  readonly attributes: ReadonlyMap<string, SchemaAttribute>;
  readonly content: readonly SchemaParticle[];
  readonly foreignAttributes: boolean;
  readonly text: boolean;
}

const local = (name: string): string => name.slice(name.indexOf(':') + 1);
const named = (el: XmlElement, name: string): string | undefined => attributeOf(el, name);
const parts = (el: XmlElement, ...names: string[]): XmlElement[] =>
  childElements(el, undefined, XS).filter((child) => names.length === 0 || names.includes(child.local));

export class Schema {
  readonly #types = new Map<string, XmlElement>();
  readonly #simple = new Map<string, XmlElement>();
  readonly #groups = new Map<string, XmlElement>();
  readonly #attributeGroups = new Map<string, XmlElement>();
  readonly elements = new Map<string, XmlElement>();
  readonly #members = new Map<string, string[]>();
  readonly #made = new Map<string, SchemaType>();

  constructor(files: readonly string[]) {
    for (const file of files) this.#read(file);
  }

  #read(file: string): void {
    const limits = { nodes: 1e6, elements: 1e6, textLength: 1e6 };
    const doc = parseXml(new Uint8Array(readFileSync(file)), limits);
    if (!doc.ok) throw new Error(`${file}: ${doc.problems[0]!.message}`);
    for (const el of parts(doc.value.root)) {
      const name = named(el, 'name') ?? '';
      if (el.local === 'complexType') this.#types.set(name, el);
      if (el.local === 'simpleType') this.#simple.set(name, el);
      if (el.local === 'group') this.#groups.set(name, el);
      if (el.local === 'attributeGroup') this.#attributeGroups.set(name, el);
      if (el.local === 'element') {
        this.elements.set(name, el);
        const head = named(el, 'substitutionGroup');
        if (head !== undefined)
          this.#members.set(local(head), [...(this.#members.get(local(head)) ?? []), name]);
      }
    }
  }

  get typeNames(): string[] {
    return [...this.#types.keys()].filter((name) => !name.includes('/'));
  }

  /** What is said of a type in notes for programs: the versions and numbers that a validator does not check. */
  notes(typeOrElement: string): XmlElement[] {
    const el = this.#types.get(typeOrElement) ?? this.elements.get(typeOrElement);
    return el === undefined
      ? []
      : parts(el, 'annotation').flatMap((note) =>
          parts(note, 'appinfo').flatMap((info) => childElements(info, undefined, '')),
        );
  }

  membersOf(head: string): string[] {
    return (this.#members.get(head) ?? []).flatMap((name) => [name, ...this.membersOf(name)]);
  }

  /** The type of a global element; an anonymous one is named after its element. */
  typeOfElement(name: string): string {
    const el = this.elements.get(name);
    if (el === undefined) throw new Error(`no element ${name}`);
    return this.#typeName(el, name);
  }

  #typeName(el: XmlElement, owner: string): string {
    const stated = named(el, 'type');
    if (stated !== undefined) return local(stated);
    const [inner] = parts(el, 'complexType');
    const name = `${owner}/anonymous`;
    if (inner !== undefined) this.#types.set(name, inner);
    return name;
  }

  isComplex(name: string): boolean {
    return this.#types.has(name);
  }

  /** Whether one type is made from another. */
  derives(name: string, from: string): boolean {
    const base = this.#baseOf(name);
    return name === from || (base !== null && this.derives(base, from));
  }

  #baseOf(name: string): string | null {
    const el = this.#types.get(name);
    const inner = el === undefined ? undefined : parts(el, 'complexContent', 'simpleContent')[0];
    const stated =
      inner === undefined ? undefined : named(parts(inner, 'extension', 'restriction')[0]!, 'base');
    return stated === undefined || stated.startsWith('xs:') || !this.#types.has(local(stated))
      ? null
      : local(stated);
  }

  type(name: string): SchemaType {
    const known = this.#made.get(name);
    if (known !== undefined) return known;
    const el = this.#types.get(name);
    if (el === undefined) throw new Error(`no type ${name}`);
    const wrapper = parts(el, 'complexContent', 'simpleContent')[0];
    const body = wrapper === undefined ? el : parts(wrapper, 'extension', 'restriction')[0]!;
    const baseName = this.#baseOf(name);
    const base = baseName === null ? undefined : this.type(baseName);
    const attributes = new Map(base?.attributes);
    const wild = this.#attributes(body, attributes);
    const own = parts(body, ...PARTICLES).map((part) => this.#particle(part));
    const made: SchemaType = {
      name,
      attributes,
      content: [...(body.local === 'restriction' ? [] : (base?.content ?? [])), ...own],
      foreignAttributes: wild || (base?.foreignAttributes ?? false),
      text: named(el, 'mixed') === 'true' || wrapper?.local === 'simpleContent' || (base?.text ?? false),
    };
    this.#made.set(name, made);
    return made;
  }

  #attributes(el: XmlElement, into: Map<string, SchemaAttribute>): boolean {
    let wild = false;
    for (const part of parts(el)) {
      if (part.local === 'anyAttribute') wild = true;
      if (part.local === 'attributeGroup') {
        wild = this.#attributes(this.#attributeGroups.get(local(named(part, 'ref')!))!, into) || wild;
      }
      if (part.local !== 'attribute') continue;
      const stated = named(part, 'type');
      const inner = parts(part, 'simpleType')[0];
      into.set(named(part, 'name')!, {
        values: stated === undefined ? this.#space(inner!, named(part, 'name')!) : this.space(stated),
        required: named(part, 'use') === 'required',
        fixed: named(part, 'fixed') ?? null,
        preset: named(part, 'default') ?? null,
      });
    }
    return wild;
  }

  #particle(el: XmlElement): SchemaParticle {
    const min = Number(named(el, 'minOccurs') ?? 1);
    const most = named(el, 'maxOccurs') ?? '1';
    const max = most === 'unbounded' ? Number.POSITIVE_INFINITY : Number(most);
    if (el.local === 'any') return { kind: 'any', min, max };
    if (el.local === 'element') {
      const ref = named(el, 'ref');
      const name = local(ref ?? named(el, 'name')!);
      if (ref !== undefined && this.#members.has(name)) return { kind: 'head', name, min, max };
      const type = ref === undefined ? this.#typeName(el, name) : this.typeOfElement(name);
      return { kind: 'element', name, type, min, max };
    }
    const inner = el.local === 'group' ? this.#groups.get(local(named(el, 'ref')!))! : el;
    const of = parts(inner, ...PARTICLES).map((part) => this.#particle(part));
    return { kind: el.local === 'choice' ? 'choice' : 'sequence', of, min, max };
  }

  /** The values that a named simple type allows. */
  space(name: string): ValueSpace {
    const el = this.#simple.get(local(name));
    return el === undefined ? { name: local(name), values: null, list: false } : this.#space(el, local(name));
  }

  #space(el: XmlElement, name: string): ValueSpace {
    const [inner] = parts(el, 'restriction', 'list', 'union');
    if (inner!.local === 'restriction') {
      const values = parts(inner!, 'enumeration').map((value) => named(value, 'value')!);
      if (values.length > 0) return { name, values, list: false };
      const base = named(inner!, 'base');
      // A type that adds nothing to another is that other.
      if (
        base !== undefined &&
        parts(inner!).every(({ local: part }) => part === 'annotation') &&
        /^p[A-Z]/.test(name)
      ) {
        return this.space(base);
      }
    }
    if (inner!.local === 'list') {
      const item = named(inner!, 'itemType');
      const of = item === undefined ? this.#space(parts(inner!, 'simpleType')[0]!, name) : this.space(item);
      if (of.values !== null || name.startsWith('e')) return { ...of, list: true };
    }
    return { name, values: null, list: false };
  }
}
