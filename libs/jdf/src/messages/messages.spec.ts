import { parseXml } from '../xml/index.js';
import {
  entryFilter,
  type Jmf,
  type Message,
  messageId,
  type NewMessage,
  readJmf,
  returnCodeOf,
  writeJmf,
} from './index.js';

function read(text: string): Jmf {
  const doc = parseXml(text);
  if (!doc.ok) throw new Error(JSON.stringify(doc.problems));
  const jmf = readJmf(doc.value);
  if (!jmf.ok) throw new Error(JSON.stringify(jmf.problems));
  return jmf.value;
}

const around = (messages: string, attributes = '') =>
  read(`<JMF xmlns="http://www.CIP4.org/JDFSchema_1_1" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance"
 SenderID="Press 45" TimeStamp="2024-07-25T12:28:01+02:00" Version="1.9"${attributes}>
${messages}
</JMF>`);

const at = Date.UTC(2024, 6, 25, 10, 0, 0);

const one: readonly NewMessage[] = [
  {
    kind: 'CommandSubmitQueueEntry',
    id: 'm1',
    body: { url: 'cid:ticket@example.org', hold: true, priority: 70, returnJmf: 'http://127.0.0.1:7420/jmf' },
  },
  {
    kind: 'ResponseSubmitQueueEntry',
    id: 'm2',
    refId: 'm1',
    returnCode: 112,
    notification: { class: 'Error', timeStamp: at, comment: 'The queue is closed.' },
    body: {
      entry: { queueEntryId: 'q1', status: 'Waiting', submissionTime: at, priority: 50 },
      queue: {
        deviceId: 'press',
        status: 'Closed',
        queueSize: 3,
        entries: [{ queueEntryId: 'q0', status: 'Running' }],
      },
    },
  },
  {
    kind: 'CommandReturnQueueEntry',
    id: 'm3',
    body: { queueEntryId: 'q1', url: 'cid:t', completed: ['n1', 'n2'] },
  },
  { kind: 'ResponseReturnQueueEntry', id: 'm4', refId: 'm3', body: {} },
  {
    kind: 'QueryStatus',
    id: 'm5',
    subscription: { url: 'http://127.0.0.1:7420/jmf', repeatTimeS: 30, channelMode: 'Reliable' },
    body: { deviceDetails: 'Brief', jobDetails: 'Full', queueInfo: true },
  },
  {
    kind: 'SignalStatus',
    id: 'm6',
    refId: 'm5',
    channelMode: 'Reliable',
    body: {
      devices: [
        {
          deviceStatus: 'Running',
          deviceId: 'press',
          counterUnit: 'sheets',
          productionCounter: 1234,
          speedPerHour: 9000,
          jobPhases: [
            {
              status: 'InProgress',
              statusDetails: 'Good',
              jobId: 'J1',
              jobPartId: 'P2',
              queueEntryId: 'q1',
              startTime: at - 60_000,
              phaseStartTime: at,
              amount: 120,
              waste: 30,
              phaseAmount: 120,
              phaseWaste: 0,
              totalAmount: 2500,
              percentCompleted: 4.8,
              restTimeS: 950,
              speedPerHour: 9000,
              parts: [{ SheetName: 'S1', Side: 'Front' }],
            },
          ],
          modules: [{ deviceStatus: 'Running', moduleIndex: '0 ~ 3', moduleType: 'PrintModule' }],
        },
      ],
    },
  },
  {
    kind: 'SignalResource',
    id: 'm7',
    body: {
      query: { jobId: 'J1', jobPartId: 'P2' },
      resources: [
        {
          resourceName: 'Media',
          actualAmount: 280,
          unit: 'sheets',
          partAmounts: [
            { actualAmount: 250, parts: [{ SheetName: 'S1', Condition: 'Good' }] },
            { actualAmount: 30, parts: [{ SheetName: 'S1', Condition: 'Waste' }] },
          ],
        },
      ],
    },
  },
  {
    kind: 'QueryResource',
    id: 'm8',
    body: { classes: ['Consumable'], exact: true, resourceNames: ['Media', 'Ink'] },
  },
  {
    kind: 'SignalNotification',
    id: 'm9',
    body: {
      notification: {
        class: 'Warning',
        timeStamp: at,
        jobId: 'J1',
        comment: 'Feeder stopped: double sheet.',
      },
    },
  },
  { kind: 'QueryQueueStatus', id: 'm10', body: { statusList: ['Waiting', 'Running'], maxEntries: 5 } },
  { kind: 'QueryKnownDevices', id: 'm11', body: { deviceDetails: 'Brief' } },
  {
    kind: 'ResponseKnownDevices',
    id: 'm12',
    refId: 'm11',
    body: { devices: [{ deviceStatus: 'Idle', device: { deviceId: 'press', descriptiveName: 'Press' } }] },
  },
  { kind: 'QueryKnownMessages', id: 'm13', body: { persistent: true } },
  {
    kind: 'ResponseKnownMessages',
    id: 'm14',
    refId: 'm13',
    body: {
      services: [{ type: 'Status', query: true, signal: true, persistent: true, urlSchemes: ['http'] }],
    },
  },
  { kind: 'QuerySubmissionMethods', id: 'm15', body: {} },
  {
    kind: 'ResponseSubmissionMethods',
    id: 'm16',
    refId: 'm15',
    body: { methods: { urlSchemes: ['http', 'cid'], packaging: ['MIME', 'None'] } },
  },
  { kind: 'CommandAbortQueueEntry', id: 'm17', body: { filter: entryFilter('q1'), endStatus: 'Aborted' } },
  { kind: 'CommandHoldQueueEntry', id: 'm18', body: { filter: entryFilter('q1') } },
  { kind: 'CommandResumeQueueEntry', id: 'm19', body: { filter: entryFilter('q1') } },
  { kind: 'CommandSuspendQueueEntry', id: 'm20', body: { filter: entryFilter('q1') } },
  { kind: 'CommandRemoveQueueEntry', id: 'm21', body: { filter: { statusList: ['Completed'] } } },
  { kind: 'CommandSetQueueEntryPriority', id: 'm22', body: { priority: 90, queueEntryId: 'q1' } },
  {
    kind: 'CommandStopPersistentChannel',
    id: 'm23',
    body: { url: 'http://127.0.0.1:7420/jmf', channelId: 'm5' },
  },
  { kind: 'ResponseStopPersistentChannel', id: 'm24', refId: 'm23', body: {} },
];

