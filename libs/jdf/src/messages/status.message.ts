import { boolean, child, children, oneOf, optional, text } from '../codec/index.js';
import { fullElement } from '../elements/base.js';
import { deviceInfo } from '../elements/device-info.js';
import { part } from '../elements/part.js';
import { queue } from '../elements/queue.js';
import { content, perhaps, signal } from '../jmf/content.js';

const params = fullElement('StatusQuParams', {
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

/** What devices do, with the phase of each job on them. */
export const status = {
  QueryStatus: perhaps(params, {}),
  SignalStatus: signal({ devices: children(deviceInfo), queue: child(queue), query: child(params) }),
  ResponseStatus: content({ devices: children(deviceInfo), queue: child(queue) }),
};
