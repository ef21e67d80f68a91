import type { Instant } from '#libs/kernel';

const DATE_TIME = /^(\d{4})-(\d\d)-(\d\d)T(\d\d):(\d\d):(\d\d)(\.\d+)?(?:(Z)|([+-])(\d\d):(\d\d))$/;

/**
 * xs:dateTime with a zone, as the standard asks, to milliseconds since 1970 UTC; finer fractions are cut off. Undefined
 * for anything else, also without a zone: a time that may be any of 24 hours is worse than none. Source: XML Schema
 * part 2, section 3.2.7.
 */
export function parseDateTime(text: string): Instant | undefined {
  const match = DATE_TIME.exec(text.trim());
  if (match === null) return undefined;
  const [year, month, day, hour, minute, second] = match.slice(1, 7).map(Number) as [
    number,
    number,
    number,
    number,
    number,
    number,
  ];
  const date = new Date(Date.UTC(year, month - 1, day));
  date.setUTCFullYear(year);
  // A date that does not exist rolls over into the next month.
  if (date.getUTCMonth() !== month - 1 || date.getUTCDate() !== day) return undefined;
  const endOfDay = hour === 24 && minute === 0 && second === 0;
  if ((hour > 23 && !endOfDay) || minute > 59 || second > 59) return undefined;
  const zoneHour = Number(match[10] ?? 0);
  const zoneMinute = Number(match[11] ?? 0);
  if (zoneHour * 60 + zoneMinute > 14 * 60 || zoneMinute > 59) return undefined;
  const millisecond = Math.floor(Number(`0${match[7] ?? ''}`) * 1000 + 1e-6);
  const offsetMinutes = (match[9] === '-' ? -1 : 1) * (zoneHour * 60 + zoneMinute);
  return date.getTime() + ((hour * 60 + minute - offsetMinutes) * 60 + second) * 1000 + millisecond;
}

const DURATION = /^(-)?P(?:(\d+)Y)?(?:(\d+)M)?(?:(\d+)D)?(?:T(?:(\d+)H)?(?:(\d+)M)?(?:(\d+(?:\.\d+)?)S)?)?$/;

/**
 * xs:duration to seconds. Undefined for anything else, and for years or months, which have no fixed length. Source: XML
 * Schema part 2, section 3.2.6.
 */
export function parseDuration(text: string): number | undefined {
  const trimmed = text.trim();
  const match = DURATION.exec(trimmed);
  if (match === null || trimmed.endsWith('P') || trimmed.endsWith('T')) return undefined;
  const [years = 0, months = 0, days = 0, hours = 0, minutes = 0, seconds = 0] = match
    .slice(2)
    .map((part) => Number(part ?? 0));
  if (years > 0 || months > 0) return undefined;
  const total = ((days * 24 + hours) * 60 + minutes) * 60 + seconds;
  return match[1] === '-' && total > 0 ? -total : total;
}

/** Seconds as xs:duration, to the millisecond: P1DT2H, PT3M4.5S, PT0S. */
export function formatDuration(seconds: number): string {
  const totalMs = Math.round(Math.abs(seconds) * 1000);
  const days = Math.floor(totalMs / 86_400_000);
  const hours = Math.floor(totalMs / 3_600_000) % 24;
  const minutes = Math.floor(totalMs / 60_000) % 60;
  const rest = (totalMs % 60_000) / 1000;
  const time = `${hours ? `${hours}H` : ''}${minutes ? `${minutes}M` : ''}${rest ? `${rest}S` : ''}`;
  if (days === 0 && time === '') return 'PT0S';
  return `${seconds < 0 ? '-' : ''}P${days ? `${days}D` : ''}${time ? `T${time}` : ''}`;
}
