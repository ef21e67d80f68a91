/** The typed views of tickets against the standard's facts and against every official sample. */
import { isDeepStrictEqual } from 'node:util';
import * as jdf from '#libs/jdf';
import { parsedXml } from '../kit/value-in.js';
import { bytesOf, samples } from './samples.js';
import {
  bareExample,
  type Codec,
  childTypes,
  dictionary,
  fullExample,
  inAuditPool,
  kindOfType,
  ordinary,
  resourceViews,
  type Type,
  ticketWith,
  viewsAndTypes,
} from './view-examples.js';
import { schemaFaults } from './xmllint.js';

interface Stated {
  readonly path: string;
  readonly field: jdf.Field<unknown>;
  readonly fact: jdf.AttributeFact | undefined;
}

/** What a view and the standard say of an element and all below it, by path. */
function compare(
  path: string,
  codec: Codec,
  types: readonly Type[],
): { stated: Stated[]; strange: string[] } {
  const stated: Stated[] = [];
  const strange: string[] = [];
  // The same element is the same wherever it stands.
  const seen = new Set<string>();
  const add = (field: jdf.Field<unknown>, within: readonly Type[], at: string): void => {
    const { place } = field;
    if (place?.kind === 'attribute') {
      const fact = within
        .map(({ attributes }) => attributes.get(place.name))
        .find((one) => one !== undefined);
      stated.push({ path: `${at}/@${place.name}`, field, fact });
    } else if (place?.kind === 'child' || place?.kind === 'inside') {
      const name = place.kind === 'child' ? place.codec.name : place.wrapper;
      // An identifier may stand in everything but a few elements.
      if (name === 'GeneralID') return;
      const inner = childTypes(within, name);
      if (inner.length === 0) strange.push(`${at}/${name}`);
      else if (place.kind === 'inside') add(place.field, inner, `${at}/${name}`);
      else if (!seen.has(`${name} ${inner.map(({ key }) => key).join()}`)) {
        seen.add(`${name} ${inner.map(({ key }) => key).join()}`);
        for (const one of Object.values(place.codec.fields ?? {})) add(one, inner, `${at}/${name}`);
      }
    }
  };
  for (const field of Object.values(codec.fields ?? {})) add(field, types, path);
  return { stated, strange };
}

describe('what the views say of the standard', () => {
  it.each(viewsAndTypes)('%s: every attribute and element is one', (name, codec, types) => {
    const { stated, strange } = compare(name, codec, types);
    expect(stated.length).toBeGreaterThan(0);
    expect([...strange, ...stated.filter(({ fact }) => fact === undefined).map(({ path }) => path)]).toEqual(
      [],
    );
  });

  // A notification is above all a message.
  const own = viewsAndTypes.filter(([name]) => name !== 'Notification');
  it.each(own)('%s: its own attributes are all there', (name, codec, types) => {
    const known = new Set(
      Object.values(codec.fields ?? {}).flatMap(({ place }) =>
        place?.kind === 'attribute' ? [place.name] : [],
      ),
    );
    const missing = [...types[0]!.attributes.keys()].filter(
      (one) =>
        !known.has(one) &&
        !isGeneral(one, name === 'Resource' ? ['Element'] : ['Element', 'Parameter.root', 'Intent.root']),
    );
    expect(missing).toEqual([]);
  });

  it.each(viewsAndTypes)(
    '%s: every value of the standard is read, and no other name',
    (name, codec, types) => {
      const wrong = compare(name, codec, types).stated.flatMap(({ path, field, fact }) => {
        if (field.place?.kind !== 'attribute' || fact === undefined) return [];
        const { type } = field.place;
        const names = dictionary.listOf(fact.type);
        const values =
          fact.fixed !== null ? [fact.fixed] : names === undefined ? ordinary(fact.type) : [...names];
        const unread = values.filter((value) => type.read(value) === undefined);
        // Elements that messages have too are read by what devices really send.
        const strict = names !== undefined && !/\/(MISDetails|Device)\//.test(path);
        const invented = strict && type.read('NoSuchName') !== undefined ? ['NoSuchName'] : [];
        return [...unread, ...invented].map((value) => `${path} ${JSON.stringify(value)}`);
      });
      // The views are wider where the standard's list is open in its text: none of these.
      expect(wrong).toEqual([]);
    },
  );
});

