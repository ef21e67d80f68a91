import type { Problem } from '#libs/kernel';
import { Findings } from '../../codec/index.js';
import type { XmlDocument } from '../../xml/index.js';
import { addresses } from './addresses.js';
import { answers } from './answers.js';
import { counters } from './counters.js';
import { type MessageCheck, sentIn } from './message-check.js';
import { phases } from './phases.js';
import { queues } from './queues.js';
import { returnCodesKnown } from './return-codes.js';
import { statusAgreement } from './status-agreement.js';

/** Every check of messages, in the order in which their findings are told. */
const messageChecks: readonly MessageCheck[] = [
  answers,
  returnCodesKnown,
  addresses,
  queues,
  statusAgreement,
  phases,
  counters,
];

/**
 * What is wrong with the messages of a JMF or XJMF document that no schema can find and that does not keep them from being read:
 * answers without a question, addresses that cannot be used (errors: a receiver could not act), figures and statuses that
 * contradict each other (warnings). `readJmf` tells what does keep them.
 */
export function checkSent(doc: XmlDocument): readonly Problem[] {
  const findings = new Findings(doc, { missing: 'JMF_CONTENT', wrong: 'JMF_PARAMETER' });
  const sent = sentIn(doc);
  for (const check of messageChecks) check.run(sent, findings);
  return findings.problems;
}
