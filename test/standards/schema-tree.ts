/** The official JDF 1.9 schema as tests walk it: attributes, children and values by type. Not part of the project. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { attributeOf, childElements, descendants, type XmlElement } from '#libs/jdf';
import { XS } from '../kit/read-schema.js';
import { parsedXml } from '../kit/value-in.js';
import { standardsFolder } from './samples.js';

const files = ['Types', 'Core', 'Message', 'Process', 'Resource', 'ResourceElements', 'Capability'];

type Declarations = ReadonlyMap<string, XmlElement>;

function rootOf(file: string): XmlElement {
  const path = join(standardsFolder(), 'jdf', 'schema', `JDF${file}.xsd`);
  return parsedXml(new Uint8Array(readFileSync(path))).root;
}

const roots = new Map(files.map((file) => [file, rootOf(file)]));

function declared(kind: string, from: Iterable<XmlElement> = roots.values()): Declarations {
  const all = [...from].flatMap((root) => childElements(root, kind, XS));
  return new Map(all.map((el) => [attributeOf(el, 'name') ?? '', el]));
}

const complexTypes = declared('complexType');
const simpleTypes = declared('simpleType');
const globalElements = declared('element');
const attributeGroups = declared('attributeGroup');

const local = (name: string | undefined): string => (name ?? '').replace(/^.*:/, '');
const within = (el: XmlElement, ...kinds: string[]): XmlElement[] =>
  kinds.flatMap((kind) => childElements(el, kind, XS));

export interface SchemaAttribute {
  readonly name: string;
  readonly required: boolean;
  /** The declaration of its type: a name, or a type of its own. */
  readonly type: string | XmlElement;
  readonly fixed?: string;
  readonly versions: Versions;
}

/** The first and the last version of the standard that has something; what is not said is not limited. */
export interface Versions {
  readonly first?: string;
  readonly last?: string;
}

export interface SchemaChild extends SchemaPlace {
  readonly name: string;
  readonly abstract: boolean;
  /** Wanted by the Constraint entries, which a validator does not read. */
  readonly required: boolean;
  readonly versions: Versions;
}

/** Names of the message types that the schema has, family and type in one word. */
export function messageKinds(): string[] {
  return [...declared('complexType', [roots.get('Message')!])].flatMap(([name, type]) => {
    const base = [...descendants(type)].find((el) => el.local === 'extension');
    return base && local(attributeOf(base, 'base')).startsWith('JMFAbstract') ? [name] : [];
  });
}

export function complexType(name: string): XmlElement {
  const found = complexTypes.get(local(name));
  if (found === undefined) throw new Error(`The schema has no type ${name}.`);
  return found;
}

/** The steps of a type from its base downwards, each with what it declares itself. */
function steps(type: XmlElement): XmlElement[] {
  return lineage(type).map(({ step }) => step);
}

function lineage(type: XmlElement): { readonly step: XmlElement; readonly owner: XmlElement }[] {
  const inner = [...within(type, 'complexContent', 'simpleContent')][0];
  if (inner === undefined) return [{ step: type, owner: type }];
  const derived = within(inner, 'extension', 'restriction')[0]!;
  const base = complexTypes.get(local(attributeOf(derived, 'base')));
  const own = { step: derived, owner: type };
  return base === undefined ? [own] : [...lineage(base), own];
}

function ownAttributes(step: XmlElement): Omit<SchemaAttribute, 'versions'>[] {
  const groups = within(step, 'attributeGroup').flatMap((el) =>
    ownAttributes(attributeGroups.get(local(attributeOf(el, 'ref')))!),
  );
  const own = within(step, 'attribute').map((el) => ({
    name: attributeOf(el, 'name') ?? '',
    required: attributeOf(el, 'use') === 'required',
    type: attributeOf(el, 'type') ?? within(el, 'simpleType')[0]!,
    ...(attributeOf(el, 'fixed') === undefined ? {} : { fixed: attributeOf(el, 'fixed')! }),
  }));
  return [...groups, ...own];
}

export const attributesOf = remembered(({ type, said }: SchemaPlace): SchemaAttribute[] => {
  const notes = notesAt({ type, said });
  return steps(type)
    .flatMap(ownAttributes)
    .map((attribute) => ({ ...attribute, versions: versionsOf(notes, `@${attribute.name}`) }));
});

