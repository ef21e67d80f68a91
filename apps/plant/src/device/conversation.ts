import {
  type Message,
  messageId,
  type NewJmf,
  parseXml,
  readJmf,
  returnCodeOf,
  standardMessages,
  writeJmf,
} from '#libs/jdf';
import type { Problem } from '#libs/kernel';
import { isMultipart, type Part, readMultipart } from '../package/multipart.js';
import { handlerOf } from './answers.js';
import type { Answer, Desk } from './desk.js';
import { signals } from './queries.js';

const UNKNOWN_DEVICE = 121;
const NOT_IMPLEMENTED = 5;
const XML_FAULTY = 3;

type NewMessages = NewJmf['messages'];

/**
 * Answers a JMF document, alone or as the first part of a package: one Response for each Query and Command, in order; an
 * empty text when there is nothing to answer. Negative answers carry the standard's ReturnCode and words.
 */
export async function converse(desk: Desk, body: Uint8Array | string, contentType: string): Promise<string> {
  const parts = partsOf(body, contentType);
  const root = parts?.[0];
  if (parts === null || root === undefined)
    return faulty(desk, XML_FAULTY, 'The package cannot be unpacked.');
  const doc = parseXml(root.bytes);
  if (!doc.ok) return faulty(desk, XML_FAULTY, words(doc.problems));
  const jmf = readJmf(doc.value);
  if (!jmf.ok) return faulty(desk, returnCodeOf(jmf.problems), words(jmf.problems));
  const forOther = jmf.value.deviceId !== undefined && jmf.value.deviceId !== desk.id;
  const answers: NewMessages[number][] = [];
  for (const message of jmf.value.messages) {
    if (message.family !== 'Query' && message.family !== 'Command') continue;
    const answer = forOther
      ? { code: UNKNOWN_DEVICE, text: `Here is ${desk.id}, not ${jmf.value.deviceId}.` }
      : await answerTo(desk, message, parts.slice(1));
    answers.push(response(desk, message, answer));
  }
  return answers.length === 0 ? '' : write(desk, answers);
}

function partsOf(body: Uint8Array | string, contentType: string): readonly Part[] | null {
  const bytes = typeof body === 'string' ? Buffer.from(body, 'utf8') : body;
  return isMultipart(contentType)
    ? readMultipart(bytes, contentType)
    : [{ contentType, contentId: null, bytes }];
}

async function answerTo(desk: Desk, message: Message, parts: readonly Part[]): Promise<Answer> {
  if (message.kind === 'unread')
    return { code: returnCodeOf(message.problems), text: words(message.problems) };
  const handle = handlerOf(message.kind);
  if (handle === undefined) {
    return { code: NOT_IMPLEMENTED, text: `${message.family} ${message.type} is not for a device.` };
  }
  const answer = await handle(desk, { message, parts });
  return message.family === 'Query' && answer.code === 0
    ? { ...answer, subscribed: subscribe(desk, message) }
    : answer;
}

/** A query with a Subscription opens a channel named by its ID (JDF specification, persistent channels). */
function subscribe({ state }: Desk, message: Message): boolean | undefined {
  const url = message.subscription?.url;
  if (url === undefined || !signals.includes(message.type)) return undefined;
  const rest = state.channels.filter((channel) => channel.url !== url || channel.type !== message.type);
  state.channels = [...rest, { id: message.id, type: message.type, url }];
  return true;
}

function response(desk: Desk, message: Message, answer: Answer): NewMessages[number] {
  const at = desk.now();
  const head = {
    id: messageId(desk.ids.next()),
    refId: message.id === '' ? undefined : message.id,
    time: at,
    returnCode: answer.code,
    subscribed: answer.subscribed,
    notification:
      answer.code === 0
        ? undefined
        : { class: 'Error' as const, timeStamp: at, type: 'Error', comment: answer.text },
  };
  const kind = `Response${message.type}`;
  if (!Object.hasOwn(standardMessages, kind)) {
    return { ...head, kind: 'other', family: 'Response', type: message.type || 'Unknown' };
  }
  // The handler of a message makes the body of its response.
  return { ...head, kind, body: answer.body ?? {} } as unknown as NewMessages[number];
}

/** The answer to what could not be read as far as its messages. */
function faulty(desk: Desk, code: number, text: string): string {
  const at = desk.now();
  const notification = { class: 'Error' as const, timeStamp: at, type: 'Error', comment: text };
  const id = messageId(desk.ids.next());
  return write(desk, [
    { kind: 'other', family: 'Response', type: 'Unknown', id, time: at, returnCode: code, notification },
  ]);
}

function write(desk: Desk, messages: NewMessages): string {
  const agentName = 'Sidelay simulated device';
  return writeJmf({ senderId: desk.id, timeStamp: desk.now(), agentName, messages });
}

function words(problems: readonly Problem[]): string {
  return problems
    .map(({ line, message }) => (line === null ? message : `Line ${line}: ${message}`))
    .join(' ');
}
