/** Every typed view of a ticket with what the standard's facts say of its element, and an example of each that says all. */
import * as jdf from '#libs/jdf';
import { valid } from './type-values.js';

export type Codec = jdf.ElementCodec<unknown>;
export type Type = jdf.ElementType;

export const dictionary = jdf.jdfDictionary();

/** Resources that have a view of their own, by the name of their element. */
export const resourceViews: Readonly<Record<string, Codec>> = {
  NodeInfo: jdf.nodeInfo,
  CustomerInfo: jdf.customerInfo,
  Contact: jdf.contact,
  Company: jdf.company,
  Person: jdf.person,
  Address: jdf.address,
  ComChannel: jdf.comChannel,
  ...jdf.productIntents,
};

export function kindOfType(key: string): Type {
  const type = dictionary.typeOf(key) ?? dictionary.elementType(key);
  if (type === undefined) throw new Error(`The standard has no ${key}.`);
  return type;
}

export const inAuditPool = (name: string): Type => {
  const type = dictionary.childType(kindOfType('AuditPool'), name);
  if (type === undefined) throw new Error(`No audit ${name}.`);
  return type;
};

export const viewsAndTypes: readonly (readonly [string, Codec, readonly Type[]])[] = [
  ['JDF', jdf.ticketNode, [kindOfType('JDF')]],
  ['AncestorPool', jdf.ancestorPool, [kindOfType('AncestorPool')]],
  [
    'Resource',
    jdf.resource as Codec,
    ['Consumable', 'Parameter', 'Intent'].map((name) => kindOfType(`${name}.root`)),
  ],
  ['ResourceLink', jdf.resourceLink, [kindOfType('ResourceLink')]],
  ...Object.entries(jdf.auditCodecs).map(
    ([name, codec]) => [name, codec as Codec, [inAuditPool(name)]] as const,
  ),
  ...Object.entries(resourceViews).map(
    ([name, codec]) => [name, codec, [kindOfType(`${name}.root`), kindOfType(name)]] as const,
  ),
];

/** Values of a data type that mean something to every reader: a zone, a fixed length, no infinite length. */
export function ordinary(type: string): readonly string[] {
  const table = jdf.dataTypes as Readonly<Record<string, jdf.ValueType<unknown>>>;
  return valid(type, 'jdf').filter(
    (value) =>
      table[type]?.read(value) !== undefined &&
      !/INF|^-?P\d*[YM]|P1Y|P0Y|P1M|^-00|^12024/.test(value) &&
      !(type === 'dateTime' && !/(Z|[+-]\d\d:\d\d)$/.test(value)),
  );
}

let count = 0;

/** A right value of an attribute. IDs are used once. */
function exampleOf(fact: jdf.AttributeFact): string {
  if (fact.fixed !== null) return fact.fixed;
  if (fact.type === 'ID') return `id${++count}`;
  const [name] = dictionary.listOf(fact.type) ?? [];
  const value =
    name ?? ordinary(fact.type === 'Share' ? 'RelativeTravel' : fact.type).find((one) => one.trim() !== '');
  if (value === undefined) throw new Error(`No example of ${fact.type}.`);
  return value;
}

/** Attributes that the standard asks for, of which the view need not know. */
function neededOf(type: Type): Record<string, string> {
  return Object.fromEntries(type.required.map((fact) => [fact.name, exampleOf(fact)]));
}

// What stands further in is seen in full where it is a view of its own.
const DEEPEST = 3;

/** The element with all that its view may say, so many elements deep. */
export function fullExample(name: string, codec: Codec, types: readonly Type[], depth = 0): jdf.XmlElement {
  const attributes = neededOf(types[0]!);
  const children: jdf.XmlElement[] = [];
  const add = (field: jdf.Field<unknown>, within: readonly Type[], to: jdf.XmlElement[]): void => {
    const { place } = field;
    if (place?.kind === 'attribute') {
      const fact = within.map((type) => type.attributes.get(place.name)).find((one) => one !== undefined);
      if (fact !== undefined) attributes[place.name] ??= exampleOf(fact);
    } else if (place?.kind === 'inside') {
      const inner: jdf.XmlElement[] = [];
      add(place.field, inlineTypes(within, place.wrapper), inner);
      to.push(jdf.element(place.wrapper, {}, inner));
    } else if (place?.kind === 'child') {
      const inner = inlineTypes(within, place.codec.name);
      if (inner.length === 0 || depth === DEEPEST) return;
      if (place.codec.name === 'Part') to.push(jdf.element('Part', { SheetName: 'S1', Side: 'Front' }));
      else if (place.codec.fields === undefined) to.push(place.codec.write('some words'));
      else to.push(fullExample(place.codec.name, place.codec, inner, depth + 1));
    }
  };
  for (const field of Object.values(codec.fields ?? {})) add(field, types, children);
  return jdf.element(name, attributes, children);
}

/** The element with only what the standard asks for and the view does not know. */
export function bareExample(name: string, codec: Codec, full: jdf.XmlElement): jdf.XmlElement {
  const known = Object.values(codec.fields ?? {}).flatMap(({ place }) =>
    place?.kind === 'attribute' ? [[place.name, undefined] as const] : [],
  );
  return jdf.withAttributes({ ...full, name, children: [] }, Object.fromEntries(known));
}

const inlineTypes = (within: readonly Type[], name: string): readonly Type[] =>
  within.flatMap((type) => dictionary.childType(type, name) ?? []);

/** The types that a child element of this name may have, inline or as a resource that it refers to. */
export function childTypes(within: readonly Type[], name: string): readonly Type[] {
  return within.flatMap((type) => {
    const found = dictionary.childType(type, name);
    // What may stand by reference, too, is there in the form of a resource.
    const root = dictionary.typeOf(`${name}.root`);
    return found === undefined ? [] : root === undefined ? [found] : [found, root];
  });
}

/** A ticket with an element in the place where elements of its name stand. */
export function ticketWith(el: jdf.XmlElement): jdf.XmlDocument {
  if (el.local === 'JDF') return jdf.documentOf(rooted(el));
  const isAudit = Object.hasOwn(jdf.auditCodecs, el.local);
  const pool = isAudit ? 'AuditPool' : el.local.endsWith('Link') ? 'ResourceLinkPool' : 'ResourcePool';
  const child = el.local === 'AncestorPool' ? el : jdf.element(pool, {}, [el]);
  return jdf.documentOf(
    rooted(jdf.element('JDF', { ID: 'root', Type: 'Product', Status: 'Waiting' }, [child])),
  );
}

const rooted = (el: jdf.XmlElement): jdf.XmlElement => jdf.withAttributes(el, { xmlns: jdf.JDF_NAMESPACE });
