import type { Device } from '#libs/flow';
import { type Message, messageId, type NewMessage, parseXml, readJmf, writeJmf } from '#libs/jdf';
import { type PostOutcome, postXml } from '../../http/post-xml.js';
import { gathered } from '../../packages/byte-source.js';
import type { PartToSend } from '../../packages/package.js';
import { packageKind, readPackage } from '../../packages/read-package.js';
import { writeMultipart } from '../../packages/write-multipart.js';
import type { DriverPorts } from '../device-driver.js';

const JMF_TYPE = 'application/vnd.cip4-jmf+xml';

/** What came of one message: the device's Response, silence, or a verdict on the size or kind of what was sent. */
export type Reply =
  | {
      readonly kind: 'response';
      readonly code: number;
      readonly text: string | undefined;
      readonly message: Message;
    }
  | { readonly kind: 'silent'; readonly reason: string }
  /** HTTP 413 or 415: repeating the same bytes is useless. */
  | { readonly kind: 'unsuitable'; readonly reason: string; readonly status: number };

/** A message without its id, which the conversation gives. */
export type Say = Pick<NewMessage, 'kind' | 'body'>;

/** Sends one Query or Command, alone or as the first part of a package, and reads the Response to it. Never throws. */
export async function say(
  ports: DriverPorts,
  device: Device,
  what: Say,
  enclosed: readonly PartToSend[] = [],
): Promise<Reply> {
  const id = messageId(ports.ids.next());
  const jmf = writeJmf({
    senderId: ports.senderId,
    deviceId: device.id,
    timeStamp: ports.clock.now(),
    agentName: 'Sidelay',
    messages: [{ ...what, id } as NewMessage],
  });
  const send = (body: string | Uint8Array, contentType: string): Promise<PostOutcome> =>
    (ports.post ?? postXml)(device.url ?? '', body, contentType, {
      guard: ports.guard,
      timeoutMs: ports.timeoutMs ?? 10_000,
      maxBytes: ports.maxAnswerBytes ?? 4_000_000,
    });
  if (enclosed.length === 0) return readReply(await send(jmf, JMF_TYPE), id);
  const message = {
    name: 'message.jmf',
    contentId: null,
    mediaType: JMF_TYPE,
    content: Buffer.from(jmf, 'utf8'),
  };
  const pack = writeMultipart({ parts: [message, ...enclosed], encoding: 'base64' }, ports.ids);
  return readReply(await send(await gathered(pack.body), pack.contentType), id);
}

async function readReply(outcome: PostOutcome, id: string): Promise<Reply> {
  if (outcome.kind === 'silent') return outcome;
  // A forbidden address is mended in the settings; until then the device is as good as silent, and its steps wait.
  if (outcome.kind === 'refused') return { kind: 'silent', reason: outcome.problems[0]!.message };
  const message = await responseIn(outcome.body, outcome.contentType, id);
  if (message !== null) {
    return { kind: 'response', code: message.returnCode ?? 0, text: message.notification?.comment, message };
  }
  const { status } = outcome;
  if (status === 413 || status === 415) {
    return { kind: 'unsuitable', status, reason: `it answers with HTTP ${status}` };
  }
  const ok = status >= 200 && status < 300;
  return { kind: 'silent', reason: ok ? 'its answer holds no Response' : `it answers with HTTP ${status}` };
}

/** The Response that answers message `id`; a device that answers one message with one Response may forget the refID. */
async function responseIn(body: Uint8Array, contentType: string, id: string): Promise<Message | null> {
  let bytes = body;
  if (packageKind(body, contentType) !== null) {
    const pack = await readPackage(body, contentType);
    if (!pack.ok) return null;
    bytes = pack.value.parts[0]!.bytes;
  }
  const xml = parseXml(bytes);
  const jmf = xml.ok ? readJmf(xml.value) : xml;
  if (!jmf.ok) return null;
  const responses = jmf.value.messages.filter(({ family }) => family === 'Response');
  const own = responses.find(({ refId }) => refId === id);
  return own ?? (responses.length === 1 && responses[0]!.refId === undefined ? responses[0]! : null);
}
