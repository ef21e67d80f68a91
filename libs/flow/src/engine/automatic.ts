import { bookPhase } from '../decide/book-phase.js';
import { bookDevice } from '../decide/device.js';
import { FileDraft, together } from '../decide/draft.js';
import type { Decision } from '../ports.js';
import type { QueueEntry, Step } from '../state/ticket.js';
import { contextOf, type EnginePorts, offerWork } from './ports.js';

/** The driver of workstations that work by themselves, in this server's own time. */
export const AUTOMATIC = 'automatic';
const MOST_ENTRIES = 1000;

/**
 * Moves the work of an automatic workstation on: what was delivered begins, what has had its planned time is done, one
 * step after another. Everything it needs to know is in the truth, so it goes on after any restart. Returns the plant
 * seconds until there is something to do again, or null when nothing is left.
 */
export async function moveAutomatic(ports: EnginePorts, deviceId: string): Promise<number | null> {
  for (;;) {
    const entries = await ports.store.entries(deviceId, MOST_ENTRIES);
    const running = entries.find((entry) => entry.status === 'Running');
    const next = running ?? nextOf(entries);
    if (next === undefined) return null;
    const waitS = await moveOn(ports, next);
    if (waitS > 0) return waitS;
  }
}

function nextOf(entries: readonly QueueEntry[]): QueueEntry | undefined {
  const waiting = entries.filter((entry) => entry.status === 'Waiting' && entry.delivery === 'delivered');
  return waiting.sort(
    (a, b) => b.priority - a.priority || a.submitted - b.submitted || (a.id < b.id ? -1 : 1),
  )[0];
}

/** Begins or ends one step; the plant seconds it still needs, 0 when it is done or somebody else took care of it. */
async function moveOn(ports: EnginePorts, entry: QueueEntry): Promise<number> {
  const { result, work } = await ports.store.change(
    { tickets: [entry.ticketId], devices: [entry.deviceId] },
    (slice): Decision<number> => {
      const file = slice.tickets.get(entry.ticketId);
      const device = slice.devices.get(entry.deviceId);
      const live = file?.entries.find((row) => row.id === entry.id);
      if (file === undefined || device === undefined || live === undefined) return { result: 0 };
      if (live.status !== 'Waiting' && live.status !== 'Running') return { result: 0 };
      const context = contextOf(ports);
      const draft = new FileDraft(file, context, slice.balances);
      const step = draft.step(live.stepId);
      const begin = step.start ?? context.now;
      const end = begin + lengthMs(step);
      const isDone = step.start !== null && end <= context.now;
      const phase = {
        stepId: step.id,
        deviceId: device.id,
        start: begin,
        statusDetails: null,
        waste: 0,
        source: 'machine' as const,
      };
      if (isDone) {
        bookPhase(draft, { ...phase, at: end, status: 'Completed', good: step.outAmount });
        draft.setEntry(live.id, { status: 'Completed' });
      } else bookPhase(draft, { ...phase, at: begin, status: 'InProgress', good: null });
      const said = bookDevice(
        device,
        {
          status: isDone ? 'Idle' : 'Running',
          statusDetails: null,
          speed: null,
          at: isDone ? end : begin,
          job: isDone ? null : draft.ticket.jobId,
          ticketId: isDone ? null : draft.ticket.id,
          stepId: isDone ? null : step.id,
        },
        context.now,
      );
      const change = together({ devices: [said.device], events: said.events }, draft.change());
      return { ...change, result: isDone ? 0 : Math.max(0.001, (end - context.now) / 1000) };
    },
  );
  await offerWork(ports, work);
  return result;
}

const lengthMs = (step: Step): number => (step.setupS + step.runS) * 1000;

/** Moves on whenever there is something to do at a workstation, until called off. The sweep calls this as well. */
export async function tendAutomatic(ports: EnginePorts, deviceId: string): Promise<void> {
  const waitS = await moveAutomatic(ports, deviceId);
  if (waitS !== null) ports.clock.after(waitS, () => tendAutomatic(ports, deviceId).catch(() => undefined));
}
