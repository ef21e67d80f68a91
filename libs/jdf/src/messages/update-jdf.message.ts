import { child, children, kept, keptOne, named, notNamed, optional, required, text } from '../codec/index.js';
import { fullElement } from '../elements/base.js';
import { content, only, signal } from '../jmf/content.js';

/** The node of the ticket that is to be changed; the parent where left out. */
const node = { jobId: optional('JobID', text), jobPartId: optional('JobPartID', text) };

const elements = kept(notNamed('Comment', 'GeneralID', 'Preview', 'PreviewRef'));

/** Changes of a ticket that the receiver holds; links and resources are as they stand in the message. */
const params = fullElement('UpdateJDFCmdParams', {
  parentJobId: required('ParentJobID', text),
  parentJobPartId: required('ParentJobPartID', text),
  createLinks: children(fullElement('CreateLink', { ...node, links: elements })),
  createResources: children(fullElement('CreateResource', { ...node, resources: elements })),
  moveResources: children(fullElement('MoveResource', { ...node, resourceId: required('ResourceID', text) })),
  removeLinks: children(fullElement('RemoveLink', { ...node, links: elements })),
  /** A node to be added to the parent. */
  node: keptOne(named('JDF')),
});

const answered = content({ params: child(params) });

/** Changes a ticket that a controller has: links, resources and nodes are made, moved or taken out. */
export const updateJdf = {
  CommandUpdateJDF: only(params),
  SignalUpdateJDF: signal({ params: child(params) }),
  ResponseUpdateJDF: answered,
  AcknowledgeUpdateJDF: answered,
};
