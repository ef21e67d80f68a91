import type { LoggedEvent } from '#libs/flow';
import { isoTime } from '#libs/kernel';

/** An event in the envelope of CloudEvents 1.0. Its id is the position in the log, as a decimal string. */
export interface CloudEvent {
  readonly specversion: '1.0';
  readonly id: string;
  readonly source: string;
  readonly type: string;
  readonly time: string;
  readonly subject?: string;
  readonly datacontenttype: 'application/json';
  readonly data: Readonly<Record<string, unknown>>;
}

/**
 * An event of the log in its envelope (CloudEvents 1.0): `id` is the position in the log as text, `time` in RFC 3339.
 */
export function cloudEvent(event: LoggedEvent, deviceId: string): CloudEvent {
  const subject = event.ticketId ?? event.deviceId;
  return {
    specversion: '1.0',
    id: String(event.position),
    source: `urn:sidelay:${deviceId}`,
    type: event.type,
    time: isoTime(event.time),
    ...(subject === null ? {} : { subject }),
    datacontenttype: 'application/json',
    data: { ...event.data, ticket: event.ticketId, step: event.stepId, device: event.deviceId },
  };
}
