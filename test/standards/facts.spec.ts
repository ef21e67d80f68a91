/** The facts of the standard that are written down by hand in the library, against the official schema. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import * as jdf from '#libs/jdf';
import { standardsFolder } from './samples.js';

const SCHEMA = 'http://www.w3.org/2001/XMLSchema';

function schema(file: string): jdf.XmlElement {
  const doc = jdf.parseXml(new Uint8Array(readFileSync(join(standardsFolder(), 'jdf', 'schema', file))));
  if (!doc.ok) throw new Error(JSON.stringify(doc.problems));
  return doc.value.root;
}

const types = schema('JDFTypes.xsd');

function enumeration(name: string): string[] {
  const type = jdf
    .childElements(types, 'simpleType', SCHEMA)
    .find((el) => jdf.attributeOf(el, 'name') === name);
  if (type === undefined) throw new Error(`The schema has no ${name}.`);
  return [...jdf.descendants(type)]
    .filter(({ local }) => local === 'enumeration')
    .map((el) => jdf.attributeOf(el, 'value') ?? '');
}

describe('closed lists', () => {
  it.each([
    ['JDFJMFVersion', jdf.versions],
    ['eNodeStatus_', jdf.nodeStatuses],
    ['eNodePhaseTimeStatus_', jdf.phaseStatuses],
    ['eEndStatusOfNode_', jdf.runEndStatuses],
    ['eActivation_', jdf.activations],
    ['eResourceStatus_', jdf.resourceStatuses],
    ['eResourceClass_', jdf.resourceClasses],
    ['eUsage_', jdf.usages],
    ['eDeviceStatus_', jdf.deviceStatuses],
    ['eQueueStatus_', jdf.queueStatuses],
    ['eQueueEntryStatus_', jdf.queueEntryStatuses],
    ['eNotificationClass_', jdf.notificationClasses],
    ['ePartUsage_', jdf.partUsages],
    ['ePartitionKeys_', jdf.partitionKeys],
  ])('of %s have the members that the schema lists', (name, ours) => {
    expect([...ours].sort()).toEqual(enumeration(name).sort());
  });
});

describe('messages', () => {
  it('of every kind served have a type in the schema', () => {
    const named = new Set(
      ['JDFMessage.xsd', 'JDFCore.xsd'].flatMap((file) =>
        jdf.childElements(schema(file), 'complexType', SCHEMA).map((el) => jdf.attributeOf(el, 'name')),
      ),
    );
    expect(Object.keys(jdf.standardMessages).filter((kind) => !named.has(kind))).toEqual([]);
  });
});

describe('partition keys', () => {
  const stated = jdf
    .childElements(schema('JDFCore.xsd'), 'attributeGroup', SCHEMA)
    .filter((el) => jdf.attributeOf(el, 'name') === 'PartitionKeysAttribs')
    .flatMap((el) => jdf.childElements(el, 'attribute', SCHEMA));

  /** The type behind the ones that only give another a name, such as pRunIndex for IntegerRangeList. */
  function behind(type: string): string {
    const local = type.replace(/^.*:/, '');
    const named = jdf
      .childElements(types, 'simpleType', SCHEMA)
      .find((el) => jdf.attributeOf(el, 'name') === local);
    const restriction = named && jdf.firstChild(named, 'restriction');
    const base = restriction && jdf.attributeOf(restriction, 'base');
    return /^p[A-Z]/.test(local) && base !== undefined ? behind(base) : local;
  }

  it('have values of the types that the schema gives them, and Part has a few more', () => {
    const lists: Readonly<Record<string, jdf.KeyKind>> = {
      Integer: 'integer',
      IntegerRangeList: 'integerRanges',
      NameRangeList: 'nameRanges',
      NMTOKENS: 'names',
      XYPair: 'numbers',
    };
    const kinds = stated.map((el) => {
      const type = behind(jdf.attributeOf(el, 'type')!);
      return [jdf.attributeOf(el, 'name')!, lists[type] ?? 'name'] as const;
    });
    expect(kinds.length).toBe(73);
    expect(kinds.map(([name]) => [name, jdf.kindOfKey(name)])).toEqual(kinds);
    expect(kinds.map(([name]) => name).sort()).toEqual([...jdf.partitionKeys, ...jdf.partOnlyKeys].sort());
  });

  it('are also names of attributes of some resources, as the schema has them', () => {
    const file = schema('JDFResource.xsd');
    const keys = new Set<string>(jdf.partitionKeys);
    const owned = jdf.childElements(file, 'attributeGroup', SCHEMA).flatMap((group) => {
      // RunListAttribs_r and the like: the attributes of one resource, of its root, its parts or both.
      const resource = /^(.+)Attribs_[rcu]$/.exec(jdf.attributeOf(group, 'name') ?? '')?.[1];
      const names = jdf.childElements(group, 'attribute', SCHEMA).map((el) => jdf.attributeOf(el, 'name')!);
      return resource === undefined ? [] : names.filter((name) => keys.has(name)).map((n) => [resource, n]);
    });
    const roots = new Set(
      jdf.childElements(file, 'complexType', SCHEMA).map((el) => jdf.attributeOf(el, 'name')),
    );
    const divisible = owned.filter(([resource]) => roots.has(`${resource}_rp`));
    expect(divisible.length).toBeGreaterThan(6);
    expect(divisible.filter(([resource, name]) => !jdf.isOwnAttribute(resource!, name!))).toEqual([]);
  });
});
