import type { Plant } from '#libs/craft';
import type { Instant } from '#libs/kernel';

const DAY_MS = 24 * 3600 * 1000;
const DAYS_AHEAD = 21;
const NAMES = ['Sun', 'Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat'] as const;

/** Stretches in which a machine is open, as instants, in order. A machine without a calendar is not in the map. */
export type OpenHours = ReadonlyMap<string, readonly (readonly [Instant, Instant])[]>;

/** Opening hours of three weeks from `now` on, in the plant's own time zone (summer time included). */
export function calendarsOf(plant: Plant, now: Instant): OpenHours {
  const open = new Map<string, [Instant, Instant][]>();
  const today = localDate(now, plant.timeZone);
  for (const [deviceId, rows] of Object.entries(plant.calendars)) {
    const stretches: [Instant, Instant][] = [];
    for (let day = -1; day < DAYS_AHEAD; day++) {
      const date = new Date(today.getTime() + day * DAY_MS);
      const name = NAMES[date.getUTCDay()]!;
      for (const row of rows) {
        if (!row.days.includes(name)) continue;
        stretches.push([instantOf(date, row.from, plant.timeZone), instantOf(date, row.to, plant.timeZone)]);
      }
    }
    open.set(
      deviceId,
      stretches.sort((a, b) => a[0] - b[0]),
    );
  }
  return open;
}

/** The plant's calendar date at an instant, as midnight UTC of that date. */
function localDate(at: Instant, timeZone: string): Date {
  const local = new Date(at + offsetMs(at, timeZone));
  return new Date(Date.UTC(local.getUTCFullYear(), local.getUTCMonth(), local.getUTCDate()));
}

/** The instant at which the plant's clocks show HH:MM on that date. */
export function instantOf(date: Date, hhmm: string, timeZone: string): Instant {
  const [hours, minutes] = hhmm.split(':').map(Number);
  const shown = date.getTime() + (hours! * 60 + minutes!) * 60_000;
  // The offset depends on the instant sought; a second look settles it on the days when the clocks change.
  const guess = shown - offsetMs(shown, timeZone);
  return shown - offsetMs(guess, timeZone);
}

const formats = new Map<string, Intl.DateTimeFormat>();

function offsetMs(at: Instant, timeZone: string): number {
  let format = formats.get(timeZone);
  if (format === undefined) {
    format = new Intl.DateTimeFormat('en-GB', { timeZone, timeZoneName: 'longOffset' });
    formats.set(timeZone, format);
  }
  const name = format.formatToParts(at).find((part) => part.type === 'timeZoneName')?.value ?? 'GMT';
  const [, sign, hours, minutes] = /GMT([+-])(\d{2}):(\d{2})/.exec(name) ?? [];
  if (sign === undefined) return 0;
  return (sign === '-' ? -1 : 1) * (Number(hours) * 60 + Number(minutes)) * 60_000;
}
