import { parsedXml } from '../../../../../test/kit/value-in.js';
import { checkDocument, checkSent } from '../../index.js';

const NAMESPACES =
  'xmlns="http://www.CIP4.org/JDFSchema_1_1" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance"';

function parsed(messages: string, root = '') {
  const head = `${NAMESPACES} SenderID="s" TimeStamp="2024-07-25T12:28:01Z" Version="1.7"`;
  return parsedXml(`<JMF ${head} ${root}>${messages}</JMF>`);
}

/** What the checks find, each as `severity code path`; the document is sound otherwise. */
function found(messages: string, root = ''): string[] {
  const doc = parsed(messages, root);
  const problems = checkSent(doc);
  expect(checkDocument(doc).problems).toEqual(problems);
  return problems.map(({ severity, code, path }) => `${severity} ${code} ${path}`);
}

const wrong = (path: string) => [`error JMF_CONTENT /JMF/${path}`];
const odd = (path: string) => [`warning JMF_PARAMETER /JMF/${path}`];
const subscription = (url = 'http://hub.example/jmf') => `<Subscription URL="${url}"/>`;
const query = (inside = '') => `<Query ID="q" Type="KnownDevices">${inside}</Query>`;
const command = '<Command ID="c" Type="OpenQueue"/>';
const device = (attributes: string, inside = '') =>
  `<DeviceInfo DeviceID="d" ${attributes}>${inside}</DeviceInfo>`;
const signal = (inside: string, attributes = 'ID="s1"') =>
  `<Signal Type="Status" ${attributes}>${inside}</Signal>`;
const phase = (attributes: string) => `<JobPhase ${attributes}/>`;
const running = (attributes: string) =>
  signal(device('DeviceStatus="Running"', phase(`Status="InProgress" ${attributes}`)));

// What must hold: JMF refID, ReturnCode, URL attributes.
describe('answers', () => {
  it.each([
    ['to what the other side sent', '<Response ID="r" Type="OpenQueue" refID="elsewhere"/>'],
    ['to a Command here', `${command}<Response ID="r" Type="OpenQueue" refID="c"/>`],
    ['late', `${command}<Acknowledge ID="a" Type="OpenQueue" refID="c"/>`],
    ['on a channel', `${query(subscription())}<Signal ID="s1" Type="KnownDevices" refID="q"/>`],
    ['of nobody', signal(device('DeviceStatus="Idle"'))],
  ])('name what they answer: %s', (_what, messages) => {
    expect(found(messages)).toEqual([]);
  });

  it.each([
    ['leave out what they answer', '<Response ID="r" Type="OpenQueue"/>', 'Response'],
    ['leave out the channel that ends', signal('', 'ID="s1" LastRepeat="true"'), 'Signal'],
    ['name an answer', '<Response ID="r" Type="OpenQueue" refID="r"/>', 'Response'],
    ['have another type', `${command}<Response ID="r" Type="CloseQueue" refID="c"/>`, 'Response'],
    ['be on no channel', `${query()}<Signal ID="s1" Type="KnownDevices" refID="q"/>`, 'Signal'],
  ])('may not %s', (_what, messages, place) => {
    expect(found(messages)).toEqual(wrong(place));
  });

  it('that name none of the messages here are odd where one of their type is here', () => {
    const messages = `${command}<Response ID="r" Type="OpenQueue" refID="d"/>`;
    expect(found(messages)).toEqual(['warning JMF_CONTENT /JMF/Response']);
  });
});

// Source of the codes: JDF 1.4 specification, appendix D.
describe('return codes', () => {
  const response = (code: number, inside = '') =>
    `<Response ID="r" Type="OpenQueue" refID="c" ReturnCode="${code}">${inside}</Response>`;
  const why =
    '<Notification Class="Error" TimeStamp="2024-07-25T12:28:00Z"><Comment>closed</Comment></Notification>';

  it.each([response(0), response(112, why), response(399, why)])('are known and told: %s', (message) => {
    expect(found(message)).toEqual([]);
  });

  it('that say nothing of the reason are odd', () => {
    expect(found(response(112))).toEqual(['warning JMF_CONTENT /JMF/Response']);
  });

  it.each([400, -1])('of no range are odd: %s', (code) => {
    expect(found(response(code, why))).toEqual(odd('Response'));
  });
});

