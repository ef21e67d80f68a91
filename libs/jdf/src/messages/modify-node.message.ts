import { child, children, oneOf, optional, required, text } from '../codec/index.js';
import { fullElement } from '../elements/base.js';
import { part } from '../elements/part.js';
import { activations } from '../enumerations.js';
import { content, only, signal } from '../jmf/content.js';

/** Words to be added to an element of the ticket, or to take the place of others. */
const newComment = fullElement('NewComment', {
  action: required('Action', oneOf(['Add', 'Concat', 'Replace', 'Remove'])),
  /** The element to be commented. */
  refId: required('refID', text),
  commentId: optional('CommentID', text),
  parts: children(part),
});

const params = fullElement('ModifyNodeCmdParams', {
  jobId: required('JobID', text),
  jobPartId: required('JobPartID', text),
  activation: optional('Activation', oneOf(activations)),
  comments: children(newComment),
});

const answered = content({ params: child(params) });

/** Changes a node that a controller has: its activation, priority or what it says. Answered with how it stands. */
export const modifyNode = {
  CommandModifyNode: only(params),
  SignalModifyNode: signal({ params: child(params) }),
  ResponseModifyNode: answered,
  AcknowledgeModifyNode: answered,
};
