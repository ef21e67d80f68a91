import { codes } from '#libs/kernel';
import { parsedXml, valueIn } from '../../../../test/kit/value-in.js';
import { everyMessage } from '../../../../test/standards/every-message.js';
import type { QueueFilter } from '../elements/index.js';
import { parseXml } from '../xml/index.js';
import {
  entryFilter,
  type Jmf,
  type Message,
  meaningOf,
  messageId,
  type NewMessage,
  readJmf,
  returnCodeOf,
  returnCodes,
  writeJmf,
} from './index.js';

function read(text: string): Jmf {
  const doc = parsedXml(text);
  return valueIn(readJmf(doc));
}

const around = (messages: string, attributes = '') =>
  read(`<JMF xmlns="http://www.CIP4.org/JDFSchema_1_1" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance"
 SenderID="Press 45" TimeStamp="2024-07-25T12:28:01+02:00" Version="1.9"${attributes}>
${messages}
</JMF>`);

const at = Date.UTC(2024, 6, 25, 10, 0, 0);

describe('writing and reading messages', () => {
  it('reads back every kind of message as it was written', () => {
    const envelope = { senderId: 'sidelay', deviceId: 'press', timeStamp: at, agentName: 'Sidelay' };
    const jmf = read(writeJmf({ ...envelope, messages: everyMessage }));
    expect(jmf).toMatchObject({ ...envelope, version: '1.9' });
    expect(jmf.messages.map(({ kind, body }) => ({ kind, body }))).toEqual(
      everyMessage.map(({ kind, body }) => ({ kind, body })),
    );
    expect(jmf.messages).toMatchObject(everyMessage);
  });

  it('names the schema type of every message it knows and none of the others', () => {
    const text = writeJmf({
      senderId: 'sidelay',
      timeStamp: at,
      messages: [
        everyMessage[0]!,
        { kind: 'other', family: 'Response', type: 'Juggle', id: 'r1', refId: 'x', returnCode: 5 },
      ],
    });
    expect(text).toContain('Type="SubmitQueueEntry" xsi:type="CommandSubmitQueueEntry"');
    expect(text).toContain('<Response ID="r1" refID="x" ReturnCode="5" Type="Juggle"/>');
  });

  it('makes IDs that XML allows of identifiers that begin with a digit', () => {
    expect(messageId('01890a5d-ac96')).toBe('m-01890a5d-ac96');
    const digit = { ...everyMessage[3]!, id: '01890a5d' } as NewMessage;
    expect(() => writeJmf({ senderId: 's', timeStamp: at, messages: [digit] })).toThrow('cannot be the ID');
  });
});

describe('reading what others send', () => {
  // Both forms are in the official schema: QueueEntryDef until 1.4, a QueueFilter in the command's parameters since 1.5.
  it.each([
    ['until 1.4', '<QueueEntryDef QueueEntryID="q7"/>'],
    [
      'since 1.5',
      '<HoldQueueEntryParams><QueueFilter><QueueEntryDef QueueEntryID="q7"/></QueueFilter></HoldQueueEntryParams>',
    ],
  ])('takes the form of queue-entry commands %s', (_form, inner) => {
    const [message] = around(`<Command ID="c1" Type="HoldQueueEntry">${inner}</Command>`).messages;
    expect(message).toMatchObject({ kind: 'CommandHoldQueueEntry', body: { filter: entryFilter('q7') } });
  });

  it('aborts as Aborted where the older form cannot say how to end', () => {
    const [message] = around(
      '<Command ID="c1" Type="AbortQueueEntry"><QueueEntryDef QueueEntryID="q7"/></Command>',
    ).messages;
    expect(message?.body).toEqual({ filter: entryFilter('q7'), endStatus: 'Aborted' });
  });

  it('reads an Acknowledge as a kind of its own', () => {
    const [message] = around('<Acknowledge ID="a1" Type="HoldQueueEntry" refID="c1"/>').messages;
    expect(message).toMatchObject({
      family: 'Acknowledge',
      kind: 'AcknowledgeHoldQueueEntry',
      refId: 'c1',
      body: {},
    });
  });

  it('reads a document that uses a prefix', () => {
    const doc = parseXml(
      '<j:JMF xmlns:j="http://www.CIP4.org/JDFSchema_1_1" SenderID="d" TimeStamp="2024-07-25T12:28:01Z" Version="1.3">' +
        '<j:Signal ID="s1" Type="Status"><j:DeviceInfo DeviceStatus="Idle"/></j:Signal></j:JMF>',
    );
    const jmf = doc.ok ? readJmf(doc.value) : doc;
    expect(jmf).toMatchObject({
      ok: true,
      value: { messages: [{ body: { devices: [{ deviceStatus: 'Idle' }] } }] },
    });
  });
});