describe('addresses', () => {
  const submit = (attributes: string) =>
    `<Command ID="c" Type="SubmitQueueEntry"><QueueSubmissionParams ${attributes}/></Command>`;

  it.each([
    'file:///in/a.jdf',
    'http://hub.example/a',
    'HTTPS://hub.example/a',
    'ftp://hub.example/a',
    'cid:a@b',
    'data:,x',
    'a.jdf',
  ])('may be %s of a ticket', (url) => {
    expect(found(submit(`URL="${url}"`))).toEqual([]);
  });

  it.each([
    [submit('URL="gopher://hub.example/a"'), 'Command/QueueSubmissionParams'],
    [submit('URL="a.jdf" ReturnJMF="cid:a@b"'), 'Command/QueueSubmissionParams'],
    [
      submit('URL="a.jdf" ReturnURL="http://hub.example/b" ReturnJMF="http://hub.example/jmf"'),
      'Command/QueueSubmissionParams',
    ],
    [query(subscription('cid:a@b')), 'Query/Subscription'],
    ['<Command ID="c" Type="OpenQueue" AcknowledgeURL="data:,x"/>', 'Command'],
  ])('may not be such as %s', (messages, place) => {
    expect(found(messages)).toEqual([`error JMF_PARAMETER /JMF/${place}`]);
  });

  it('of the answer are files', () => {
    expect(found(command, 'ResponseURL="file:///out/r.jmf"')).toEqual([]);
    expect(found(command, 'ResponseURL="http://hub.example/r"')).toEqual(['error JMF_PARAMETER /JMF']);
  });
});

describe('what the tables and the reader find', () => {
  it.each([
    [
      'a Subscription elsewhere',
      `<Command ID="c" Type="OpenQueue">${subscription()}</Command>`,
      'JDF_UNKNOWN',
    ],
    ['an ID that occurs twice', `${query()}${query()}`, 'JDF_ID_DOUBLE'],
    ['an Acknowledge to nothing', '<Acknowledge ID="a" Type="OpenQueue" ReturnCode="0"/>', 'JDF_MISSING'],
  ])('is not told by the checks again: %s', (_what, messages, code) => {
    const doc = parsed(messages);
    expect(checkSent(doc)).toEqual([]);
    expect(checkDocument(doc).problems[0]?.code).toBe(code);
  });

  it('is told once of an ID that occurs twice', () => {
    expect(checkDocument(parsed(`${query()}${query()}`)).problems).toHaveLength(1);
  });
});

