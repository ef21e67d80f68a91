import {
  child,
  children,
  keptOne,
  named,
  type Of,
  optional,
  requiredChild,
  text,
  tokens,
} from '../codec/index.js';
import { fullElement } from '../elements/base.js';
import { device } from '../elements/device.js';
import { content, only, signal } from '../jmf/content.js';

/** A node by its identifiers, with its place among the others. */
const idInfo = fullElement('IDInfo', {
  category: optional('Category', text),
  jdfUrl: optional('JDFURL', text),
  jobId: optional('JobID', text),
  jobPartId: optional('JobPartID', text),
  parentJobId: optional('ParentJobID', text),
  parentJobPartId: optional('ParentJobPartID', text),
  projectId: optional('ProjectID', text),
  type: optional('Type', text),
  types: optional('Types', tokens),
  device: child(device),
  /** The node itself, as it stands in the message. */
  node: keptOne(named('JDF')),
});
export type NodeIds = Of<typeof idInfo>;

const query = fullElement('NewJDFQuParams', {
  jobId: optional('JobID', text),
  jobPartId: optional('JobPartID', text),
  queueEntryId: optional('QueueEntryID', text),
});

const command = fullElement('NewJDFCmdParams', {
  jdfDetails: optional('JDFDetails', text),
  node: requiredChild(idInfo),
});

const answered = content({ nodes: children(idInfo) });

/** Asks for nodes that are new, or tells to make one. */
export const newJdf = {
  QueryNewJDF: only(query),
  CommandNewJDF: only(command),
  SignalNewJDF: signal({ query: child(query), nodes: children(idInfo) }),
  ResponseNewJDF: answered,
  AcknowledgeNewJDF: answered,
};