describe('content that the standard does not know', () => {
  it('is kept and warned of, and does not keep the rest from being read', () => {
    const [message] = around(
      '<Query ID="a" Type="Track"><TrackFilter JobID="j" Colour="red"><Weather/></TrackFilter></Query>',
    ).messages;
    expect(message).toMatchObject({ kind: 'QueryTrack', body: { jobId: 'j' } });
    expect(message!.problems.map(({ severity, code, path }) => [severity, code, path])).toEqual([
      ['warning', 'JMF_CONTENT', '/JMF/Query/TrackFilter'],
      ['warning', 'JMF_CONTENT', '/JMF/Query/TrackFilter/Weather'],
    ]);
  });

  it('is not judged in a namespace of its own', () => {
    const [message] = around(
      '<Query ID="a" Type="Track"><TrackFilter xmlns:x="urn:example" x:Colour="red"><x:Weather/></TrackFilter></Query>',
    ).messages;
    expect(message!.problems).toEqual([]);
  });
});

describe('the form until 1.4', () => {
  const hold = (filter: QueueFilter, version: string) => {
    const message = { kind: 'CommandHoldQueueEntry', id: 'c1', body: { filter } } as const;
    return writeJmf({ senderId: 's', timeStamp: at, version, messages: [message] });
  };

  it('is written for a receiver of that time, where it can say what is meant', () => {
    expect(hold(entryFilter('q7'), '1.4')).toContain('<QueueEntryDef QueueEntryID="q7"/>\n  </Command>');
    expect(hold(entryFilter('q7'), '1.5')).toContain('<HoldQueueEntryParams>');
    expect(hold({ statusList: ['Held'] }, '1.4')).toContain('<HoldQueueEntryParams>');
  });
});

describe('what the schema forgot', () => {
  // Found by validating: with its xsi:type a QueryNotification may not have the Subscription it is for.
  it('is written without the schema type that has no room for it', () => {
    const query = { kind: 'QueryNotification', id: 'n1', body: {} } as const;
    const write = (message: NewMessage) => writeJmf({ senderId: 's', timeStamp: at, messages: [message] });
    expect(write(query)).toContain('xsi:type="QueryNotification"');
    expect(write({ ...query, subscription: { url: 'http://127.0.0.1/' } })).not.toContain(
      'QueryNotification"',
    );
  });
});

describe('return codes', () => {
  it('say what they mean, or what their range means', () => {
    expect([meaningOf(105), meaningOf(0), meaningOf(199)]).toEqual([
      'the entry is not in the queue',
      'success',
      'fault at the device or its controller',
    ]);
  });

  it('of our own codes are all codes of the standard', () => {
    expect(Object.values(codes).filter(({ jmf }) => !(jmf in returnCodes))).toEqual([]);
  });
});

