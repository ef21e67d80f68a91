import type { Device } from '../../server/shapes.js';
import type { Strip } from '../../strip/lay-strips.js';
import { instantOf, spanWords, timeWords, withTimes } from '../../time/phrases.js';
import { words } from '../../words/index.js';
import { detailWords, frontWaiting, isOver, isWorking, stepWord } from '../../words/steps.js';

export interface CurrentWork {
  /** `Print on Half-size five-unit`. */
  readonly where: string;
  /** `since 10:31 (11 min)`. */
  readonly since: string;
  /** Who said so. */
  readonly source: string;
  /** More about the work at hand: `paper jam`. */
  readonly detail: string;
  /** Why it waits, when nothing is at work. */
  readonly waits: string;
}

/** Where a job is now, since when and who said so, in words; empty words where there is nothing to say. */
export function currentWork(
  strip: Strip,
  devices: readonly Device[],
  nowMs: number,
  zone?: string,
): CurrentWork {
  const { ticket } = strip;
  const t = words.board;
  const nameOf = (id: string | null): string => devices.find((device) => device.id === id)?.name ?? id ?? '';
  const working = ticket.steps.filter(isWorking);
  const first = working[0];
  if (first !== undefined) {
    const more = working.length > 1 ? `, ${t.moreSteps(working.length - 1)}` : '';
    const since = first.since ?? first.start;
    return {
      where: t.on(stepWord(first), nameOf(first.device)) + more,
      since: since === null ? '' : sinceWords(instantOf(since), nowMs, zone),
      source: words.source[first.source ?? 'assumed']!,
      detail: detailWords(first.statusDetails),
      waits: '',
    };
  }
  if (isOver(ticket.status)) return { where: '', since: '', source: '', detail: '', waits: '' };
  const waiting = frontWaiting(ticket)[0];
  if (waiting === undefined) return { where: '', since: '', source: '', detail: '', waits: '' };
  const gap = strip.gaps.find((one) => one.step.id === waiting.id);
  return {
    where: t.on(stepWord(waiting), nameOf(waiting.device)),
    since: gap === undefined ? '' : sinceWords(gap.fromMs, nowMs, zone),
    source: '',
    detail: '',
    waits: withTimes(waiting.waitsFor ?? '', nowMs, zone),
  };
}

function sinceWords(atMs: number, nowMs: number, zone?: string): string {
  return words.board.since(timeWords(atMs, nowMs, zone), spanWords((nowMs - atMs) / 1000));
}

/** Due time and how it stands to it: `due 16:30, 40 min to spare`, `due 12:30, late by 25 min`. */
export function dueWords(strip: Strip, nowMs: number, zone?: string): string {
  const t = words.board;
  const { dueMs, endMs, lateS, ticket } = strip;
  if (dueMs === null) return t.noDue;
  const over = isOver(ticket.status);
  const due = over ? t.dueDone(timeWords(dueMs, nowMs, zone)) : t.due(timeWords(dueMs, nowMs, zone));
  if (lateS > 0) return `${due}, ${t.late(spanWords(lateS))}`;
  if (endMs === null || over) return due;
  return `${due}, ${t.spare(spanWords((dueMs - endMs) / 1000))}`;
}
