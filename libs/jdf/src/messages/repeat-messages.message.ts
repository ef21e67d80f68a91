import { children, integer, kept, notNamed, oneOf, optional, text, time } from '../codec/index.js';
import { fullElement } from '../elements/base.js';
import { part } from '../elements/part.js';
import { content, perhaps } from '../jmf/content.js';

/** Which of the messages once sent are asked for; all conditions must hold. */
const filter = fullElement('MsgFilter', {
  after: optional('After', time),
  before: optional('Before', time),
  /** The newest so many. */
  count: optional('Count', integer),
  deviceId: optional('DeviceID', text),
  family: optional('Family', oneOf(['Acknowledge', 'Response', 'Signal', 'All'])),
  jobId: optional('JobID', text),
  jobPartId: optional('JobPartID', text),
  messageRefId: optional('MessageRefID', text),
  messageId: optional('MessageID', text),
  messageType: optional('MessageType', text),
  queueEntryId: optional('QueueEntryID', text),
  receiverUrl: optional('ReceiverURL', text),
  parts: children(part),
});

/** Sends earlier messages again that a filter names, as they were. */
export const repeatMessages = {
  QueryRepeatMessages: perhaps(filter, {}),
  /** What the messages contained, as it was sent. */
  ResponseRepeatMessages: content({
    contents: kept(notNamed('Comment', 'GeneralID', 'Preview', 'PreviewRef', 'Notification', 'Employee')),
  }),
};