/** What any element or resource says, which a view of its own leaves to the view of all. */
function isGeneral(attribute: string, kinds: readonly string[]): boolean {
  return kinds.some((kind) => kindOfType(kind).attributes.has(attribute));
}

interface Found {
  readonly el: jdf.XmlElement;
  readonly codec: Codec;
  readonly type: Type | undefined;
}

/** Every element of a ticket that has a view. */
function viewed(doc: jdf.XmlDocument): Found[] {
  return [...jdf.descendants(doc.root)].flatMap((el): Found[] => {
    if (el.uri !== jdf.JDF_NAMESPACE) return [];
    const parent = jdf.parentOf(doc, el);
    const of = (codec: Codec, type: Type | undefined) => [{ el, codec, type }];
    if (el.local === 'JDF') return of(jdf.ticketNode, dictionary.elementType('JDF'));
    if (el.local === 'AncestorPool') return of(jdf.ancestorPool, dictionary.elementType('AncestorPool'));
    if (parent?.local === 'AuditPool') {
      const codec = jdf.auditCodecs[el.local as jdf.AuditKind] as Codec | undefined;
      return codec === undefined ? [] : of(codec, inAuditPool(el.local));
    }
    if (parent?.local === 'ResourceLinkPool') return of(jdf.resourceLink, dictionary.typeOf('ResourceLink'));
    if (parent?.local !== 'ResourcePool') return [];
    const own = resourceViews[el.local];
    const general = { el, codec: jdf.resource as Codec, type: dictionary.typeOf(`${el.local}.root`) };
    return [general, ...(own === undefined ? [] : [{ ...general, codec: own }])];
  });
}

/** Whether two numbers, or what is made of them, are the same to a thousandth of a point, as lengths are rounded. */
function isAbout(a: unknown, b: unknown): boolean {
  if (typeof a === 'number' && typeof b === 'number') return a === b || Math.abs(a - b) <= 0.0011;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null)
    return isDeepStrictEqual(a, b);
  const keys = Object.keys(a);
  return (
    keys.length === Object.keys(b).length &&
    keys.every((key) => isAbout((a as Record<string, unknown>)[key], (b as Record<string, unknown>)[key]))
  );
}

/** Attributes that a view knows and that it wrote with another value, judged by the standard's own types. */
function differing(
  before: jdf.XmlElement,
  after: jdf.XmlElement,
  codec: Codec,
  type: Type | undefined,
): string[] {
  const table = jdf.dataTypes as Readonly<Record<string, jdf.ValueType<unknown>>>;
  return Object.values(codec.fields ?? {}).flatMap(({ place }) => {
    if (place?.kind === 'child') {
      const count = (el: jdf.XmlElement) => jdf.childElements(el, place.codec.name).length;
      const refs = jdf.childElements(before, `${place.codec.name}Ref`).length;
      const wanted = place.many ? count(before) + refs : Math.min(1, count(before) + refs);
      return count(after) === wanted ? [] : [place.codec.name];
    }
    if (place?.kind !== 'attribute') return [];
    const [old, now] = [before, after].map((el) => jdf.attributeOf(el, place.name));
    if (old === undefined || now === undefined) return old === now ? [] : [place.name];
    const read = table[type?.attributes.get(place.name)?.type ?? '']?.read;
    if (read === undefined)
      return old.trim().split(/\s+/).join(' ') === now ? [] : [`${place.name} ${old} ${now}`];
    const [was, is] = [read(old), read(now)].map((value) =>
      // The same instant may be told by another clock.
      typeof value === 'object' && value !== null && 'offsetMin' in value
        ? { ...value, offsetMin: 0 }
        : value,
    );
    return isAbout(was, is) ? [] : [`${place.name} ${old} ${now}`];
  });
}

