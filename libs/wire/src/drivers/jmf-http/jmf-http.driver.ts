import type { Device, DispatchOutcome } from '#libs/flow';
import { entryFilter } from '#libs/jdf';
import {
  type DriverKind,
  type DriverPorts,
  later,
  type QueueAnswer,
  refused,
  taken,
} from '../device-driver.js';
import { type Reply, type Say, say } from './conversation.js';
import { inWords, isSuccess, mayPass, RETURN } from './return-codes.js';
import { submitByJmf, type TakesPackages } from './submit-by-jmf.js';

/**
 * Devices that speak JMF over HTTP (JDF specification, chapter on messaging). Silence, a closed queue and a busy device
 * mean "later"; every other ReturnCode is the device's refusal, with its words.
 */
export const jmfHttp: DriverKind = {
  name: 'jmf',
  make(ports) {
    const takesPackages: TakesPackages = new Map();
    return {
      name: 'jmf',
      abilities: { hold: true, abort: true, queueStatus: true },
      submit: (device, parcel) => submitByJmf(ports, takesPackages, device, parcel),
      instruct: (device, entry, wanted) => instruct(ports, device, entry, wanted),
      queueStatus: (device) => queueStatus(ports, device),
    };
  },
};

function commandFor(entry: string, wanted: 'Held' | 'Waiting' | 'Aborted'): Say {
  const filter = entryFilter(entry);
  switch (wanted) {
    case 'Held':
      return { kind: 'CommandHoldQueueEntry', body: { filter } };
    case 'Waiting':
      return { kind: 'CommandResumeQueueEntry', body: { filter } };
    case 'Aborted':
      return { kind: 'CommandAbortQueueEntry', body: { filter, endStatus: 'Aborted' } };
  }
}

async function instruct(
  ports: DriverPorts,
  device: Device,
  entry: string,
  wanted: 'Held' | 'Waiting' | 'Aborted',
): Promise<DispatchOutcome> {
  const reply = await say(ports, device, commandFor(entry, wanted));
  if (reply.kind !== 'response') return withoutResponse(reply);
  const { code, text } = reply;
  // What we want is so already: in that status, or, for an entry that shall end, no longer there.
  const so = code === RETURN.sameStatus || (wanted === 'Aborted' && code === RETURN.unknownEntry);
  if (isSuccess(code) || so) return taken(entry);
  return mayPass(code) ? later(inWords(code, text), false) : refused(inWords(code, text));
}

async function queueStatus(ports: DriverPorts, device: Device): Promise<QueueAnswer> {
  const reply = await say(ports, device, { kind: 'QueryQueueStatus', body: {} });
  if (reply.kind !== 'response') return { kind: 'silent', reason: reply.reason };
  const { message } = reply;
  if (!isSuccess(reply.code) || message.kind !== 'ResponseQueueStatus') return { kind: 'unknown' };
  return { kind: 'entries', entries: message.body.queue?.entries ?? [] };
}

function withoutResponse(reply: Exclude<Reply, { kind: 'response' }>): DispatchOutcome {
  return reply.kind === 'silent' ? later(reply.reason, true) : refused(reply.reason);
}
