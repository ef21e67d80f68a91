import { done, error, type Result, refuse as refused } from '#libs/kernel';
import type { Behaviour, Disturbance } from './behaviour.js';
import { breakdown } from './breakdown.behaviour.js';
import { forget } from './forget.behaviour.js';
import { jam } from './jam.behaviour.js';
import { refuse } from './refuse.behaviour.js';
import { resend } from './resend.behaviour.js';
import { shortRun } from './short-run.behaviour.js';
import { silent } from './silent.behaviour.js';
import { slow } from './slow.behaviour.js';

export type { Behaviour, Disturbance, Stop } from './behaviour.js';

/** One line a fault. */
export const behaviours: readonly Behaviour[] = [
  breakdown,
  forget,
  jam,
  refuse,
  resend,
  shortRun,
  silent,
  slow,
];

/**
 * Faults from their text form NAME or NAME@N, N from 1 (1 where left out). Of two that say the same thing the later one
 * counts. Refusal: JMF_PARAMETER with the names there are.
 */
export function readFaults(texts: readonly string[]): Result<Disturbance> {
  let all: Disturbance = {};
  for (const text of texts) {
    const [, name, number = '1'] = /^([A-Za-z]+)(?:@([1-9]\d*))?$/.exec(text) ?? [];
    const behaviour = behaviours.find((one) => one.name === name);
    if (behaviour === undefined) {
      const names = behaviours.map((one) => one.name).join(', ');
      return refused(
        error('JMF_PARAMETER', `There is no fault "${text}".`, { hint: `NAME or NAME@N: ${names}.` }),
      );
    }
    all = { ...all, ...behaviour.make(Number(number)) };
  }
  return done(all);
}
