import {
  type Message,
  messageId,
  type NewJmf,
  type NewMessage,
  readJmf,
  writeJmf,
  type XmlDocument,
} from '#libs/jdf';
import { type Code, codes, done, type Result } from '#libs/kernel';
import { type Answer, handlerOf, type Reception, refuseForOthers } from '../on-message/index.js';
import type { EnginePorts } from './ports.js';

type FromReception = Pick<Reception, 'tokenDevice' | 'fetch'>;

/**
 * Serves one JMF document: each message by its handler, in order. Queries, commands and reliable signals are answered
 * with a Response each; for other signals there is nothing to say, and the text is empty. Refused only when the whole is
 * no JMF.
 */
export async function receiveJmf(
  ports: EnginePorts,
  document: XmlDocument,
  from: FromReception,
): Promise<Result<string>> {
  const jmf = readJmf(document);
  if (!jmf.ok) return jmf;
  const { messages, ...envelope } = jmf.value;
  const reception: Reception = { ports, envelope, ...from };
  const responses: NewJmf['messages'][number][] = [];
  for (const message of messages) {
    const answer = await serve(message, reception);
    if (!answer.ok)
      ports.log(codes[answer.code].level, 'a message was refused', {
        type: message.type,
        sender: envelope.senderId,
        code: answer.code,
        text: answer.text,
      });
    if (wantsAnswer(message)) responses.push(response(ports, message, answer));
  }
  if (responses.length === 0) return done('');
  return done(
    writeJmf({
      senderId: ports.deviceId,
      timeStamp: ports.clock.now(),
      agentName: 'Sidelay',
      messages: responses,
    }),
  );
}

/** A Response that refuses the whole document: for what is no JMF at all. */
export function refusalJmf(
  ports: Pick<EnginePorts, 'deviceId' | 'clock' | 'ids'>,
  code: Code,
  text: string,
): string {
  const message = { id: 'unread', family: 'Query', type: 'Notification' } as const;
  return writeJmf({
    senderId: ports.deviceId,
    timeStamp: ports.clock.now(),
    agentName: 'Sidelay',
    messages: [response(ports, message, { ok: false, code, text })],
  });
}

function wantsAnswer(message: Message): boolean {
  if (message.family === 'Signal') return message.channelMode === 'Reliable';
  return message.family === 'Query' || message.family === 'Command' || message.family === 'Registration';
}

async function serve(message: Message, reception: Reception): Promise<Answer> {
  const refused = await refuseForOthers(message, reception);
  if (refused !== null) return refused;
  if (message.kind === 'unread') {
    const first = message.problems.find((problem) => problem.severity === 'error')!;
    return { ok: false, code: first.code, text: `${first.message} (line ${first.line}, ${first.path})` };
  }
  const handle = handlerOf(message.kind);
  if (handle === undefined) {
    return { ok: false, code: 'JMF_TYPE', text: `${message.family} ${message.type} is not served here.` };
  }
  return handle(message, reception);
}

function response(
  ports: Pick<EnginePorts, 'clock' | 'ids'>,
  message: Pick<Message, 'id' | 'type' | 'family'>,
  answer: Answer,
): NewJmf['messages'][number] {
  const returnCode = answer.ok ? 0 : codes[answer.code].jmf || 1;
  const notification =
    answer.text === undefined
      ? undefined
      : {
          class: answer.ok ? 'Information' : 'Error',
          timeStamp: ports.clock.now(),
          comment: answer.text,
          parts: [],
        };
  const head = { id: messageId(ports.ids.next()), refId: message.id, returnCode, notification };
  if (answer.ok && answer.body !== undefined) {
    // The handler's `answer()` has had the body checked against this kind.
    return { ...head, kind: `Response${message.type}`, body: answer.body } as NewMessage;
  }
  return { ...head, kind: 'other', family: 'Response', type: message.type } as NewJmf['messages'][number];
}
