import { loseEntry } from '../decide/deliver.js';
import { missDevice } from '../decide/device.js';
import { type DecisionContext, FileDraft, together } from '../decide/draft.js';
import type { Decision } from '../ports.js';
import type { Device } from '../state/device.js';
import type { QueueEntry } from '../state/ticket.js';
import { AUTOMATIC } from './automatic.js';
import { contextOf, type EnginePorts, offerWork } from './ports.js';

const MOST_ENTRIES = 1000;
/** A device that runs a job and says nothing for so long is shown as silent. */
const SILENT_AFTER_S = 600;

/**
 * Asks a device which entries it has, and gives it again what it lost: devices forget their queues in a power cut. What
 * it had begun is not begun anew by itself: that step is stopped and held until a person has looked.
 */
export async function reconcileDevice(ports: EnginePorts, deviceId: string): Promise<void> {
  const device = await ports.store.device(deviceId);
  if (device === null) return;
  const delivered = (await ports.store.entries(deviceId, MOST_ENTRIES)).filter(mustBeThere);
  if (delivered.length === 0) return;
  const known = await ports.link.knownEntries(device);
  if (known === null) return;
  for (const entry of delivered.filter((row) => !known.includes(row.deviceEntryId!))) {
    await changeEntry(ports, entry, (draft) => loseEntry(draft, entry.id, entry.attempt));
  }
}

const mustBeThere = (entry: QueueEntry): boolean =>
  entry.delivery === 'delivered' &&
  entry.deviceEntryId !== null &&
  (entry.status === 'Waiting' ||
    entry.status === 'Held' ||
    entry.status === 'Running' ||
    entry.status === 'Suspended');

async function changeEntry(
  ports: EnginePorts,
  entry: QueueEntry,
  decide: (draft: FileDraft) => void,
): Promise<void> {
  const { work } = await ports.store.change({ tickets: [entry.ticketId] }, (slice): Decision<null> => {
    const file = slice.tickets.get(entry.ticketId);
    if (file === undefined) return { result: null };
    const draft = new FileDraft(file, contextOf(ports), slice.balances);
    decide(draft);
    return { ...draft.change(), result: null };
  });
  await offerWork(ports, work);
}

/** Looks at every device: who has lost entries, and who should be talking and is not. */
export async function reconcileDevices(ports: EnginePorts): Promise<void> {
  for (const device of await ports.store.devices()) {
    if (device.driver === 'bench' || device.driver === AUTOMATIC) continue;
    await reconcileDevice(ports, device.id);
    if (shouldTalk(device, contextOf(ports))) await markSilent(ports, device.id);
  }
}

function shouldTalk(device: Device, { now }: DecisionContext): boolean {
  const busy = device.stepId !== null && device.status !== 'Idle' && device.status !== 'Unknown';
  return busy && device.silentBecause === null && now - (device.lastSeen ?? 0) > SILENT_AFTER_S * 1000;
}

async function markSilent(ports: EnginePorts, deviceId: string): Promise<void> {
  await ports.store.change({ devices: [deviceId] }, (slice): Decision<null> => {
    const device = slice.devices.get(deviceId);
    const context = contextOf(ports);
    if (device === undefined || !shouldTalk(device, context)) return { result: null };
    const missed = missDevice(
      device,
      `nothing heard for ${SILENT_AFTER_S / 60} minutes while a job runs`,
      context.now,
    );
    return { ...together({ devices: [missed.device], events: missed.events }), result: null };
  });
}