describe('writing and reading messages', () => {
  it('reads back every kind of message as it was written', () => {
    const envelope = { senderId: 'sidelay', deviceId: 'press', timeStamp: at, agentName: 'Sidelay' };
    const jmf = read(writeJmf({ ...envelope, messages: one }));
    expect(jmf).toMatchObject({ ...envelope, version: '1.9' });
    expect(jmf.messages.map(({ kind, body }) => ({ kind, body }))).toEqual(
      one.map(({ kind, body }) => ({ kind, body })),
    );
    expect(jmf.messages).toMatchObject(one);
  });

  it('names the schema type of every message it knows and none of the others', () => {
    const text = writeJmf({
      senderId: 'sidelay',
      timeStamp: at,
      messages: [
        one[0]!,
        { kind: 'other', family: 'Response', type: 'Track', id: 'r1', refId: 'x', returnCode: 5 },
      ],
    });
    expect(text).toContain('Type="SubmitQueueEntry" xsi:type="CommandSubmitQueueEntry"');
    expect(text).toContain('<Response ID="r1" refID="x" ReturnCode="5" Type="Track"/>');
  });

  it('makes IDs that XML allows of identifiers that begin with a digit', () => {
    expect(messageId('01890a5d-ac96')).toBe('m-01890a5d-ac96');
    const digit = { ...one[3]!, id: '01890a5d' } as NewMessage;
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

  it('reads an Acknowledge as the Response that it stands for', () => {
    const [message] = around('<Acknowledge ID="a1" Type="HoldQueueEntry" refID="c1"/>').messages;
    expect(message).toMatchObject({
      family: 'Acknowledge',
      kind: 'ResponseHoldQueueEntry',
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
    ['an unknown type', '<Query ID="a" Type="Track"/>', 5, '/JMF/Query'],
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
    const { messages } = around('<Query ID="a" Type="Track"/><Query ID="b" Type="SubmissionMethods"/>');
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
