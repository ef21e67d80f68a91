import { child, children, keptOne, named, oneOf, optional, required, text } from '../codec/index.js';
import { fullElement } from '../elements/base.js';
import { part } from '../elements/part.js';
import { updateMethods } from '../enumerations.js';
import { content, only, signal } from '../jmf/content.js';

/** The node, or the parts of it, that are meant. */
const which = {
  jobId: required('JobID', text),
  jobPartId: optional('JobPartID', text),
  queueEntryId: optional('QueueEntryID', text),
  parts: children(part),
};

/** The resource, as it stands in the message. */
const resource = keptOne(named('NodeInfo'));

const query = fullElement('NodeInfoQuParams', which);
const command = fullElement('NodeInfoCmdParams', {
  ...which,
  updateMethod: optional('UpdateMethod', oneOf(updateMethods)),
  resource,
});
const info = fullElement('NodeInfoResp', { ...which, resource });

const answered = content({ infos: children(info) });

/** Asks for the schedule and status of nodes, or changes them. */
export const nodeInfo = {
  QueryNodeInfo: only(query),
  CommandNodeInfo: only(command),
  SignalNodeInfo: signal({ query: child(query), infos: children(info) }),
  ResponseNodeInfo: answered,
  AcknowledgeNodeInfo: answered,
};
