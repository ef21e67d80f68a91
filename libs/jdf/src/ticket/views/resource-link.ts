import {
  boolean,
  type ElementCodec,
  editedChildren,
  editFields,
  type Field,
  id,
  integers,
  nmtoken,
  oneOf,
  optional,
  readFields,
  replaceChildren,
  required,
  someOf,
  string,
  type ValueOf,
  writeFields,
} from '../../codec/index.js';
import { amountPool, amounts } from '../../elements/amounts.js';
import { base } from '../../elements/base.js';
import { usages } from '../../enumerations.js';
import { partitionKeys } from '../../partition/index.js';
import { childElements, element, type XmlElement } from '../../xml/index.js';

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
  partAmounts: amountPool,
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
