import type { Sentence } from '../../server/shapes.js';
import { dayWords, instantOf, secondWords } from '../../time/phrases.js';

export interface StoryDay {
  readonly day: string;
  readonly sentences: readonly (Sentence & { readonly clock: string })[];
}

/** Sentences in the order in which things happened; what is told of one moment, in the order of the log. */
export function inOrderOfTime(told: readonly Sentence[]): Sentence[] {
  return told.toSorted((a, b) => instantOf(a.time) - instantOf(b.time) || Number(a.id) - Number(b.id));
}

/**
 * The story by days. A run tells its count every few seconds: unless all are wanted, only the last count before another
 * thing happens to the step is told, moves of stock are left to the table of consumption, and what a device says of itself
 * to what its step says.
 */
export function storyDays(told: readonly Sentence[], all: boolean, zone?: string): StoryDay[] {
  const days: { day: string; sentences: (Sentence & { clock: string })[] }[] = [];
  for (const [at, sentence] of told.entries()) {
    if (!all && !isTold(told, at)) continue;
    const ms = instantOf(sentence.time);
    const day = dayWords(ms, zone);
    if (days.at(-1)?.day !== day) days.push({ day, sentences: [] });
    days.at(-1)!.sentences.push({ ...sentence, clock: secondWords(ms, zone) });
  }
  return days;
}

const LEFT_OUT = new Set(['stock.moved', 'device.statusChanged']);

function isTold(told: readonly Sentence[], at: number): boolean {
  const { type, step } = told[at]!;
  if (LEFT_OUT.has(type)) return false;
  if (type !== 'step.counted') return true;
  const next = told.slice(at + 1).find((later) => later.step === step && !LEFT_OUT.has(later.type));
  return next?.type !== 'step.counted';
}