describe('faults in messages', () => {
  const fault = (message: Message | undefined) => ({
    kind: message?.kind,
    body: message?.body,
    returnCode: returnCodeOf(message?.problems ?? []),
    path: message?.problems[0]?.path,
    line: message?.problems[0]?.line,
  });

  // Return codes: JDF 1.4 specification, appendix D (5 not implemented, 6 invalid, 7 insufficient parameters, 4 invalid).
  it.each([
    ['an unknown type', '<Query ID="a" Type="Juggle"/>', 5, '/JMF/Query'],
    ['a known type in a family it has not', '<Query ID="a" Type="SubmitQueueEntry"/>', 5, '/JMF/Query'],
    ['no parameters', '<Command ID="a" Type="SubmitQueueEntry"/>', 7, '/JMF/Command'],
    [
      'a missing parameter',
      '<Command ID="a" Type="SubmitQueueEntry"><QueueSubmissionParams/></Command>',
      7,
      '/JMF/Command/QueueSubmissionParams',
    ],
    [
      'an impossible parameter',
      '<Command ID="a" Type="SubmitQueueEntry"><QueueSubmissionParams URL="x" Priority="101"/></Command>',
      6,
      '/JMF/Command/QueueSubmissionParams',
    ],
    [
      'a fault deep inside',
      '<Signal ID="a" Type="Status"><DeviceInfo DeviceStatus="Idle"/><DeviceInfo DeviceStatus="Asleep"/></Signal>',
      6,
      '/JMF/Signal/DeviceInfo[2]',
    ],
    ['no ID', '<Query Type="KnownDevices"/>', 4, '/JMF/Query'],
    ['no type', '<Query ID="a"/>', 4, '/JMF/Query'],
    [
      'a schema type that contradicts',
      '<Query ID="a" Type="Status" xsi:type="QueryResource"/>',
      4,
      '/JMF/Query',
    ],
    ['an Acknowledge of nothing', '<Acknowledge ID="a" Type="Status"/>', 4, '/JMF/Acknowledge'],
    ['a selection of nothing', '<Command ID="a" Type="HoldQueueEntry"/>', 7, '/JMF/Command'],
  ])('answers %s with its ReturnCode, naming the place', (_what, inner, returnCode, path) => {
    expect(fault(around(inner).messages[0])).toEqual({
      kind: 'unread',
      body: null,
      returnCode,
      path,
      line: 3,
    });
  });

  it('serves the sound messages beside a faulty one', () => {
    const { messages } = around('<Query ID="a" Type="Juggle"/><Query ID="b" Type="SubmissionMethods"/>');
    expect(messages.map(({ kind }) => kind)).toEqual(['unread', 'QuerySubmissionMethods']);
  });

  it('refuses the second message with one ID', () => {
    const { messages } = around(
      '<Query ID="a" Type="SubmissionMethods"/><Query ID="a" Type="SubmissionMethods"/>',
    );
    expect(messages.map(({ problems }) => returnCodeOf(problems))).toEqual([0, 4]);
  });

  it.each([
    ['another root', '<JDF xmlns="http://www.CIP4.org/JDFSchema_1_1"/>'],
    [
      'another namespace',
      '<JMF xmlns="urn:example" SenderID="a" TimeStamp="2024-07-25T12:28:01Z" Version="1.9"/>',
    ],
    [
      'no message',
      '<JMF xmlns="http://www.CIP4.org/JDFSchema_1_1" SenderID="a" TimeStamp="2024-07-25T12:28:01Z" Version="1.9"/>',
    ],
    [
      'no sender',
      '<JMF xmlns="http://www.CIP4.org/JDFSchema_1_1" TimeStamp="2024-07-25T12:28:01Z" Version="1.9"><Query ID="a" Type="Status"/></JMF>',
    ],
    [
      'a time without a zone',
      '<JMF xmlns="http://www.CIP4.org/JDFSchema_1_1" SenderID="a" TimeStamp="2024-07-25T12:28:01" Version="1.9"><Query ID="a" Type="Status"/></JMF>',
    ],
  ])('refuses a document with %s as a whole', (_what, text) => {
    const doc = parseXml(text);
    const result = doc.ok ? readJmf(doc.value) : doc;
    expect(result).toMatchObject({ ok: false, problems: [{ code: 'JMF_CONTENT', line: 1 }] });
  });
});
