import {
  boolean,
  children,
  elementCodec,
  id,
  ids,
  nmtoken,
  oneOf,
  optional,
  required,
  url,
} from '../../codec/index.js';
import { part } from '../../elements/part.js';
import { nodeStatuses } from '../../enumerations.js';
import { auditFields } from './audit-fields.js';

/** A node, or a part of it, left as a ticket of its own. */
export const spawned = elementCodec('Spawned', {
  ...auditFields,
  /** ID of the node. */
  jRef: required('jRef', id),
  newSpawnId: required('NewSpawnID', nmtoken),
  jRefDestination: optional('jRefDestination', nmtoken),
  /** IDs of resources that went along as copies to be read, and as copies to be changed. */
  rRefsRoCopied: optional('rRefsROCopied', ids),
  rRefsRwCopied: optional('rRefsRWCopied', ids),
  status: optional('Status', oneOf(nodeStatuses)),
  independent: optional('Independent', boolean),
  url: optional('URL', url),
  parts: children(part),
});

/** It came back. */
export const merged = elementCodec('Merged', {
  ...auditFields,
  jRef: required('jRef', id),
  /** The NewSpawnID under which it left. */
  mergeId: required('MergeID', nmtoken),
  jRefSource: optional('jRefSource', nmtoken),
  /** IDs of resources that the returned copies replaced. */
  rRefsOverwritten: optional('rRefsOverwritten', ids),
  independent: optional('Independent', boolean),
  url: optional('URL', url),
  parts: children(part),
});
