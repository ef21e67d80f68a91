import { type Findings, parseDateTime } from '../../codec/index.js';
import { attributeOf, childElements, type XmlElement } from '../../xml/index.js';
import { type MessageCheck, numberOf, type SentMessage, within } from './message-check.js';

/**
 * JMF JobPhase Amount, Waste: what was made of a job since one StartTime never becomes less, from one message
 * of the document to the next.
 */
export const counters: MessageCheck = {
  number: 25,
  name: 'counters',
  run({ messages }, findings) {
    for (const [start, ...names] of COUNTED_SINCE) {
      const reached = new Map<string, number>();
      for (const [device, phase] of inTime(messages).flatMap(phasesOf)) {
        const began = parseDateTime(attributeOf(phase, start) ?? '');
        if (began === undefined) continue;
        for (const name of names) {
          checkCounter(phase, name, `${name} ${began} ${jobOf(device, phase)}`, reached, findings);
        }
      }
    }
  },
};

const COUNTED_SINCE = [
  ['StartTime', 'Amount', 'Waste'],
  ['PhaseStartTime', 'PhaseAmount', 'PhaseWaste'],
] as const;

/** By the time of the messages; one that states none goes with the one before it. */
function inTime(messages: readonly SentMessage[]): SentMessage[] {
  let latest = Number.NEGATIVE_INFINITY;
  const timed = messages.map((message) => {
    latest = parseDateTime(message.time ?? '') ?? latest;
    return { message, at: latest };
  });
  return timed.sort((a, b) => (a.at === b.at ? 0 : a.at - b.at)).map(({ message }) => message);
}

function phasesOf(message: SentMessage): [XmlElement, XmlElement][] {
  return ['DeviceInfo', 'QueueEntry'].flatMap((name) =>
    within(message, name).flatMap((owner) =>
      childElements(owner, 'JobPhase').map((phase): [XmlElement, XmlElement] => [owner, phase]),
    ),
  );
}

const KEYS = ['JobID', 'JobPartID', 'QueueEntryID', 'WorkStepID'];

/** What is counted: the same job and part of it on the same device. */
function jobOf(owner: XmlElement, phase: XmlElement): string {
  const parts = childElements(phase, 'Part').map(({ attributes }) =>
    attributes.map(({ local, value }) => [local, value]).sort(([a], [b]) => (String(a) < String(b) ? -1 : 1)),
  );
  const ids = KEYS.map((name) => attributeOf(phase, name) ?? '');
  return JSON.stringify([owner.local, attributeOf(owner, 'DeviceID') ?? '', ids, parts]);
}

function checkCounter(
  phase: XmlElement,
  name: string,
  counter: string,
  reached: Map<string, number>,
  findings: Findings,
): void {
  const count = numberOf(phase, name);
  if (count === undefined) return;
  const before = reached.get(counter) ?? count;
  if (count < before) {
    const hint = 'Count on, or begin a new StartTime or PhaseStartTime.';
    findings.warning('JMF_PARAMETER', phase, `${name} is ${count} after ${before}.`, hint);
  }
  reached.set(counter, Math.max(before, count));
}
