import { type Jmf, type NewMessage, readJmf, writeJmf } from '#libs/jdf';
import { parsedXml, valueIn } from '../kit/value-in.js';
import { everyMessage } from './every-message.js';
import { samples, textOfSample } from './samples.js';
import { schemaFaults } from './xmllint.js';

const messages = samples().filter(({ root }) => root === 'JMF');

function read(text: string): Jmf {
  return valueIn(readJmf(parsedXml(text)));
}

describe('messages that we write', () => {
  it('are valid against the official schema', () => {
    const documents = everyMessage.map((message): [string, string] => [
      `${message.kind}-${message.id}.jmf`,
      writeJmf({ senderId: 'sidelay', deviceId: 'press', timeStamp: 0, messages: [message] }),
    ]);
    const others = writeJmf({
      senderId: 'sidelay',
      timeStamp: 0,
      messages: [{ kind: 'other', family: 'Response', type: 'Juggle', id: 'r1', refId: 'x', returnCode: 5 }],
    });
    expect(schemaFaults({ ...Object.fromEntries(documents), 'other.jmf': others })).toEqual({});
  });
});

describe('messages of the official samples', () => {
  // Types of foreign namespaces: kept, answered with 5.
  const unknown = messages.flatMap((sample) =>
    read(textOfSample(sample)).messages.flatMap((m) =>
      m.kind === 'unread' ? [`${sample.path} ${m.problems[0]?.code} ${m.family}${m.type}`] : [],
    ),
  );

  it('are all read but for the types that are not served', () => {
    expect(unknown).toEqual([
      'jdf/samples/jmf/customQuery.jmf JMF_TYPE QueryCircus:IsClownHappy',
      'jdf/samples/jmf/customResponse.jmf JMF_TYPE ResponseCircus:IsClownHappy',
      'jdf/samples/jmf/customResponseForIfraTrack.jmf JMF_TYPE ResponseIFRA:IMF',
    ]);
  });

  it('are valid against the schema when written anew, as far as their types are known', () => {
    const documents = messages.flatMap((sample): [string, string][] => {
      const jmf = read(textOfSample(sample));
      const known = jmf.messages.filter((message) => message.kind !== 'unread');
      if (known.length === 0 || !sample.valid) return [];
      return [
        [sample.path.replaceAll('/', '-'), writeJmf({ ...jmf, messages: known as readonly NewMessage[] })],
      ];
    });
    expect(documents.length).toBeGreaterThan(10);
    expect(schemaFaults(Object.fromEntries(documents))).toEqual({});
  });
});
