/** The facts of the standard that are written down by hand in the library, against the official schema. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import * as jdf from '#libs/jdf';
import { XS } from '../kit/read-schema.js';
import { parsedXml } from '../kit/value-in.js';
import { standardsFolder } from './samples.js';

function schema(file: string): jdf.XmlElement {
  return parsedXml(new Uint8Array(readFileSync(join(standardsFolder(), 'jdf', 'schema', file)))).root;
}

const types = schema('JDFTypes.xsd');

function enumeration(name: string): string[] {
  const type = jdf.childElements(types, 'simpleType', XS).find((el) => jdf.attributeOf(el, 'name') === name);
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
    ['eUpdateMethod_', jdf.updateMethods],
    ['Orientation', jdf.orientations],
    ['ePartUsage_', jdf.partUsages],
    ['ePartitionKeys_', jdf.partitionKeys],
  ])('of %s have the members that the schema lists', (name, ours) => {
    expect([...ours].sort()).toEqual(enumeration(name).sort());
  });
});
