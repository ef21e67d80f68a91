/** Times and spans in words. Instants are milliseconds since 1970 UTC; `zone` is the reader's own when left out. */
import { words } from '../words/index.js';

const DAY_MS = 86_400_000;

const formats = new Map<string, Intl.DateTimeFormat>();

function format(at: number, options: Intl.DateTimeFormatOptions, zone: string | undefined): string {
  const key = JSON.stringify([options, zone]);
  let made = formats.get(key);
  if (made === undefined) {
    made = new Intl.DateTimeFormat(words.locale, { ...options, timeZone: zone, hourCycle: 'h23' });
    formats.set(key, made);
  }
  return made.format(at);
}

export const instantOf = (iso: string): number => Date.parse(iso);

/** `10:42`. */
export const hourWords = (at: number, zone?: string): string =>
  format(at, { hour: '2-digit', minute: '2-digit' }, zone);

/** `10:42:07`. */
export const secondWords = (at: number, zone?: string): string =>
  format(at, { hour: '2-digit', minute: '2-digit', second: '2-digit' }, zone);

/** `Thu 12 Mar`. */
export const dayWords = (at: number, zone?: string): string =>
  format(at, { weekday: 'short', day: 'numeric', month: 'short' }, zone).replace(',', '');

/** The shortest that is not mistaken: `10:42` today, `Thu 10:42` within six days, else `12 Mar 10:42`. */
export function timeWords(at: number, now: number, zone?: string): string {
  const hour = hourWords(at, zone);
  if (dayWords(at, zone) === dayWords(now, zone)) return hour;
  if (Math.abs(at - now) < 6 * DAY_MS) return `${format(at, { weekday: 'short' }, zone)} ${hour}`;
  return `${format(at, { day: 'numeric', month: 'short' }, zone)} ${hour}`;
}

const INSTANT = /\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(?:\.\d+)?Z/g;

/** A sentence of the server, its instants as the reader's clock shows them: `dries until Tue 05:58`. */
export function withTimes(text: string, now: number, zone?: string): string {
  return text.replace(INSTANT, (iso) => timeWords(instantOf(iso), now, zone));
}

/** A span in its two largest units: `40 s`, `12 min`, `2 h 05 min`, `3 d 4 h`. */
export function spanWords(seconds: number): string {
  const s = Math.max(0, Math.round(seconds));
  if (s < 60) return words.span.seconds(s);
  const minutes = Math.round(s / 60);
  if (minutes < 60) return words.span.minutes(minutes);
  const hours = Math.floor(minutes / 60);
  if (hours < 24) return words.span.hours(hours, minutes % 60);
  return words.span.days(Math.floor(hours / 24), hours % 24);
}

/** How long ago, in words; what lies less than five seconds back is `just now`. */
export function agoWords(at: number, now: number): string {
  const seconds = (now - at) / 1000;
  return seconds < 5 ? words.span.justNow : words.span.ago(spanWords(seconds));
}