const tickets = samples().filter(({ root, valid: isValid }) => root === 'JDF' && isValid);

describe('every official ticket through the views', () => {
  const seen = new Set<string>();

  it.each(tickets.map((sample) => [sample.path, sample] as const))('%s', (_path, sample) => {
    const doc = parsedXml(bytesOf(sample));
    const text = jdf.writeXml(doc);
    for (const { el, codec, type } of viewed(doc)) {
      const findings = new jdf.Findings(doc, { missing: 'JDF_MISSING', wrong: 'JDF_VALUE' });
      const value = codec.read(el, findings);
      const where = jdf.pathOf(doc, el);
      expect({ where, problems: findings.problems }).toEqual({ where, problems: [] });
      seen.add(codec === jdf.resource ? 'Resource' : el.local);
      // Saying what is there already changes nothing at all.
      expect(jdf.updateElement(doc, el, codec, value)).toBe(doc);
      expect({ where, differing: differing(el, codec.write(value), codec, type) }).toEqual({
        where,
        differing: [],
      });
      // Saying one thing more changes nothing but that.
      const more = (['descriptiveName', 'author'] as const).find((key) => codec.fields?.[key] !== undefined);
      if (more === undefined || (value as Readonly<Record<string, unknown>>)[more] !== undefined) continue;
      const changed = jdf.updateElement(doc, el, codec, { ...(value as object), [more]: 'as said' });
      expect(jdf.writeXml(changed).replace(/ (DescriptiveName|Author)="as said"/, '')).toBe(text);
    }
  });

  it('have shown most of the views', () => {
    const expected = ['JDF', 'Resource', 'LayoutIntent', 'MediaIntent', 'ProductionIntent', 'ComponentLink'];
    expect(expected.filter((name) => !seen.has(name))).toEqual([]);
  });
});

describe('every view filled with all that it may say', () => {
  const examples = viewsAndTypes.map(([name, codec, types]) => {
    // Links and resources in general have no element of their own name.
    const local = { ResourceLink: 'MediaLink', Resource: 'Media' }[name] ?? name;
    const type = name === 'Resource' ? [kindOfType('Media.root')] : types;
    const el = fullExample(local, codec, type);
    const doc = ticketWith(el);
    const findings = new jdf.Findings(doc, { missing: 'JDF_MISSING', wrong: 'JDF_VALUE' });
    const value = codec.read(el, findings);
    const bare = bareExample(el.name, codec, el);
    const start = ticketWith(bare);
    const at = [...jdf.descendants(start.root)].find((one) => one.local === bare.local)!;
    const again = value === undefined ? start : jdf.updateElement(start, at, codec, value);
    return { name, codec, type: type[0], el, doc, again, problems: findings.problems };
  });

  it.each(examples.map((one) => [one.name, one] as const))(
    '%s is read and put together again',
    (_name, one) => {
      expect(one.problems).toEqual([]);
      const made = [...jdf.descendants(one.again.root)].find(({ local }) => local === one.el.local)!;
      expect(made.attributes.length).toBeGreaterThanOrEqual(one.el.attributes.length);
      expect(differing(one.el, made, one.codec, one.type)).toEqual([]);
    },
  );

  it('are valid by the schema, as examples and as the views put them together', () => {
    const documents = examples.flatMap(({ name, doc, again }) => [
      [`${name}.jdf`, jdf.writeXml(doc)] as const,
      [`${name}-again.jdf`, jdf.writeXml(again)] as const,
    ]);
    expect(schemaFaults(Object.fromEntries(documents))).toEqual({});
  });
});
