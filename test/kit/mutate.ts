import {
  appended,
  childElements,
  descendants,
  element,
  replaceElements,
  text,
  withAttributes,
  withChildren,
  writeXml,
  type XmlAttribute,
  type XmlDocument,
  type XmlElement,
} from '#libs/jdf';
import { parsedXml } from './value-in.js';

/** A number from 0 to 1, the next of a seeded row. */
export type Chance = () => number;

/** A row of numbers from a seed, so that a run can be repeated (mulberry32, public domain). */
export function chanceOf(seed: number): Chance {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

const pick = <T>(list: readonly T[], chance: Chance): T | undefined =>
  list[Math.floor(chance() * list.length)];

type Mutation = (doc: XmlDocument, chance: Chance) => string | undefined;

const elementsOf = (doc: XmlDocument): XmlElement[] =>
  [...descendants(doc.root)].filter(({ uri }) => uri === doc.root.uri);

const plain = (el: XmlElement): XmlAttribute[] =>
  el.attributes.filter(({ uri, name }) => uri === '' && name !== 'xmlns');

function replaced(doc: XmlDocument, from: XmlElement, to: XmlElement | null): string {
  return writeXml(replaceElements(doc, new Map([[from, to]])));
}

/** One element that has what is asked for, changed. */
function changed(
  fits: (el: XmlElement) => boolean,
  change: (el: XmlElement, chance: Chance, doc: XmlDocument) => XmlElement | null,
): Mutation {
  return (doc, chance) => {
    const el = pick(elementsOf(doc).filter(fits), chance);
    return el === undefined ? undefined : replaced(doc, el, change(el, chance, doc));
  };
}

function setOne(
  el: XmlElement,
  chance: Chance,
  fits: (attribute: XmlAttribute) => boolean,
  value: string,
): XmlElement {
  const attribute = pick(plain(el).filter(fits), chance)!;
  return withAttributes(el, { [attribute.name]: value });
}

const isNumber = ({ value }: XmlAttribute): boolean => /^-?\d+(\.\d+)?( -?\d+(\.\d+)?)*$/.test(value);
const isName = ({ name, value }: XmlAttribute): boolean =>
  /^[A-Z][A-Za-z]+$/.test(value) && !/(ID|Ref|Name)$/.test(name);

/** What can go wrong with a document, each in one place. */
export const mutations: Readonly<Record<string, Mutation>> = {
  'a word for a number': changed(
    (el) => plain(el).some(isNumber),
    (el, chance) => setOne(el, chance, isNumber, 'twelve'),
  ),
  'too many numbers': changed(
    (el) => plain(el).some(isNumber),
    (el, chance) => setOne(el, chance, isNumber, '1 2 3 4 5 6 7 8 9'),
  ),
  'an illegal name of a list': changed(
    (el) => plain(el).some(isName),
    (el, chance) => setOne(el, chance, isName, 'NoSuchValue'),
  ),
  'an empty value': changed(
    (el) => plain(el).length > 0,
    (el, chance) => setOne(el, chance, () => true, ''),
  ),
  'a value of blanks and signs': changed(
    (el) => plain(el).length > 0,
    (el, chance) => setOne(el, chance, () => true, ' #?! \u00e4 '),
  ),
  'an attribute left out': changed(
    (el) => plain(el).length > 0,
    (el, chance) => withAttributes(el, { [pick(plain(el), chance)!.name]: undefined }),
  ),
  'an attribute misspelt': changed(
    (el) => plain(el).length > 0,
    (el, chance) => {
      const { name, value } = pick(plain(el), chance)!;
      return withAttributes(el, { [name]: undefined, [`${name}x`]: value });
    },
  ),
  'an attribute of another element': (doc, chance) => {
    const from = pick(
      elementsOf(doc).filter((el) => plain(el).length > 0),
      chance,
    );
    const to = pick(elementsOf(doc), chance);
    if (from === undefined || to === undefined) return undefined;
    const { name, value } = pick(plain(from), chance)!;
    return replaced(doc, to, withAttributes(to, { [name]: value }));
  },
  'a reference that leads nowhere': changed(
    (el) => plain(el).some(({ name }) => /Refs?$/.test(name)),
    (el, chance) => setOne(el, chance, ({ name }) => /Refs?$/.test(name), 'nowhere-at-all'),
  ),
  'an element renamed': changed(
    (el) => el.children.length >= 0,
    (el) => ({ ...el, name: `${el.name}x`, local: `${el.local}x` }),
  ),
  'an element left out': (doc, chance) => {
    const el = pick(elementsOf(doc).slice(1), chance);
    return el === undefined ? undefined : replaced(doc, el, null);
  },
  'an element twice': (doc, chance) => {
    const parent = pick(
      elementsOf(doc).filter((el) => childElements(el).length > 0),
      chance,
    );
    if (parent === undefined) return undefined;
    return replaced(doc, parent, appended(parent, pick(childElements(parent), chance)!));
  },
  'an element somewhere else': (doc, chance) => {
    const all = elementsOf(doc);
    const moved = pick(all.slice(1), chance);
    const inside = new Set(moved === undefined ? [] : descendants(moved));
    const to = pick(
      all.filter((el) => !inside.has(el)),
      chance,
    );
    return moved === undefined || to === undefined ? undefined : replaced(doc, to, appended(to, moved));
  },
  'an element of the root in the root': (doc, chance) => {
    const el = pick(elementsOf(doc), chance)!;
    return replaced(doc, el, appended(el, withChildren(doc.root, [])));
  },
  'an element that nobody knows': changed(
    () => true,
    (el) => appended(el, element(`${el.prefix === '' ? '' : `${el.prefix}:`}Gilding`, {}, [], el.uri)),
  ),
  'text between elements': changed(
    (el) => childElements(el).length > 0,
    (el) => appended(el, text('and so on')),
  ),
  'children in another order': changed(
    (el) => childElements(el).length > 1,
    (el) => withChildren(el, [...el.children].reverse()),
  ),
  'an ID that is another': (doc, chance) => {
    const ids = elementsOf(doc).filter((el) => plain(el).some(({ name }) => name === 'ID'));
    const [a, b] = [pick(ids, chance), pick(ids, chance)];
    if (a === undefined || b === undefined || a === b) return undefined;
    return replaced(doc, a, withAttributes(a, { ID: plain(b).find(({ name }) => name === 'ID')!.value }));
  },
  'partition keys that are none': changed(
    (el) => plain(el).some(({ name }) => name === 'PartIDKeys'),
    (el) => withAttributes(el, { PartIDKeys: 'SheetName Colour' }),
  ),
  'a strict type that does not fit': changed(
    (el) => el.attributes.some(({ name }) => name === 'xsi:type'),
    (el) => withAttributes(el, { 'xsi:type': `${el.prefix === '' ? '' : `${el.prefix}:`}CommandGilding` }),
  ),
  'a cut in the middle': (doc, chance) => {
    const whole = writeXml(doc);
    return whole.slice(0, Math.floor(chance() * whole.length));
  },
  'crossed tags': (doc) => {
    const whole = writeXml(doc);
    const ends = [...whole.matchAll(/<\/([\w:]+)>/g)].map(({ index, 0: tag }) => ({ index, tag }));
    const at = ends.findIndex(({ tag }, i) => i + 1 < ends.length && ends[i + 1]!.tag !== tag);
    if (at < 0) return undefined;
    const [a, b] = [ends[at]!, ends[at + 1]!];
    return (
      whole.slice(0, a.index) +
      b.tag +
      whole.slice(a.index + a.tag.length, b.index) +
      a.tag +
      whole.slice(b.index + b.tag.length)
    );
  },
  'a doubled attribute': (doc, chance) => {
    const whole = writeXml(doc);
    const found = pick(
      [...whole.matchAll(/\s([A-Za-z]\w*)="[^"]*"(?=[^<]*>)/g)].filter(
        ({ 1: name }) => name !== 'xmlns' && name !== 'version' && name !== 'encoding',
      ),
      chance,
    );
    return found === undefined
      ? undefined
      : whole.slice(0, found.index) + found[0] + whole.slice(found.index);
  },
  'a bare ampersand': (doc, chance) => {
    const whole = writeXml(doc);
    const found = pick([...whole.matchAll(/="(?=[^<]*>)/g)], chance);
    if (found === undefined) return undefined;
    const at = found.index + found[0].length;
    return `${whole.slice(0, at)}A & B${whole.slice(at)}`;
  },
};

/** Mutated forms of a document, by what was done to it; none that is the same as the original. */
export function mutationsOf(
  original: string,
  count: number,
  chance: Chance,
): { readonly what: string; readonly text: string }[] {
  const doc = parsedXml(original);
  const kinds = Object.entries(mutations);
  const made = new Map<string, string>();
  for (let i = 0; made.size < count && i < count * 4; i++) {
    const [what, mutate] = kinds[i % kinds.length]!;
    const mutated = mutate(doc, chance);
    if (mutated !== undefined && mutated !== original) made.set(mutated, what);
  }
  return [...made].map(([mutated, what]) => ({ what, text: mutated }));
}
