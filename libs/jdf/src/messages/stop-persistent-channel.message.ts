import { children, optional, required, text } from '../codec/index.js';
import { fullElement } from '../elements/base.js';
import { part } from '../elements/part.js';
import { nothing, only } from '../jmf/content.js';

/** Ends all subscriptions that match everything given here. */
const params = fullElement('StopPersChParams', {
  url: required('URL', text),
  /** ID of the query that subscribed. */
  channelId: optional('ChannelID', text),
  messageType: optional('MessageType', text),
  deviceId: optional('DeviceID', text),
  jobId: optional('JobID', text),
  jobPartId: optional('JobPartID', text),
  queueEntryId: optional('QueueEntryID', text),
  parts: children(part),
});

/** Ends channels, all or those that are named. */
export const stopPersistentChannel = {
  CommandStopPersistentChannel: only(params),
  ResponseStopPersistentChannel: nothing,
  AcknowledgeStopPersistentChannel: nothing,
};
