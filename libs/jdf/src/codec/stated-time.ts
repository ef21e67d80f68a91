import type { Instant } from '#libs/kernel';
import { calendarDay, daysSince1970 } from './calendar.js';
import { collapse } from './lexical.js';
import type { ValueType } from './value-type.js';

/** A date, a time of day or both as stated, with or without a zone. */
export interface StatedTime {
  /**
   * Milliseconds since 1970 UTC (of a time of day: since midnight UTC), read as UTC where no zone is stated; finer
   * fractions are cut off. INF and -INF are Infinity and its negative.
   */
  readonly at: Instant;
  /** Minutes that the clock was ahead of UTC; undefined where no zone is stated. */
  readonly offsetMin: number | undefined;
}

const MONTH = String.raw`(?<year>-?(?:[1-9]\d{4,}|\d{4}))-(?<month>\d\d)`;
const DATE = String.raw`${MONTH}-(?<day>\d\d)`;
const CLOCK = String.raw`(?<hour>\d\d):(?<minute>\d\d):(?<second>\d\d)(?<fraction>\.\d+)?`;
const ZONE = String.raw`(?<zone>Z|[+-]\d\d:\d\d)?`;
const MINUTE_MS = 60_000;
const DAY_MS = 24 * 60 * MINUTE_MS;

type Parts = Readonly<Record<string, string | undefined>>;

/** Source of the forms and limits: XML Schema part 2, sections 3.2.7 to 3.2.10. */
function kindOfTime(
  pattern: string,
  expects: string,
  shown: (date: string, clock: string) => string,
): ValueType<StatedTime> {
  const form = new RegExp(`^${pattern}${ZONE}$`);
  return {
    expects,
    read(text) {
      const parts: Parts | undefined = form.exec(collapse(text))?.groups;
      if (parts === undefined) return undefined;
      const days = daysOf(parts);
      const clock = clockMs(parts);
      const offsetMin = zoneMinutes(parts.zone);
      if (days === undefined || clock === undefined || offsetMin === null) return undefined;
      return { at: days * DAY_MS + clock - (offsetMin ?? 0) * MINUTE_MS, offsetMin };
    },
    write({ at, offsetMin }) {
      const local = at + (offsetMin ?? 0) * MINUTE_MS;
      const days = Math.floor(local / DAY_MS);
      return shown(dateText(days), clockText(local - days * DAY_MS)) + zoneText(offsetMin);
    },
  };
}

/** Days since 1970, 0 where there is only a time of day; undefined for a day that does not exist. */
function daysOf({ year, month, day = '01' }: Parts): number | undefined {
  if (year === undefined) return 0;
  return daysSince1970({ year: Number(year), month: Number(month), day: Number(day) });
}

/** Milliseconds since midnight, 0 where there is only a date; undefined for what no clock shows. */
function clockMs({ year, hour, minute, second, fraction = '' }: Parts): number | undefined {
  if (hour === undefined) return 0;
  const [h, m, s] = [Number(hour), Number(minute), Number(second)];
  const part = Number(`0${fraction}`);
  const endOfDay = h === 24 && m === 0 && s === 0 && part === 0;
  // Without a day there is only one midnight.
  if (endOfDay && year === undefined) return 0;
  if ((h > 23 && !endOfDay) || m > 59 || s > 59) return undefined;
  return ((h * 60 + m) * 60 + s) * 1000 + Math.floor(part * 1000 + 1e-6);
}

/** Undefined without a zone, null for one that is nowhere. */
function zoneMinutes(zone: string | undefined): number | undefined | null {
  if (zone === undefined) return undefined;
  if (zone === 'Z') return 0;
  const minutes = Number(zone.slice(4, 6));
  const total = Number(zone.slice(1, 3)) * 60 + minutes;
  if (total > 14 * 60 || minutes > 59) return null;
  return zone.startsWith('-') ? -total : total;
}

const padded = (value: number, width = 2): string => String(value).padStart(width, '0');

function dateText(days: number): string {
  const { year, month, day } = calendarDay(days);
  return `${year < 0 ? '-' : ''}${padded(Math.abs(year), 4)}-${padded(month)}-${padded(day)}`;
}

function clockText(ms: number): string {
  const fraction = ms % 1000 === 0 ? '' : `.${padded(ms % 1000, 3).replace(/0+$/, '')}`;
  const seconds = Math.floor(ms / 1000);
  const [h, m, s] = [Math.floor(seconds / 3600), Math.floor(seconds / 60) % 60, seconds % 60];
  return `${padded(h)}:${padded(m)}:${padded(s)}${fraction}`;
}

function zoneText(offsetMin: number | undefined): string {
  if (offsetMin === undefined) return '';
  if (offsetMin === 0) return 'Z';
  const size = Math.abs(offsetMin);
  return `${offsetMin < 0 ? '-' : '+'}${padded(Math.floor(size / 60))}:${padded(size % 60)}`;
}

/** xs:dateTime. */
export const plainDateTime = kindOfTime(
  `${DATE}T${CLOCK}`,
  'a date and time such as 2024-08-09T11:35:41+02:00',
  (date, clock) => `${date}T${clock}`,
);
export const date = kindOfTime(DATE, 'a date such as 2024-08-09', (day) => day);
export const yearMonth = kindOfTime(MONTH, 'a year and month such as 2024-08', (day) => day.slice(0, -3));
export const clockTime = kindOfTime(CLOCK, 'a time of day such as 11:35:41+02:00', (_, clock) => clock);

/** The standard's dateTime: also INF and -INF, for never and always. */
export const dateTime: ValueType<StatedTime> = {
  expects: `${plainDateTime.expects}, INF or -INF`,
  read(text) {
    const value = collapse(text);
    if (value !== 'INF' && value !== '-INF') return plainDateTime.read(value);
    return {
      at: value === 'INF' ? Number.POSITIVE_INFINITY : Number.NEGATIVE_INFINITY,
      offsetMin: undefined,
    };
  },
  write: (value) => (Number.isFinite(value.at) ? plainDateTime.write(value) : value.at > 0 ? 'INF' : '-INF'),
};

/**
 * A date and time with a zone, as the standard's text asks, to milliseconds since 1970 UTC; finer fractions are cut off.
 * Undefined for anything else, also without a zone: a time that may be any of 24 hours is worse than none.
 */
export function parseDateTime(text: string): Instant | undefined {
  const value = plainDateTime.read(text);
  return value?.offsetMin === undefined ? undefined : value.at;
}
