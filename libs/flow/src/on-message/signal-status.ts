import type { DeviceInfo, JobPhase } from '#libs/jdf';
import { bookPhase, type PhaseReport } from '../decide/book-phase.js';
import { bookDevice } from '../decide/device.js';
import { FileDraft, together } from '../decide/draft.js';
import { contextOf, offerWork } from '../engine/ports.js';
import type { Decision } from '../ports.js';
import type { NodeStatus } from '../state/ticket.js';
import { unknownDevice } from './addressee.js';
import { type Answer, ok, on, type Reception, speaker } from './handler.js';

/** What of the standard's node statuses is a phase of work on a device; the others say that nothing runs yet. */
const WORK: readonly string[] = [
  'Setup',
  'InProgress',
  'Cleanup',
  'Stopped',
  'Suspended',
  'Completed',
  'Aborted',
];

/** A device says how it is, and what each of its jobs is doing. */
export const signalStatus = on('SignalStatus', async (message, reception) => {
  const sentAt = message.time ?? reception.envelope.timeStamp;
  for (const info of message.body.devices ?? []) {
    const answer = await book(info, sentAt, reception);
    if (!answer.ok) return answer;
  }
  return ok;
});

async function book(info: DeviceInfo, sentAt: number, reception: Reception): Promise<Answer> {
  const { ports } = reception;
  const who = speaker(reception, info.deviceId);
  if (!who.ok) return who.answer;
  const { deviceId } = who;
  const reports = await addressed(info, deviceId, sentAt, reception);
  const tickets = [...new Set(reports.map(({ ticketId }) => ticketId))];
  const booksStock = reports.some(({ ended, report }) => ended || isEnd(report));
  // Only an end books stock, so only then are its rows locked: they are shared by all jobs.
  const stock = booksStock ? await usedItems(reports, reception) : [];
  const { result, work } = await ports.store.change(
    { tickets, devices: [deviceId], stock },
    (slice): Decision<Answer> => {
      const device = slice.devices.get(deviceId);
      if (device === undefined) {
        return { result: unknownDevice(deviceId) };
      }
      const context = contextOf(ports);
      const drafts = new Map<string, FileDraft>();
      for (const { ticketId, report } of reports) {
        const file = slice.tickets.get(ticketId);
        if (file === undefined) continue;
        const draft = drafts.get(ticketId) ?? new FileDraft(file, context, slice.balances);
        drafts.set(ticketId, draft);
        bookPhase(draft, report);
      }
      const current = reports.find(({ report }) => !isEnd(report)) ?? null;
      const said = bookDevice(
        device,
        {
          status: info.deviceStatus,
          statusDetails: info.statusDetails ?? null,
          speed: info.speedPerHour ?? null,
          at: sentAt,
          job: current === null ? null : (drafts.get(current.ticketId)?.ticket.jobId ?? null),
          ticketId: current?.ticketId ?? null,
          stepId: current?.report.stepId ?? null,
        },
        context.now,
      );
      const files = [...drafts.values()].map((draft) => draft.change());
      return { ...together({ devices: [said.device], events: said.events }, ...files), result: ok };
    },
  );
  await offerWork(ports, work);
  return result;
}

const isEnd = (report: PhaseReport): boolean => report.status === 'Completed' || report.status === 'Aborted';

interface Addressed {
  readonly ticketId: string;
  readonly ended: boolean;
  readonly report: PhaseReport;
}

/** The job phases that are ours, each with the step it belongs to. A device may also run work of others. */
async function addressed(
  info: DeviceInfo,
  deviceId: string,
  sentAt: number,
  { ports }: Reception,
): Promise<readonly Addressed[]> {
  const found: Addressed[] = [];
  for (const phase of info.jobPhases ?? []) {
    if (!WORK.includes(phase.status)) continue;
    const { jobId, jobPartId, queueEntryId } = phase;
    const address = await ports.store.findStep(deviceId, { jobId, jobPartId, queueEntryId });
    if (address === null) {
      ports.log('info', 'a device reports a job that is not ours', {
        deviceId,
        jobId,
        jobPartId,
        queueEntryId,
      });
      continue;
    }
    found.push({
      ticketId: address.ticketId,
      ended: address.ended,
      report: reportOf(phase, deviceId, address.stepId, sentAt),
    });
  }
  return found;
}

function reportOf(phase: JobPhase, deviceId: string, stepId: string, sentAt: number): PhaseReport {
  return {
    stepId,
    deviceId,
    start: phase.phaseStartTime ?? phase.startTime ?? sentAt,
    at: phase.endTime ?? sentAt,
    status: phase.status as NodeStatus,
    statusDetails: phase.statusDetails ?? null,
    good: phase.phaseAmount ?? null,
    waste: phase.phaseWaste ?? null,
    totalGood: phase.amount ?? null,
    totalWaste: phase.waste ?? null,
    deviceEntryId: phase.queueEntryId ?? null,
    source: 'machine',
  };
}

async function usedItems(reports: readonly Addressed[], { ports }: Reception): Promise<string[]> {
  const items = new Set<string>();
  for (const { ticketId, report } of reports) {
    const file = await ports.store.ticketFile(ticketId);
    for (const use of file?.uses ?? []) if (use.stepId === report.stepId) items.add(use.item);
  }
  return [...items];
}
