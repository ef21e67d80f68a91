import {
  child,
  children,
  nmtoken,
  nmtokens,
  type Of,
  oneOf,
  optional,
  required,
  shortString,
  url,
} from '../../codec/index.js';
import { fullElement } from '../../elements/base.js';
import { part } from '../../elements/part.js';
import { nodeStatuses } from '../../enumerations.js';
import { customerInfo } from './customer-info.js';
import { nodeFields } from './node.js';
import { inlineNodeInfo } from './node-info.js';

/** A node that a spawned one had around it, with what it passed on. */
export const ancestor = fullElement('Ancestor', {
  ...nodeFields,
  nodeId: required('NodeID', nmtoken),
  /** Where the ticket of that node is. */
  fileName: optional('FileName', url),
  type: optional('Type', nmtoken),
  category: optional('Category', nmtokens),
  status: optional('Status', oneOf(nodeStatuses)),
  spawnId: optional('SpawnID', shortString),
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
