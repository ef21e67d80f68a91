import { attributeOf, type ResourceInfo } from '#libs/jdf';
import { FileDraft } from '../decide/draft.js';
import { useNamed } from '../decide/use-named.js';
import { bookUse } from '../decide/uses.js';
import { contextOf, offerWork } from '../engine/ports.js';
import type { Decision } from '../ports.js';
import { type Answer, no, ok, on, speaker } from './handler.js';

/** A device says what it used so far. Totals: the same word twice books nothing twice. */
export const signalResource = on('SignalResource', async (message, reception): Promise<Answer> => {
  const { ports } = reception;
  const { query, resources = [] } = message.body;
  const who = speaker(reception, resources.find((info) => info.deviceId !== undefined)?.deviceId);
  if (!who.ok) return who.answer;
  const { deviceId } = who;
  const { jobId, jobPartId, queueEntryId } = query ?? {};
  const address = await ports.store.findStep(deviceId, { jobId, jobPartId, queueEntryId });
  if (address === null) {
    ports.log('info', 'a device reports resources of a job that is not ours', { deviceId, jobId, jobPartId });
    return jobId === undefined ? ok : no('JOB_UNKNOWN', `${deviceId} was given no job "${jobId}" from here.`);
  }
  const file = await ports.store.ticketFile(address.ticketId);
  const reports = resources.flatMap((info) => {
    const use = useNamed(file?.uses ?? [], address.stepId, nameOf(info));
    return use === null ? [] : [{ item: use.item, ...amountsOf(info) }];
  });
  if (reports.length === 0) return ok;
  const keys = { tickets: [address.ticketId], stock: [...new Set(reports.map((report) => report.item))] };
  const { work } = await ports.store.change(keys, (slice): Decision<null> => {
    const locked = slice.tickets.get(address.ticketId);
    if (locked === undefined) return { result: null };
    const draft = new FileDraft(locked, contextOf(ports), slice.balances);
    for (const report of reports) bookUse(draft, { ...report, stepId: address.stepId, source: 'machine' });
    return { ...draft.change(), result: null };
  });
  await offerWork(ports, work);
  return ok;
});

function nameOf(info: ResourceInfo): { name: string; mediaType: string | null; separation: string | null } {
  const { resource } = info;
  return {
    name: info.resourceName ?? resource?.local ?? '',
    mediaType: resource === undefined ? null : (attributeOf(resource, 'MediaType') ?? null),
    separation: info.parts?.find((part) => part.Separation !== undefined)?.Separation ?? null,
  };
}

/** All that was used and the part of it that was lost. Waste stands in the parts with Condition Waste. */
function amountsOf(info: ResourceInfo): { actual: number; waste: number | null } {
  const parts = info.partAmounts ?? [];
  const sum = (rows: typeof parts): number => rows.reduce((total, row) => total + (row.actualAmount ?? 0), 0);
  const isWaste = (row: (typeof parts)[number]): boolean =>
    (row.parts ?? []).some((part) => /waste/i.test(part.Condition ?? ''));
  const wasted = parts.filter(isWaste);
  return {
    actual: info.actualAmount ?? sum(parts),
    waste: wasted.length === 0 ? null : sum(wasted),
  };
}
