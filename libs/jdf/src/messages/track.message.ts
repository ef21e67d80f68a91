import { boolean, child, children, type Of, optional, required, someOf, text } from '../codec/index.js';
import { fullElement } from '../elements/base.js';
import { part } from '../elements/part.js';
import { nodeStatuses } from '../enumerations.js';
import { content, perhaps, signal } from '../jmf/content.js';

const job = {
  jobId: optional('JobID', text),
  jobPartId: optional('JobPartID', text),
  projectId: optional('ProjectID', text),
  queueEntryId: optional('QueueEntryID', text),
  parts: children(part),
};

const filter = fullElement('TrackFilter', { ...job, statuses: optional('Status', someOf(nodeStatuses)) });

/** Where a job is. */
const result = fullElement('TrackResult', {
  ...job,
  /** JMF address of the device or controller that has it … */
  url: required('URL', text),
  /** … and whether it is the device that executes it. */
  isDevice: required('IsDevice', boolean),
});
export type TrackResult = Of<typeof result>;

/** Where a job is: which devices and controllers have its parts. */
export const track = {
  QueryTrack: perhaps(filter, {}),
  SignalTrack: signal({ filter: child(filter), results: children(result) }),
  ResponseTrack: content({ results: children(result) }),
};
