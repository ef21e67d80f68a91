import type { Findings } from '../../codec/index.js';
import type { DeviceStatus, NodeStatus, QueueEntryStatus } from '../../enumerations.js';
import { attributeOf, childElements, XJDF_NAMESPACE, type XmlElement } from '../../xml/index.js';
import { type MessageCheck, type SentMessage, within } from './message-check.js';

/** JMF DeviceStatus, QueueEntry and JobPhase Status: device, queue entry and phase of a job tell the same story. */
export const statusAgreement: MessageCheck = {
  number: 25,
  name: 'statusAgreement',
  run({ root, messages }, findings) {
    // The newer generation has one list of statuses for all three.
    if (root.uri === XJDF_NAMESPACE) return;
    for (const message of messages) {
      for (const device of within(message, 'DeviceInfo')) checkDevice(device, findings);
      checkEntries(message, findings);
    }
  },
};

/** Jobs that leave a device free: not begun, or over. */
const APART: readonly NodeStatus[] = ['Waiting', 'Ready', 'Suspended', 'Completed', 'Aborted'];

// JMF DeviceInfo DeviceStatus. A device that runs may still be made ready for the job.
const OF_DEVICE: Readonly<Record<DeviceStatus, readonly NodeStatus[] | null>> = {
  Unknown: null,
  Idle: APART,
  Setup: ['Setup', 'TestRunInProgress'],
  Running: ['InProgress', 'Setup', 'TestRunInProgress'],
  Cleanup: ['Cleanup'],
  Stopped: ['Stopped'],
  Down: ['Stopped', ...APART],
};

// JMF QueueEntry Status; a running entry goes through all that a device does for it.
const OF_ENTRY: Readonly<Record<QueueEntryStatus, readonly NodeStatus[] | null>> = {
  Waiting: ['Waiting', 'Ready'],
  Held: ['Waiting', 'Ready'],
  Running: ['Setup', 'InProgress', 'TestRunInProgress', 'Cleanup', 'Stopped'],
  Suspended: ['Suspended', 'Stopped'],
  PendingReturn: ['Completed', 'Aborted'],
  Completed: ['Completed'],
  Aborted: ['Aborted'],
  Removed: null,
};

/** A phase that is over says what was, not what is. */
const current = (phases: readonly XmlElement[]) =>
  phases.filter((phase) => attributeOf(phase, 'EndTime') === undefined);

const statusOf = <S extends string>(el: XmlElement, name = 'Status') => attributeOf(el, name)?.trim() as S;

function checkDevice(device: XmlElement, findings: Findings): void {
  const status = statusOf<DeviceStatus>(device, 'DeviceStatus');
  const fitting = OF_DEVICE[status];
  const phases = current(childElements(device, 'JobPhase'));
  if (!fitting || phases.length === 0) return;
  const fits = (phase: XmlElement) => fitting.includes(statusOf(phase));
  // One of several jobs is enough to keep a device busy; an idle one has none.
  if (status === 'Idle' ? phases.every(fits) : phases.some(fits)) return;
  const those = phases.map((phase) => statusOf(phase)).join(', ');
  const hint = `With a device that is ${status} go jobs that are ${fitting.join(', ')}.`;
  findings.warning('JMF_PARAMETER', device, `The device is ${status}, but its job is ${those}.`, hint);
}

/** Phases inside the entry, and those of a device in the same message that name it. */
function checkEntries(message: SentMessage, findings: Findings): void {
  const onDevices = within(message, 'DeviceInfo').flatMap((device) => childElements(device, 'JobPhase'));
  for (const entry of within(message, 'QueueEntry')) {
    const status = statusOf<QueueEntryStatus>(entry);
    const id = attributeOf(entry, 'QueueEntryID');
    const fitting = OF_ENTRY[status];
    if (!fitting) continue;
    const named = onDevices.filter((phase) => attributeOf(phase, 'QueueEntryID') === id);
    for (const phase of current([...childElements(entry, 'JobPhase'), ...named])) {
      if (fitting.includes(statusOf(phase))) continue;
      const what = `The queue entry ${id} is ${status}, but its job is ${statusOf(phase)}.`;
      const hint = `With an entry that is ${status} go jobs that are ${fitting.join(', ')}.`;
      findings.warning('JMF_PARAMETER', phase, what, hint);
    }
  }
}
