import type { Device, DispatchOutcome, Parcel } from '#libs/flow';
import type { QueueEntry } from '#libs/jdf';
import type { PartToSend } from '../../packages/package.js';
import { type DriverPorts, later, refused, taken } from '../device-driver.js';
import { type Reply, type Say, say } from './conversation.js';
import { inWords, isSuccess, mayPass, RETURN } from './return-codes.js';

const JDF_TYPE = 'application/vnd.cip4-jdf+xml';

/** What is known of devices that take packages or not. A hint only: lost with the process, and found out again. */
export type TakesPackages = Map<string, boolean>;

/**
 * SubmitQueueEntry. A device that says it takes packages (SubmissionMethods) gets the ticket in the same package, named
 * by cid:, since then nothing has to be fetched; any other is given an http address, which every device of the standard
 * can read. One that said it takes packages and then does not (HTTP 415, or ReturnCode 3) is given the address as well.
 */
export async function submitByJmf(
  ports: DriverPorts,
  known: TakesPackages,
  device: Device,
  parcel: Parcel,
): Promise<DispatchOutcome> {
  const address = ports.documentUrl?.(parcel) ?? null;
  if (address === null) return settle(ports, device, parcel, await inPackage(ports, device, parcel));
  if (!known.has(device.id)) {
    const methods = await say(ports, device, { kind: 'QuerySubmissionMethods', body: {} });
    if (methods.kind === 'silent') return later(methods.reason, true);
    known.set(device.id, saysPackages(methods));
  }
  if (known.get(device.id) === true) {
    const reply = await inPackage(ports, device, parcel);
    if (!dislikesPackages(reply)) return settle(ports, device, parcel, reply);
    known.set(device.id, false);
  }
  return settle(ports, device, parcel, await byAddress(ports, device, parcel, address));
}

function saysPackages(reply: Reply): boolean {
  if (reply.kind !== 'response' || reply.message.kind !== 'ResponseSubmissionMethods') return false;
  const { methods } = reply.message.body;
  return methods?.mime === true || methods?.packaging?.includes('MIME') === true;
}

function dislikesPackages(reply: Reply): boolean {
  if (reply.kind === 'unsuitable') return reply.status === 415;
  return reply.kind === 'response' && reply.code === RETURN.xmlParse;
}

function inPackage(ports: DriverPorts, device: Device, parcel: Parcel): Promise<Reply> {
  const contentId = `ticket.${ports.ids.next()}@sidelay`;
  const ticket: PartToSend = {
    name: `${parcel.jobPartId}.jdf`,
    contentId,
    mediaType: JDF_TYPE,
    content: Buffer.from(parcel.document, 'utf8'),
  };
  return say(ports, device, submission(parcel, `cid:${contentId}`), [ticket]);
}

function byAddress(ports: DriverPorts, device: Device, parcel: Parcel, address: string): Promise<Reply> {
  return say(ports, device, submission(parcel, address));
}

function submission(parcel: Parcel, url: string): Say {
  return {
    kind: 'CommandSubmitQueueEntry',
    body: { url, priority: parcel.priority, returnJmf: parcel.returnUrl },
  };
}

async function settle(
  ports: DriverPorts,
  device: Device,
  parcel: Parcel,
  reply: Reply,
): Promise<DispatchOutcome> {
  if (reply.kind === 'silent') return later(reply.reason, true);
  if (reply.kind === 'unsuitable') return refused(reply.reason);
  const { code, text, message } = reply;
  if (isSuccess(code)) {
    const entry = message.kind === 'ResponseSubmitQueueEntry' ? message.body.entry : undefined;
    if (entry !== undefined) return taken(entry.queueEntryId);
    // Taken, but not under which name: its queue may tell. Else our own name has to do; messages name job and step too.
    const found = await ownEntry(ports, device, parcel);
    return taken(found.kind === 'found' ? found.entry.queueEntryId : parcel.entryId);
  }
  // The answer to an earlier try was lost: the device has the job, so it is taken, not refused.
  if (code === RETURN.duplicate) {
    const found = await ownEntry(ports, device, parcel);
    if (found.kind === 'found') return taken(found.entry.queueEntryId);
    return found.kind === 'silent' ? later(found.reason, true) : refused(inWords(code, text));
  }
  return mayPass(code) ? later(inWords(code, text), false) : refused(inWords(code, text));
}

type OwnEntry =
  | { readonly kind: 'found'; readonly entry: QueueEntry }
  | { readonly kind: 'silent'; readonly reason: string }
  | { readonly kind: 'none' };

/** The entry in the device's queue for this job part: one that lives before one that has ended; never an aborted one. */
async function ownEntry(ports: DriverPorts, device: Device, parcel: Parcel): Promise<OwnEntry> {
  const { jobId, jobPartId } = parcel;
  const reply = await say(ports, device, { kind: 'QueryQueueStatus', body: { jobId, jobPartId } });
  if (reply.kind === 'silent') return reply;
  if (reply.kind !== 'response' || reply.message.kind !== 'ResponseQueueStatus') return { kind: 'none' };
  // The filter is repeated here, because not every device knows it.
  const own = (reply.message.body.queue?.entries ?? []).filter(
    (entry) => entry.jobId === jobId && entry.jobPartId === jobPartId && entry.status !== 'Aborted',
  );
  const entry = own.find(({ status }) => status !== 'Completed' && status !== 'Removed') ?? own.at(-1);
  return entry === undefined ? { kind: 'none' } : { kind: 'found', entry };
}
