import {
  boolean,
  id,
  nmtoken,
  nmtokens,
  type Of,
  oneOf,
  optional,
  required,
  shortString,
  string,
} from '../../codec/index.js';
import { fullElement } from '../../elements/base.js';
import { activations, nodeStatuses, versions } from '../../enumerations.js';
import { attributeOf, type XmlElement } from '../../xml/index.js';

/** What a node says of itself, and what the ticket of a node below it repeats of it. */
export const nodeFields = {
  /** The processes of a Combined node or gray box, in order. */
  types: optional('Types', nmtokens),
  statusDetails: optional('StatusDetails', shortString),
  activation: optional('Activation', oneOf(activations)),
  version: optional('Version', oneOf(versions)),
  /** The highest version that may be written into it. */
  maxVersion: optional('MaxVersion', oneOf(versions)),
  jobId: optional('JobID', shortString),
  jobPartId: optional('JobPartID', shortString),
  projectId: optional('ProjectID', shortString),
  relatedJobId: optional('RelatedJobID', shortString),
  relatedJobPartId: optional('RelatedJobPartID', shortString),
  relatedProjectId: optional('RelatedProjectID', shortString),
  icsVersions: optional('ICSVersions', nmtokens),
  template: optional('Template', boolean),
  templateId: optional('TemplateID', shortString),
  templateVersion: optional('TemplateVersion', string),
};

/** The attributes of a node (an element JDF). */
export const ticketNode = fullElement('JDF', {
  ...nodeFields,
  id: required('ID', id),
  /** Product, ProcessGroup, Combined or the name of a process. */
  type: required('Type', nmtoken),
  /** What a gray box is for, such as FinalImaging. */
  category: optional('Category', nmtoken),
  status: required('Status', oneOf(nodeStatuses)),
  namedFeatures: optional('NamedFeatures', nmtokens),
  spawnId: optional('SpawnID', nmtoken),
});
export type TicketNode = Of<typeof ticketNode>;

export type NodeKind = 'product' | 'group' | 'gray-box' | 'combined' | 'process';

/**
 * What a node is: a product that is wanted, a group of other nodes, a gray box (a group that names processes, to be
 * expanded), several processes that one device does in a row, or one process. Undefined without a Type.
 */
export function nodeKindOf(node: XmlElement): NodeKind | undefined {
  switch (attributeOf(node, 'Type')) {
    case undefined:
      return undefined;
    case 'Product':
      return 'product';
    case 'Combined':
      return 'combined';
    case 'ProcessGroup':
      return attributeOf(node, 'Types') === undefined ? 'group' : 'gray-box';
    default:
      return 'process';
  }
}
