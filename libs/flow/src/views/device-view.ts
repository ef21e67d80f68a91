import { isoTime } from '#libs/kernel';
import type { Device } from '../state/device.js';
import type { Phase, QueueEntry } from '../state/ticket.js';

const timeOrNull = (at: number | null): string | null => (at === null ? null : isoTime(at));

/** A device as the outside sees it, with how old the picture is and who said so. */
export function deviceView(device: Device): Record<string, unknown> {
  return {
    id: device.id,
    kind: device.kind,
    name: device.name,
    driver: device.driver,
    url: device.url,
    status: device.status,
    statusDetails: device.statusDetails,
    job: device.job,
    ticket: device.ticketId,
    step: device.stepId,
    speed: device.speed,
    since: isoTime(device.since),
    source: device.source,
    lastSeen: timeOrNull(device.lastSeen),
    silent: device.silentBecause,
  };
}

/** An entry of a queue as the outside sees it, at its position in the list. */
export function entryView(entry: QueueEntry, index: number): Record<string, unknown> {
  return {
    id: entry.id,
    ticket: entry.ticketId,
    step: entry.stepId,
    status: entry.status,
    priority: entry.priority,
    position: index,
    submitted: isoTime(entry.submitted),
    start: timeOrNull(entry.start),
    end: timeOrNull(entry.end),
    delivery: entry.delivery,
    deviceEntryId: entry.deviceEntryId,
    lastError: entry.lastError,
  };
}

/** A phase as the outside sees it: good and waste in pieces, times as RFC 3339. */
export function phaseView(phase: Phase): Record<string, unknown> {
  return {
    start: isoTime(phase.start),
    end: timeOrNull(phase.end),
    status: phase.status,
    statusDetails: phase.statusDetails,
    ticket: phase.ticketId,
    step: phase.stepId,
    good: phase.good,
    waste: phase.waste,
    source: phase.source,
  };
}
