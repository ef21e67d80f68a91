import { collapse } from './lexical.js';
import type { ValueType } from './value-type.js';

/** A length of time. Months have no fixed length, so they are kept apart; both have the same sign. */
export interface Duration {
  readonly months: number;
  /** Infinity where there is no limit (INF). */
  readonly seconds: number;
}

const DURATION = /^(-)?P(?:(\d+)Y)?(?:(\d+)M)?(?:(\d+)D)?(?:T(?:(\d+)H)?(?:(\d+)M)?(?:(\d+(?:\.\d+)?)S)?)?$/;

/** xs:duration. Undefined for anything else. Source: XML Schema part 2, section 3.2.6. */
function read(text: string): Duration | undefined {
  const value = collapse(text);
  const match = DURATION.exec(value);
  if (match === null || value.endsWith('P') || value.endsWith('T')) return undefined;
  const [years = 0, months = 0, days = 0, hours = 0, minutes = 0, seconds = 0] = match
    .slice(2)
    .map((part) => Number(part ?? 0));
  const sign = match[1] === '-' ? -1 : 1;
  const total = ((days * 24 + hours) * 60 + minutes) * 60 + seconds;
  // Adding 0 makes a negative nothing a plain one.
  return { months: sign * (years * 12 + months) + 0, seconds: sign * total + 0 };
}

function write({ months, seconds }: Duration): string {
  if (seconds === Number.POSITIVE_INFINITY) return 'INF';
  if (months === 0) return formatDuration(seconds);
  const years = Math.floor(Math.abs(months) / 12);
  const rest = Math.abs(months) % 12;
  const time = seconds === 0 ? '' : formatDuration(Math.abs(seconds)).slice(1);
  return `${months < 0 ? '-' : ''}P${years ? `${years}Y` : ''}${rest ? `${rest}M` : ''}${time}`;
}

const expects = 'a duration such as P1DT12H or PT1H30M';

/** xs:duration, as XJDF has it. */
export const plainDuration: ValueType<Duration> = { expects, read, write };

/** The standard's duration: also INF. */
export const durationOrInfinity: ValueType<Duration> = {
  expects: `${expects}, or INF`,
  read: (text) => (collapse(text) === 'INF' ? { months: 0, seconds: Number.POSITIVE_INFINITY } : read(text)),
  write,
};

/** xs:duration to seconds. Undefined for anything else, and for years or months, which have no fixed length. */
export function parseDuration(text: string): number | undefined {
  const value = read(text);
  return value?.months === 0 ? value.seconds : undefined;
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