// What must hold: JMF JobPhase, Queue, QueueEntry, DeviceInfo.
describe('queues', () => {
  const entry = (status: string, id = 'e', inside = '') =>
    `<QueueEntry QueueEntryID="${id}" Status="${status}">${inside}</QueueEntry>`;
  const queue = (attributes: string, inside = '') =>
    `<Signal ID="s1" Type="QueueStatus"><Queue DeviceID="d" ${attributes}>${inside}</Queue></Signal>`;

  it.each([
    queue('Status="Full" QueueSize="2" MaxQueueSize="2"'),
    queue('Status="Running" QueueSize="5" MaxQueueSize="9"', entry('Running')),
    queue('Status="Closed" QueueSize="2" MaxQueueSize="2"'),
    queue('Status="Waiting" QueueSize="0"', entry('Removed')),
  ])('agree with their size: %s', (message) => {
    expect(found(message)).toEqual([]);
  });

  it.each([
    queue('Status="Running" QueueSize="0"', entry('Running')),
    queue('Status="Full" QueueSize="1" MaxQueueSize="2"'),
    queue('Status="Waiting" QueueSize="2" MaxQueueSize="2"'),
  ])('are odd such as %s', (message) => {
    expect(found(message)).toEqual(odd('Signal/Queue'));
  });

  it.each([
    ['Running', 'Setup', 'Completed'],
    ['Held', 'Waiting', 'InProgress'],
    ['PendingReturn', 'Completed', 'InProgress'],
    ['Completed', 'Completed', 'Aborted'],
  ])('have entries that are %s with phases that are %s and not %s', (status, good, bad) => {
    const of = (one: string, end = '') =>
      queue('Status="Running"', entry(status, 'e', phase(`Status="${one}" ${end}`)));
    expect(found(of(good))).toEqual([]);
    expect(found(of(bad))).toEqual(odd('Signal/Queue/QueueEntry/JobPhase'));
    expect(found(of(bad, 'EndTime="2024-07-25T12:00:00Z"'))).toEqual([]);
  });

  it('have entries that agree with the device of the same message', () => {
    const of = (status: string) =>
      signal(
        device('DeviceStatus="Running"', phase('Status="InProgress" QueueEntryID="e"')) +
          `<Queue DeviceID="d" Status="Running">${entry(status)}${entry('Waiting', 'f')}</Queue>`,
      );
    expect(found(of('Running'))).toEqual([]);
    expect(found(of('Waiting'))).toEqual(odd('Signal/DeviceInfo/JobPhase'));
  });
});

describe('devices', () => {
  const of = (status: string, ...phases: string[]) =>
    signal(device(`DeviceStatus="${status}"`, phases.map((one) => phase(`Status="${one}"`)).join('')));

  it.each([
    ['Idle'],
    ['Idle', 'Waiting', 'Completed'],
    ['Setup', 'Setup'],
    ['Running', 'InProgress', 'Waiting'],
    ['Running', 'Setup'],
    ['Cleanup', 'Cleanup'],
    ['Stopped', 'Stopped'],
    ['Down', 'Suspended'],
    ['Unknown', 'InProgress'],
  ])('that are %s go with jobs that are %s', (status, ...phases) => {
    expect(found(of(status, ...phases))).toEqual([]);
  });

  it.each([
    ['Idle', 'Waiting', 'InProgress'],
    ['Running', 'Completed'],
    ['Setup', 'InProgress'],
    ['Stopped', 'InProgress'],
    ['Down', 'InProgress'],
  ])('that are %s are odd with jobs that are %s', (status, ...phases) => {
    expect(found(of(status, ...phases))).toEqual(odd('Signal/DeviceInfo'));
  });
});

describe('phases', () => {
  const at = (name: string, hour: number) => `${name}="2024-07-25T${hour}:00:00Z"`;

  it.each([
    'PercentCompleted="0" Amount="0" Waste="0"',
    'PercentCompleted="100"',
    `${at('StartTime', 10)} ${at('PhaseStartTime', 10)}`,
  ])('may have %s', (attributes) => {
    expect(found(running(attributes))).toEqual([]);
  });

  it.each([
    'PercentCompleted="100.5"',
    'PercentCompleted="-1"',
    'Amount="-1"',
    'PhaseWaste="-0.5"',
    `${at('StartTime', 11)} ${at('PhaseStartTime', 10)}`,
    `${at('StartTime', 11)} ${at('EndTime', 10)}`,
  ])('are odd with %s', (attributes) => {
    expect(found(running(attributes))).toEqual(odd('Signal/DeviceInfo/JobPhase'));
  });
});

