import type { Instant } from '#libs/kernel';
import type { Device, DeviceStatus } from '../state/device.js';
import type { NewEvent } from '../state/event.js';
import { merged } from './draft.js';

export interface DeviceReport {
  readonly status: DeviceStatus;
  readonly statusDetails: string | null;
  readonly speed: number | null;
  /** When the device said so, in its own words. */
  readonly at: Instant;
  readonly job: string | null;
  readonly ticketId: string | null;
  readonly stepId: string | null;
}

interface DeviceDecision {
  readonly device: Device;
  readonly events: readonly NewEvent[];
}

/** What a device says of itself. An older word than the last one heard moves nothing back. */
export function bookDevice(device: Device, report: DeviceReport, now: Instant): DeviceDecision {
  const heard = hear(device, now);
  if (device.lastSeen !== null && device.source === 'machine' && report.at < device.since) return heard;
  const changed = device.status !== report.status || device.statusDetails !== report.statusDetails;
  const next = merged(heard.device, {
    status: report.status,
    statusDetails: report.statusDetails,
    speed: report.speed,
    job: report.job,
    ticketId: report.ticketId,
    stepId: report.stepId,
    since: changed ? report.at : device.since,
    source: 'machine',
  });
  if (!changed) return { device: next, events: heard.events };
  const data = {
    from: device.status,
    to: report.status,
    statusDetails: report.statusDetails,
    job: report.job,
  };
  return { device: next, events: [...heard.events, event('device.statusChanged', next, report.at, data)] };
}

/** A sign of life; says so when the device had been silent. */
export function hear(device: Device, now: Instant): DeviceDecision {
  const next = merged(device, { lastSeen: Math.max(now, device.lastSeen ?? 0), silentBecause: null });
  if (device.silentBecause === null) return { device: next, events: [] };
  return { device: next, events: [event('device.heard', next, now, { was: device.silentBecause })] };
}

/** The device did not answer. Its last status stays, for that is what was last known; the silence is shown beside it. */
export function missDevice(device: Device, reason: string, now: Instant): DeviceDecision {
  if (device.silentBecause !== null) return { device, events: [] };
  const next = merged(device, { silentBecause: reason });
  return { device: next, events: [event('device.silent', next, now, { reason })] };
}

function event(type: NewEvent['type'], device: Device, time: Instant, data: NewEvent['data']): NewEvent {
  return { type, time, ticketId: device.ticketId, stepId: device.stepId, deviceId: device.id, data };
}
