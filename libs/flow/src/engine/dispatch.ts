import { mayDeliver, settleDelivery, settleInstruction } from '../decide/deliver.js';
import { hear, missDevice } from '../decide/device.js';
import { FileDraft, together } from '../decide/draft.js';
import type { Decision, DispatchOutcome, Work } from '../ports.js';
import { processTicket } from '../process/index.js';
import type { Device } from '../state/device.js';
import type { QueueEntry } from '../state/ticket.js';
import { AUTOMATIC, tendAutomatic } from './automatic.js';
import { contextOf, type EnginePorts, offerWork } from './ports.js';

/** Does what a hint points to. Reads everything afresh: by now it may be done, held or aborted, and then this does nothing. */
export async function doWork(ports: EnginePorts, work: Work): Promise<void> {
  if (work.kind === 'dispatch') await dispatchEntry(ports, work.ticketId, work.entryId, work.attempt);
  else await instructEntry(ports, work.ticketId, work.entryId);
}

async function dispatchEntry(
  ports: EnginePorts,
  ticketId: string,
  entryId: string,
  attempt: number,
): Promise<void> {
  const file = await ports.store.ticketFile(ticketId);
  const entry = file?.entries.find((row) => row.id === entryId);
  if (file == null || !mayDeliver(entry, attempt, ports.clock.now())) return;
  const device = await ports.store.device(entry.deviceId);
  const outcome = device === null ? unknownDevice(entry.deviceId) : await submit(ports, device, entry, file);
  await settle(ports, ticketId, entry.deviceId, outcome, (draft) =>
    settleDelivery(draft, entryId, attempt, outcome),
  );
  if (device?.driver === AUTOMATIC && outcome.outcome === 'taken') await tendAutomatic(ports, device.id);
}

const unknownDevice = (id: string): DispatchOutcome => ({
  outcome: 'later',
  reason: `no device "${id}" is registered`,
  silent: false,
});

async function submit(
  ports: EnginePorts,
  device: Device,
  entry: QueueEntry,
  file: NonNullable<Awaited<ReturnType<EnginePorts['store']['ticketFile']>>>,
): Promise<DispatchOutcome> {
  if (device.url === null && device.driver !== 'bench' && device.driver !== AUTOMATIC) {
    return { outcome: 'later', reason: 'it has not said yet at which address it is', silent: false };
  }
  const original = await ports.ticketDocument(file);
  const document = processTicket(file, original, entry.stepId, {
    now: ports.clock.now(),
    jmfUrl: ports.jmfUrl,
    senderId: ports.deviceId,
    plant: ports.plant,
  });
  if (!document.ok) return { outcome: 'refused', reason: document.problems.map((p) => p.message).join(' ') };
  return ports.link.submit(device, {
    ticketId: entry.ticketId,
    stepId: entry.stepId,
    entryId: entry.id,
    jobId: file.ticket.jobId,
    jobPartId: entry.stepId,
    name: file.ticket.name,
    priority: entry.priority,
    document: document.value,
    returnUrl: ports.jmfUrl,
  });
}

async function instructEntry(ports: EnginePorts, ticketId: string, entryId: string): Promise<void> {
  const file = await ports.store.ticketFile(ticketId);
  const entry = file?.entries.find((row) => row.id === entryId);
  if (entry === undefined || entry.wanted === null || entry.deviceEntryId === null) return;
  if ((entry.notBefore ?? 0) > ports.clock.now()) return;
  const device = await ports.store.device(entry.deviceId);
  if (device === null) return;
  const wanted = entry.wanted;
  const outcome = await ports.link.instruct(device, entry.deviceEntryId, wanted);
  await settle(ports, ticketId, entry.deviceId, outcome, (draft) =>
    settleInstruction(draft, entryId, wanted, outcome),
  );
}

/** Writes what came of it: on the file, and on the device whether it answered. */
async function settle(
  ports: EnginePorts,
  ticketId: string,
  deviceId: string,
  outcome: DispatchOutcome,
  decide: (draft: FileDraft) => void,
): Promise<void> {
  const { work } = await ports.store.change(
    { tickets: [ticketId], devices: [deviceId] },
    (slice): Decision<null> => {
      const context = contextOf(ports);
      const file = slice.tickets.get(ticketId);
      const device = slice.devices.get(deviceId);
      const onDevice =
        device === undefined
          ? null
          : outcome.outcome === 'later' && outcome.silent
            ? missDevice(device, outcome.reason, context.now)
            : outcome.outcome === 'later'
              ? null
              : hear(device, context.now);
      const deviceChange = onDevice === null ? {} : { devices: [onDevice.device], events: onDevice.events };
      if (file === undefined) return { ...deviceChange, result: null };
      const draft = new FileDraft(file, context, slice.balances);
      decide(draft);
      return { ...together(draft.change(), deviceChange), result: null };
    },
  );
  await offerWork(ports, work);
}
