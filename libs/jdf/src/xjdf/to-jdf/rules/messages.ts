import { attributeNode } from '../../ledger.js';
import { without } from '../../source.js';
import { carryAttribute } from '../../translate.js';
import { named, type Rule } from './rule.js';

const RUNNING: ReadonlySet<string> = new Set(['InProgress', 'Setup', 'Cleanup', 'Stopped']);
const BY_ACTIVATION: ReadonlySet<string> = new Set(['Held', 'PendingReturn', 'Removed']);

/** Status and activation of an entry are one status in the older generation. */
const queueEntry: Rule = (older, source, out) => {
  const status = attributeNode(source.el, 'Status');
  const activation = attributeNode(source.el, 'Activation');
  const { ledger } = older.ticket;
  if (activation !== undefined && BY_ACTIVATION.has(activation.value)) {
    out.attributes.set('Status', activation.value);
    ledger.carry(activation, status);
    return without(source, [], ['Status', 'Activation']);
  }
  if (status === undefined || !RUNNING.has(status.value)) return source;
  out.attributes.set('Status', 'Running');
  if (status.value === 'InProgress') ledger.carry(status);
  else ledger.reason(status, 'an entry of the older generation is just Running');
  return without(source, [], ['Status']);
};

const submission: Rule = (older, source, out) => {
  const activation = attributeNode(source.el, 'Activation');
  if (activation === undefined || out.shape.attributes.has('Activation')) return source;
  if (activation.value === 'Held') out.attributes.set('Hold', 'true');
  if (activation.value === 'Held' || activation.value === 'Active') older.ticket.ledger.carry(activation);
  return without(source, [], ['Activation']);
};

/** The device's number stands where the older generation looks for it, too. */
const deviceInfo: Rule = (older, source, out, overflow) => {
  const [device] = named(source, 'Device');
  const id = device && attributeNode(device, 'DeviceID');
  if (id !== undefined) carryAttribute(older.direction, 'Device', id, out, overflow);
  return source;
};

/** A notification of the older generation says itself when it was written. */
const notification: Rule = (older, source, out) => {
  const { time } = older.ticket;
  if (out.shape.attributes.has('TimeStamp') && !out.attributes.has('TimeStamp') && time !== undefined) {
    out.attributes.set('TimeStamp', time);
  }
  return source;
};

export const messageRules: Readonly<Record<string, Rule>> = {
  QueueEntry: queueEntry,
  QueueSubmissionParams: submission,
  DeviceInfo: deviceInfo,
  Notification: notification,
};
