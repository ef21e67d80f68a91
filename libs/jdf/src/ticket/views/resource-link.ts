import {
  boolean,
  children,
  dateTime,
  durationOrInfinity,
  type ElementCodec,
  editedChildren,
  editFields,
  type Field,
  id,
  inside,
  integers,
  matrix,
  nmtoken,
  number,
  oneOf,
  optional,
  readFields,
  replaceChildren,
  required,
  someOf,
  string,
  url,
  type ValueOf,
  writeFields,
} from '../../codec/index.js';
import { base, fullElement } from '../../elements/base.js';
import { part } from '../../elements/part.js';
import { orientations, resourceStatuses, usages } from '../../enumerations.js';
import { partitionKeys } from '../../partition/index.js';
import { childElements, element, type XmlElement } from '../../xml/index.js';

/** How much comes from one lot, and whether it is used up. */
const lot = fullElement('Lot', {
  lotId: required('LotID', string),
  amount: optional('Amount', number),
  actualAmount: optional('ActualAmount', number),
  consumption: optional('Consumption', oneOf(['Full', 'Partial'])),
});

/** What a link says of the whole, and a PartAmount of a part. Amounts are in the unit of the resource. */
const amounts = {
  /** Planned. */
  amount: optional('Amount', number),
  actualAmount: optional('ActualAmount', number),
  minAmount: optional('MinAmount', number),
  maxAmount: optional('MaxAmount', number),
  /** The lowest Status of the resource that will do, and that will do in the end. */
  minStatus: optional('MinStatus', oneOf(resourceStatuses)),
  minLateStatus: optional('MinLateStatus', oneOf(resourceStatuses)),
  draftOk: optional('DraftOK', boolean),
  orientation: optional('Orientation', oneOf(orientations)),
  transformation: optional('Transformation', matrix),
  start: optional('Start', dateTime),
  startOffset: optional('StartOffset', durationOrInfinity),
  duration: optional('Duration', durationOrInfinity),
  /** What is in the pipe when the consumer must stop and may go on. */
  pipePause: optional('PipePause', number),
  pipeResume: optional('PipeResume', number),
  remotePipeEndPause: optional('RemotePipeEndPause', number),
  remotePipeEndResume: optional('RemotePipeEndResume', number),
  pipeUrl: optional('PipeURL', url),
  lots: children(lot),
  parts: children(part),
};

const partAmount = fullElement('PartAmount', amounts);

const linkFields = {
  ...base,
  rRef: required('rRef', id),
  /** ID of an element inside the resource (until version 1.1). */
  rSubRef: optional('rSubRef', id),
  usage: required('Usage', oneOf(usages)),
  /** The role where a process has several links of one kind. */
  processUsage: optional('ProcessUsage', string),
  /** Which of the node's Types it is for, from 0. */
  combinedProcessIndex: optional('CombinedProcessIndex', integers),
  combinedProcessType: optional('CombinedProcessType', nmtoken),
  pipeProtocol: optional('PipeProtocol', nmtoken),
  pipePartIdKeys: optional('PipePartIDKeys', someOf(partitionKeys)),
  recommendation: optional('Recommendation', boolean),
  ...amounts,
  partAmounts: inside('AmountPool', children(partAmount)),
};

/** A link from a node to a resource; `name` is that of the resource, such as Component. */
export type LinkView = ValueOf<typeof linkFields> & { readonly name: string };

/** Links to resources, each in an element called after its resource. */
export const resourceLink: ElementCodec<LinkView> = {
  name: 'ResourceLink',
  fields: linkFields,
  read(el, findings) {
    const value = readFields(linkFields, el, findings);
    return value && { ...value, name: el.local.slice(0, -'Link'.length) };
  },
  write({ name, ...value }) {
    const written = writeFields(linkFields, value);
    return element(`${name}Link`, written.attributes, written.children);
  },
  edit(el, { name, ...value }, findings) {
    const edited = editFields(linkFields, el, value, findings);
    if (el.local === `${name}Link`) return edited;
    const local = `${name}Link`;
    return { ...edited, local, name: el.prefix === '' ? local : `${el.prefix}:${local}` };
  },
};

/** All links among the child elements. */
export const resourceLinks: Field<readonly LinkView[], false> = {
  required: false,
  read(el, findings) {
    const found = linkElements(el).flatMap((link) => resourceLink.read(link, findings) ?? []);
    return found.length === 0 ? undefined : found;
  },
  write: (values) => ({ children: values.map(resourceLink.write) }),
  set(el, values = [], findings) {
    const places = linkElements(el).filter((link) => resourceLink.read(link, findings) !== undefined);
    return replaceChildren(el, places, editedChildren(resourceLink, el, places, values, findings));
  },
};

function linkElements(el: XmlElement): XmlElement[] {
  return childElements(el).filter(({ local }) => local.endsWith('Link'));
}
