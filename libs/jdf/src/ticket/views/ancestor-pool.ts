import {
  boolean,
  child,
  children,
  nmtoken,
  nmtokens,
  type Of,
  oneOf,
  optional,
  required,
  shortString,
  string,
  url,
} from '../../codec/index.js';
import { fullElement } from '../../elements/base.js';
import { part } from '../../elements/part.js';
import { activations, nodeStatuses, versions } from '../../enumerations.js';
import { customerInfo } from './customer-info.js';
import { inlineNodeInfo } from './node-info.js';

/** A node that a spawned one had around it, with what it passed on. */
export const ancestor = fullElement('Ancestor', {
  nodeId: required('NodeID', nmtoken),
  /** Where the ticket of that node is. */
  fileName: optional('FileName', url),
  type: optional('Type', nmtoken),
  types: optional('Types', nmtokens),
  category: optional('Category', nmtokens),
  status: optional('Status', oneOf(nodeStatuses)),
  statusDetails: optional('StatusDetails', shortString),
  activation: optional('Activation', oneOf(activations)),
  version: optional('Version', oneOf(versions)),
  maxVersion: optional('MaxVersion', oneOf(versions)),
  jobId: optional('JobID', shortString),
  jobPartId: optional('JobPartID', shortString),
  projectId: optional('ProjectID', shortString),
  relatedJobId: optional('RelatedJobID', shortString),
  relatedJobPartId: optional('RelatedJobPartID', shortString),
  relatedProjectId: optional('RelatedProjectID', shortString),
  icsVersions: optional('ICSVersions', nmtokens),
  spawnId: optional('SpawnID', shortString),
  template: optional('Template', boolean),
  templateId: optional('TemplateID', shortString),
  templateVersion: optional('TemplateVersion', string),
  customerInfo: child(customerInfo),
  nodeInfo: child(inlineNodeInfo),
});
export type Ancestor = Of<typeof ancestor>;

/** What a spawned ticket tells of where it came from. */
export const ancestorPool = fullElement('AncestorPool', {
  /** From the root of the ticket inwards. */
  ancestors: children(ancestor),
  /** The part that was spawned; none for the whole node. */
  parts: children(part),
});
export type AncestorPool = Of<typeof ancestorPool>;