describe('counters', () => {
  const told = (id: number, amount: number, more = 'JobID="j"', start = 10, time = '') =>
    signal(
      device(
        'DeviceStatus="Running"',
        phase(`Status="InProgress" StartTime="2024-07-25T${start}:00:00Z" Amount="${amount}" ${more}`),
      ),
      `ID="s${id}" ${time}`,
    );
  const inPhase = (amount: number) => `PhaseStartTime="2024-07-25T10:30:00Z" PhaseAmount="${amount}"`;
  const at = (hour: number) => `Time="2024-07-25T${hour}:00:00Z"`;

  it.each([
    ['go on', told(1, 5) + told(2, 5) + told(3, 6)],
    ['begin again with the StartTime', told(1, 5) + told(2, 1, 'JobID="j"', 11)],
    ['are those of each job', told(1, 5) + told(2, 1, 'JobID="k"')],
    ['are told in any order', told(1, 5, undefined, 10, at(12)) + told(2, 1, undefined, 10, at(11))],
  ])('%s', (_what, messages) => {
    expect(found(messages)).toEqual([]);
  });

  it.each([
    ['of what was made', told(1, 5) + told(2, 4)],
    ['of waste', told(1, 5, 'Waste="2"') + told(2, 6, 'Waste="1"')],
    ['of a phase', told(1, 5, inPhase(2)) + told(2, 6, inPhase(1))],
  ])('are odd when they fall: %s', (_what, messages) => {
    expect(found(messages)).toEqual(odd('Signal[2]/DeviceInfo/JobPhase'));
  });
});

// The same of XJMF.
describe('messages of the newer generation', () => {
  const newer = (messages: string) => {
    const root = 'xmlns="http://www.CIP4.org/JDFSchema_2_0" Version="2.1"';
    const doc = parsedXml(`<XJMF ${root}>${header('h')}${messages}</XJMF>`);
    const problems = checkSent(doc);
    expect(checkDocument(doc).problems).toEqual(problems);
    return problems.map(({ severity, code, path }) => `${severity} ${code} ${path}`);
  };
  const header = (id: string, more = '', hour = 12) =>
    `<Header DeviceID="d" ID="${id}" Time="2024-07-25T${hour}:28:01Z" ${more}/>`;
  const response = (more: string, code = 0) =>
    `<ResponseQueueStatus ReturnCode="${code}">${header('r', more)}</ResponseQueueStatus>`;
  const status = (attributes: string, hour = 12) =>
    `<SignalStatus>${header(`s${hour}`, '', hour)}<DeviceInfo Status="Production"><JobPhase JobID="j" Status="InProgress" ${attributes}/></DeviceInfo></SignalStatus>`;

  const counted = (amount: number) => `StartTime="2024-07-25T10:00:00Z" Amount="${amount}"`;

  it.each([
    `<QueryQueueStatus>${header('q')}</QueryQueueStatus>${response('refID="q"')}`,
    status('PercentCompleted="50" Amount="7"'),
    status(counted(7), 13) + status(counted(5), 12),
  ])('agree: %s', (messages) => {
    expect(newer(messages)).toEqual([]);
  });

  it.each([
    [response(''), 'warning JMF_CONTENT /XJMF/ResponseQueueStatus'],
    [
      `<QueryKnownDevices>${header('q')}</QueryKnownDevices>${response('refID="q"')}`,
      'error JMF_CONTENT /XJMF/ResponseQueueStatus',
    ],
    [response('refID="q"', 5), 'warning JMF_CONTENT /XJMF/ResponseQueueStatus'],
    [
      status(counted(7), 12) + status(counted(5), 13),
      'warning JMF_PARAMETER /XJMF/SignalStatus[2]/DeviceInfo/JobPhase',
    ],
    [status('Waste="-1"'), 'warning JMF_PARAMETER /XJMF/SignalStatus/DeviceInfo/JobPhase'],
    [
      `<CommandSubmitQueueEntry>${header('c')}<QueueSubmissionParams URL="gopher://a/b"/></CommandSubmitQueueEntry>`,
      'error JMF_PARAMETER /XJMF/CommandSubmitQueueEntry/QueueSubmissionParams',
    ],
  ])('may not say %s', (messages, problem) => {
    expect(newer(messages)).toEqual([problem]);
  });
});