export function remembered<K extends object, V>(work: (key: K) => V): (key: K) => V {
  const known = new WeakMap<K, V>();
  return (key) => {
    if (!known.has(key)) known.set(key, work(key));
    return known.get(key)!;
  };
}

/** A type where it is used: the global element there may say more of it. */
export interface SchemaPlace {
  readonly type: XmlElement;
  readonly said: readonly XmlElement[];
}

function notesAt({ type, said }: SchemaPlace): XmlElement[] {
  return [...said, ...lineage(type).flatMap(({ owner }) => notesOf(owner))];
}

/** What the schema says of a declaration in words that only people and we read. */
function notesOf(declaration: XmlElement): XmlElement[] {
  return within(declaration, 'annotation').flatMap((note) =>
    within(note, 'appinfo').flatMap((info) =>
      info.children.flatMap((child) => (child.kind === 'element' ? [child] : [])),
    ),
  );
}

function versionsOf(notes: readonly XmlElement[], path: string): Versions {
  const note = notes.find((el) => el.local === 'Version' && attributeOf(el, 'Path') === path);
  return { first: note && attributeOf(note, 'First'), last: note && attributeOf(note, 'Last') };
}

function isRequired(notes: readonly XmlElement[], path: string): boolean {
  return notes.some(
    (el) =>
      el.local === 'Constraint' &&
      attributeOf(el, 'Path') === path &&
      Number(attributeOf(el, 'minOccurs') ?? 0) > 0,
  );
}

/** Child elements of a type, each name once; those that nearly every element may have are told by `isGeneric`. */
export const childrenOf = remembered(({ type, said }: SchemaPlace): SchemaChild[] => {
  const notes = notesAt({ type, said });
  const found = new Map<string, SchemaChild>();
  const walk = (el: XmlElement): void => {
    for (const inner of within(el, 'sequence', 'choice', 'all')) walk(inner);
    for (const declaration of within(el, 'element')) {
      const child = childOf(declaration);
      const { name } = child;
      const required = isRequired(notes, name);
      found.set(name, { ...child, required, versions: versionsOf(notes, name) });
    }
  };
  for (const step of contentSteps(type)) walk(step);
  return [...found.values()];
});

/** The steps whose content counts: a restriction takes the place of all before it. */
function contentSteps(type: XmlElement): XmlElement[] {
  const all = steps(type);
  const last = all.map(({ local: kind }) => kind).lastIndexOf('restriction');
  return last < 0 ? all : all.slice(last);
}

const childOf = remembered((declaration: XmlElement): SchemaChild => {
  const ref = attributeOf(declaration, 'ref');
  const target = ref === undefined ? declaration : globalElements.get(local(ref))!;
  const named = attributeOf(target, 'type');
  return {
    name: attributeOf(target, 'name') ?? '',
    abstract: attributeOf(target, 'abstract') === 'true',
    type: named === undefined ? (within(target, 'complexType')[0] ?? target) : complexType(named),
    said: notesOf(target),
    required: false,
    versions: {},
  };
});

/** Whether a type may have Comment and GeneralID, by the group that nearly all types share. */
export function isGeneric(type: XmlElement): boolean {
  return contentSteps(type).some((step) =>
    [...descendants(step)].some(
      (el) => el.local === 'group' && local(attributeOf(el, 'ref')) === 'GenericElements',
    ),
  );
}

/** Elements that may stand where an abstract one is named. */
export function substitutesOf(name: string): SchemaChild[] {
  return [...globalElements.values()]
    .filter((el) => local(attributeOf(el, 'substitutionGroup')) === name)
    .map(childOf);
}

/** A simple type taken apart: its list of words, its item type, its members, or the type it restricts. */
export function simpleType(type: string | XmlElement): {
  readonly values?: string[];
  readonly item?: string;
  readonly member?: string;
  readonly base?: string;
} {
  const el = typeof type === 'string' ? simpleTypes.get(local(type)) : type;
  if (el === undefined) throw new Error(`The schema has no simple type ${String(type)}.`);
  const list = within(el, 'list')[0];
  if (list) return { item: attributeOf(list, 'itemType') ?? '' };
  const union = within(el, 'union')[0];
  if (union) return { member: (attributeOf(union, 'memberTypes') ?? '').split(/\s+/)[0]! };
  const restriction = within(el, 'restriction')[0]!;
  const values = within(restriction, 'enumeration').map((value) => attributeOf(value, 'value') ?? '');
  return values.length > 0 ? { values } : { base: attributeOf(restriction, 'base') ?? '' };
}
