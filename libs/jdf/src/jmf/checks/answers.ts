import type { Findings } from '../../codec/index.js';
import { attributeOf, firstChild, XJDF_NAMESPACE } from '../../xml/index.js';
import type { Family } from '../family.js';
import type { MessageCheck, SentMessage } from './message-check.js';

/**
 * JMF Response refID: an answer names the message that it answers. What that is can be seen only
 * where the document holds it; mostly the other side has sent it.
 */
export const answers: MessageCheck = {
  number: 24,
  name: 'answers',
  run({ messages }, findings) {
    const byId = new Map(messages.map((message) => [message.id, message]));
    for (const message of messages) checkAnswer(message, messages, byId, findings);
  },
};

// A reliable Signal is answered as a request is (JMF Signal ChannelMode).
const ANSWERED: Readonly<Partial<Record<Family, readonly Family[]>>> = {
  Response: ['Query', 'Command', 'Registration', 'Signal'],
  Acknowledge: ['Query', 'Command', 'Registration'],
  Signal: ['Query'],
};

function checkAnswer(
  message: SentMessage,
  all: readonly SentMessage[],
  byId: ReadonlyMap<string | undefined, SentMessage>,
  findings: Findings,
): void {
  const { element, family, type, refId } = message;
  const wanted = ANSWERED[family];
  if (wanted === undefined) return;
  if (refId === undefined) {
    checkNeeded(message, findings);
    return;
  }
  const answered = byId.get(refId);
  if (answered !== undefined) {
    checkFits(message, answered, wanted, findings);
  } else if (all.some((other) => wanted.includes(other.family) && other.type === type)) {
    const hint = 'Name the ID of the message that is answered.';
    const what = `refID="${refId}" names no message here, though one of type ${type} is here.`;
    findings.warning('JMF_CONTENT', element, what, hint);
  }
}

/** Without refID nobody can tell what an answer is to, or which channel a last Signal closes. */
function checkNeeded({ element, family }: SentMessage, findings: Findings): void {
  // The tables ask for that of an Acknowledge.
  if (family === 'Acknowledge') return;
  const last = ['true', '1'].includes(attributeOf(element, 'LastRepeat')?.trim() ?? '');
  if (family === 'Signal' && !last) return;
  const what = family === 'Signal' ? 'A Signal that is the last of its channel' : 'A Response';
  const hint = `Give it the ID of the ${family === 'Signal' ? 'Query that subscribed' : 'message that it answers'}.`;
  // On one HTTP connection it is plain what is answered: samples of the newer generation leave it out.
  const severity = element.uri === XJDF_NAMESPACE ? 'warning' : 'error';
  findings.tell(severity, 'JMF_CONTENT', element, `${what} has no refID.`, hint);
}

function checkFits(
  { element, family, type }: SentMessage,
  answered: SentMessage,
  wanted: readonly Family[],
  findings: Findings,
): void {
  const said = `The ${family} names ${answered.family} "${answered.id}"`;
  if (!wanted.includes(answered.family)) {
    findings.error('JMF_CONTENT', element, `${said}, which asks for none.`, `Name a ${wanted.join(' or ')}.`);
    return;
  }
  // What is subscribed to by Events comes as a Notification.
  if (answered.type !== type && family !== 'Signal') {
    const hint = 'An answer is of the type of what it answers.';
    findings.error('JMF_CONTENT', element, `${said} of type ${answered.type}, but is of type ${type}.`, hint);
  }
  if (family === 'Signal' && firstChild(answered.element, 'Subscription') === undefined) {
    const hint = 'Leave out refID, or put a Subscription into the Query.';
    findings.error('JMF_CONTENT', element, `${said}, which does not subscribe.`, hint);
  }
}
