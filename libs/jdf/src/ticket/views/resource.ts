import {
  boolean,
  dateTime,
  type ElementCodec,
  editFields,
  id,
  ids,
  integerOrInfinity,
  nmtoken,
  nmtokens,
  number,
  oneOf,
  optional,
  readFields,
  shortString,
  someOf,
  string,
  url,
  type ValueOf,
  writeFields,
} from '../../codec/index.js';
import { base } from '../../elements/base.js';
import { partUsages, physicalClasses, resourceClasses, resourceStatuses } from '../../enumerations.js';
import { partitionKeys } from '../../partition/index.js';
import { attributeOf, element, type XmlElement } from '../../xml/index.js';

/** What a resource of any class may say, in a pool or inline. Its own parameters belong to its own view. */
const common = {
  ...base,
  id: optional('ID', id),
  class: optional('Class', oneOf(resourceClasses)),
  status: optional('Status', oneOf(resourceStatuses)),
  productId: optional('ProductID', shortString),
  catalogId: optional('CatalogID', shortString),
  catalogDetails: optional('CatalogDetails', string),
  partIdKeys: optional('PartIDKeys', someOf(partitionKeys)),
  partUsage: optional('PartUsage', oneOf(partUsages)),
  /** Used in an audit: to be changed only as a copy. */
  locked: optional('Locked', boolean),
  spawnStatus: optional('SpawnStatus', oneOf(['NotSpawned', 'SpawnedRO', 'SpawnedRW'])),
  spawnIds: optional('SpawnIDs', nmtokens),
  pipeId: optional('PipeID', shortString),
  pipeProtocol: optional('PipeProtocol', nmtoken),
  pipeUrl: optional('PipeURL', url),
  pipePartIdKeys: optional('PipePartIDKeys', someOf(partitionKeys)),
  rRefs: optional('rRefs', ids),
  updateId: optional('UpdateID', nmtoken),
  skipIndex: optional('SkipIndex', integerOrInfinity),
  agentName: optional('AgentName', string),
  agentVersion: optional('AgentVersion', string),
  author: optional('Author', string),
  expires: optional('Expires', dateTime),
};

/** What resources that can be counted or weighed say besides. Amounts are in `unit`. */
const physical = {
  amount: optional('Amount', number),
  amountProduced: optional('AmountProduced', number),
  amountRequired: optional('AmountRequired', number),
  unit: optional('Unit', nmtoken),
  brand: optional('Brand', string),
  alternateBrand: optional('AlternateBrand', string),
  manufacturer: optional('Manufacturer', string),
  batchId: optional('BatchID', shortString),
  lotControl: optional('LotControl', oneOf(['Controlled', 'NotControlled'])),
  grossWeightG: optional('GrossWeight', number),
  resourceWeightG: optional('ResourceWeight', number),
};

const parameter = { noOp: optional('NoOp', boolean) };

const ofPhysical = { ...common, ...physical };
const ofParameter = { ...common, ...parameter };

export type ResourceView = { readonly name: string } & ValueOf<typeof ofPhysical> &
  ValueOf<typeof ofParameter>;

/**
 * The fields that a resource of a class has; without a class (inline, or in a message) those of all. Attributes that only
 * another class has, such as Amount of a Parameter, are left alone.
 */
function fieldsFor(el: XmlElement): typeof common {
  const stated = attributeOf(el, 'Class');
  if (stated === undefined) return { ...ofPhysical, ...parameter };
  if (physicalClasses.some((name) => name === stated)) return ofPhysical;
  return stated === 'Parameter' ? ofParameter : common;
}

/** Any resource by what all have in common; `name` is that of its element. */
export const resource: ElementCodec<ResourceView> = {
  name: 'Resource',
  fields: { ...ofPhysical, ...parameter },
  read(el, findings) {
    const value = readFields(fieldsFor(el), el, findings);
    return value && { ...value, name: el.local };
  },
  write({ name, ...value }) {
    const written = writeFields({ ...ofPhysical, ...parameter }, value);
    return element(name, written.attributes, written.children);
  },
  edit: (el, value, findings) => editFields(fieldsFor(el), el, value, findings),
};
