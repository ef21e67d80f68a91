/** Messages made from the official schema alone: every attribute and element that it gives a type, in chosen fullness. */
import fc, { type GeneratorValue } from 'fast-check';
import { element, JDF_NAMESPACE, type XmlElement, type XmlNode } from '#libs/jdf';
import { parsedXml } from '../kit/value-in.js';
import {
  attributesOf,
  childrenOf,
  complexType,
  isGeneric,
  type SchemaAttribute,
  type SchemaChild,
  simpleType,
  substitutesOf,
  type Versions,
} from './schema-tree.js';

/** Only what is required; everything once; or what chance takes. */
export type Fullness = 'least' | 'most' | 'some';

const words = fc.stringMatching(/^[A-Za-z_][A-Za-z0-9_.-]{0,12}$/);
const lines = fc
  .string({
    unit: fc.constantFrom('a', 'Z', '7', ' ', '&', '<', '>', '"', "'", 'ä', '雪', '/', '😀'),
    maxLength: 30,
  })
  .map((text) => text.replace(/ +/g, ' ').trim());
const urls = fc.constantFrom(
  'http://127.0.0.1:7420/jmf',
  'cid:ticket@example.org',
  'file:///in/a%20b.jdf',
  'pages/1.pdf?a=b&c=d',
);
const numbers = fc
  .oneof(fc.integer({ min: -9999, max: 99999 }), fc.constantFrom(0.5, 1e-7, 1e21, 12.25))
  .map(String);
const times = fc.integer({ min: 0, max: 4_000_000_000_000 }).map((ms) => new Date(ms).toISOString());

/** Values by the schema's basic types. What an IDREF names is the message itself. */
const basic: Readonly<Record<string, fc.Arbitrary<string>>> = {
  string: lines,
  shortString: lines,
  longString: lines,
  normalizedString: lines,
  XPath: fc.constantFrom('/JDF', '//Media[@Brand="x"]/@Status'),
  regExp: fc.constantFrom('[a-z]+', '.*'),
  NMTOKEN: words,
  NMTOKENS: fc.array(words, { minLength: 1, maxLength: 3 }).map((list) => list.join(' ')),
  IDREF: fc.constant('message'),
  URL: urls,
  URI: urls,
  Integer: fc.integer().map(String),
  integer: fc.integer().map(String),
  Integer0To100: fc.integer({ min: 0, max: 100 }).map(String),
  double: numbers,
  boolean: fc.constantFrom('true', 'false'),
  dateTime: times,
  duration: fc.constantFrom('PT0S', 'PT1H30M', 'P1DT2H3M4.5S'),
  language: fc.constantFrom('en', 'de-AT'),
  languages: fc.constantFrom('en', 'de en-GB fr'),
  LanguagesOrAll: fc.constantFrom('All', 'de en'),
  IntegerRangeList: fc.constantFrom('0', '0 ~ 3 6 ~ 8', '-1'),
  IntegerList: fc.array(fc.integer(), { minLength: 1, maxLength: 3 }).map((list) => list.join(' ')),
  matrix: fc.constant('1 0 0 1 14.5 -3'),
};

/** Elements that stand for an abstract one of another part of the standard, or for one that messages only carry. */
const carried: Readonly<Record<string, (id: string) => string>> = {
  Resource: (id) => `<Media Class="Consumable" ID="${id}" Status="Available"><Comment>x</Comment></Media>`,
  ResourceLink: () => '<MediaLink rRef="message" Usage="Input"/>',
  ResponseTypeObj: () => '<FlushedResources/>',
  QueryTypeObj: () => '<EmployeeDef PersonalID="p1"/>',
  JDF: (id) => `<JDF ID="${id}" Status="Waiting" Type="ProcessGroup" Version="1.9"/>`,
  NodeInfo: (id) => `<NodeInfo Class="Parameter" ID="${id}" Status="Available"/>`,
  Certificate: () => '<Certificate>lines\nof it</Certificate>',
  Person: () => '<Person FirstName="Ada"/>',
  DeviceCap: () => '<DeviceCap/>',
  IconList: () => '<IconList><Icon Size="16 16" BitDepth="8"/></IconList>',
  DevCaps: () => '<DevCaps Name="Media"/>',
  DevCapPool: () => '<DevCapPool/>',
  ActionPool: () => '<ActionPool/>',
  ModulePool: () => '<ModulePool/>',
  TestPool: () => '<TestPool/>',
  AbstractStates: () => '<StringState Name="Brand"/>',
  Part: () => '<Part SheetName="S1" Side="Front"/>',
};

