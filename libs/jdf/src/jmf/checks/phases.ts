import { type Findings, parseDateTime } from '../../codec/index.js';
import { attributeOf, XJDF_NAMESPACE, type XmlElement } from '../../xml/index.js';
import { type MessageCheck, numberOf, within } from './message-check.js';

/** JMF JobPhase: the figures and times of a phase of a job are possible. */
export const phases: MessageCheck = {
  number: 25,
  name: 'phases',
  run({ messages }, findings) {
    for (const message of messages) {
      for (const entry of within(message, 'QueueEntry')) checkOrder(entry, 'StartTime', 'EndTime', findings);
      for (const phase of within(message, 'JobPhase')) {
        checkFigures(phase, findings);
        checkOrder(phase, 'StartTime', 'EndTime', findings);
        checkOrder(phase, 'StartTime', 'PhaseStartTime', findings);
      }
    }
  },
};

const COUNTED = ['Amount', 'Waste', 'TotalAmount', 'PhaseAmount', 'PhaseWaste'];

function checkFigures(phase: XmlElement, findings: Findings): void {
  const percent = numberOf(phase, 'PercentCompleted') ?? 0;
  // The tables of the newer generation have that range.
  if (phase.uri !== XJDF_NAMESPACE && (percent < 0 || percent > 100)) {
    const what = `PercentCompleted is ${percent}.`;
    findings.warning('JMF_PARAMETER', phase, what, 'It goes from 0 to 100.');
  }
  for (const name of COUNTED) {
    const count = numberOf(phase, name) ?? 0;
    if (count < 0) findings.warning('JMF_PARAMETER', phase, `${name} is ${count}.`, 'It is never below 0.');
  }
}

function checkOrder(el: XmlElement, earlier: string, later: string, findings: Findings): void {
  const first = parseDateTime(attributeOf(el, earlier) ?? '');
  const then = parseDateTime(attributeOf(el, later) ?? '');
  if (first === undefined || then === undefined || then >= first) return;
  const what = `${later} of ${el.name} is before its ${earlier}.`;
  findings.warning('JMF_PARAMETER', el, what, `Correct ${earlier} or ${later}.`);
}
