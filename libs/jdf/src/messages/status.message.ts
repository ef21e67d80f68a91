import { boolean, child, children, elementCodec, oneOf, optional, text } from '../codec/index.js';
import { deviceInfo } from '../elements/device-info.js';
import { notification } from '../elements/notification.js';
import { part } from '../elements/part.js';
import { queue } from '../elements/queue.js';
import { content, perhaps } from '../jmf/content.js';

const params = elementCodec('StatusQuParams', {
  deviceDetails: optional(
    'DeviceDetails',
    oneOf(['None', 'Brief', 'Modules', 'Details', 'Capability', 'Full']),
  ),
  jobDetails: optional('JobDetails', oneOf(['None', 'MIS', 'Brief', 'Full'])),
  employeeInfo: optional('EmployeeInfo', boolean),
  queueInfo: optional('QueueInfo', boolean),
  jobId: optional('JobID', text),
  jobPartId: optional('JobPartID', text),
  queueEntryId: optional('QueueEntryID', text),
  parts: children(part),
});

export const status = {
  QueryStatus: perhaps(params, {}),
  SignalStatus: content({
    devices: children(deviceInfo),
    queue: child(queue),
    query: child(params),
    notification: child(notification),
  }),
  ResponseStatus: content({ devices: children(deviceInfo), queue: child(queue) }),
};