/** What a message makes no sense without, though the schema does not ask for it: the selection of what is meant. */
const alsoRequired: Readonly<Record<string, readonly string[]>> = {
  CommandAbortQueueEntry: ['AbortQueueEntryParams', 'QueueEntryDef'],
  CommandHoldQueueEntry: ['HoldQueueEntryParams', 'QueueEntryDef'],
  CommandRemoveQueueEntry: ['RemoveQueueEntryParams', 'QueueEntryDef'],
  CommandResumeQueueEntry: ['ResumeQueueEntryParams', 'QueueEntryDef'],
  CommandSuspendQueueEntry: ['SuspendQueueEntryParams', 'QueueEntryDef'],
  CommandModifyNode: ['ModifyNodeCmdParams'],
  CreateLink: ['ResourceLink'],
  CreateResource: ['Resource'],
  RemoveLink: ['ResourceLink'],
  CommandUpdateJDF: ['UpdateJDFCmdParams'],
  AbortQueueEntryParams: ['QueueFilter'],
  HoldQueueEntryParams: ['QueueFilter'],
  RemoveQueueEntryParams: ['QueueFilter'],
  ResumeQueueEntryParams: ['QueueFilter'],
  SuspendQueueEntryParams: ['QueueFilter'],
};

/** Makes messages as a version of the standard has them. */
export class MessageMaker {
  #ids = 0;

  constructor(
    private readonly fullness: Fullness,
    private readonly version: string,
    private readonly draw: GeneratorValue,
  ) {}

  /** The message element of a kind, with its xsi:type. */
  message(family: string, type: string): XmlElement {
    const kind = family + type;
    const place = { name: family, abstract: false, required: true, versions: {}, said: [] };
    const made = this.#element({ ...place, type: complexType(kind) }, 0, kind);
    const attributes = made.attributes.filter(({ name }) => !['ID', 'Type'].includes(name));
    const head = element(family, { ID: 'message', Type: type, 'xsi:type': kind });
    return { ...made, attributes: [...head.attributes, ...attributes] };
  }

  #element(child: SchemaChild, depth: number, kind = child.name): XmlElement {
    const attributes: Record<string, string> = {};
    for (const attribute of attributesOf(child)) {
      if (!this.#exists(attribute.versions)) continue;
      if (attribute.required || (!BRACKETS.has(child.name) && this.#takes(depth)))
        attributes[attribute.name] = this.#value(attribute);
    }
    const children: XmlNode[] =
      isGeneric(child.type) && !BRACKETS.has(child.name) && this.#takes(depth) ? generic() : [];
    for (const inner of childrenOf(child)) {
      if (!GENERIC.has(inner.name)) children.push(...this.#perhaps(inner, kind, depth));
    }
    return element(child.name, attributes, children);
  }

  #perhaps(child: SchemaChild, kind: string, depth: number): XmlElement[] {
    if (!this.#exists(child.versions)) return [];
    const required = child.required || alsoRequired[kind]?.includes(child.name);
    return required || this.#takes(depth) ? this.#inner(child, depth + 1) : [];
  }

  #inner(child: SchemaChild, depth: number): XmlElement[] {
    const ready = carried[child.name];
    if (ready !== undefined) return [parsed(ready(this.#id()))];
    if (!child.abstract) return [this.#element(child, depth)];
    return substitutesOf(child.name).map((other) => this.#element(other, depth));
  }

  // What lies deeper is told of higher up in other messages; a module of a module must end somewhere.
  #takes(depth: number): boolean {
    if (depth > 3) return false;
    return this.fullness === 'some' ? this.draw(fc.boolean) : this.fullness === 'most';
  }

  #exists({ first = '1.0', last = '1.9' }: Versions): boolean {
    return first <= this.version && this.version <= last;
  }

  #value(attribute: SchemaAttribute): string {
    return attribute.fixed ?? this.#ofType(attribute.type);
  }

  #ofType(type: SchemaAttribute['type']): string {
    const name = typeof type === 'string' ? type.replace(/^.*:/, '') : '';
    if (name === 'ID') return this.#id();
    const known = basic[name];
    if (known !== undefined) return this.draw(() => known);
    const { values, item, member, base } = simpleType(type);
    if (values !== undefined) return this.draw(() => fc.constantFrom(...values));
    if (item !== undefined) return [...new Set([this.#ofType(item), this.#ofType(item)])].join(' ');
    const next = member ?? base!;
    if (next.replace(/^.*:/, '') === name) throw new Error(`No values for the type ${name}.`);
    return this.#ofType(next);
  }

  #id(): string {
    return `id${++this.#ids}`;
  }
}

// Nothing but the elements in them: what these say themselves is not in our views.
const BRACKETS = new Set(['AmountPool', 'DeviceList']);

const GENERIC = new Set(['Comment', 'GeneralID', 'Preview', 'PreviewRef']);

function generic(): XmlElement[] {
  return [parsed('<Comment>words &amp; more</Comment>'), parsed('<GeneralID IDUsage="x" IDValue="7"/>')];
}

function parsed(text: string): XmlElement {
  const { root } = parsedXml(text.replace(/^<(\w+)/, `<$1 xmlns="${JDF_NAMESPACE}"`));
  return { ...root, attributes: root.attributes.filter(({ name }) => name !== 'xmlns') };
}
