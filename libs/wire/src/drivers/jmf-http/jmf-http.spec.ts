import http from 'node:http';
import type { AddressInfo } from 'node:net';
import type { Device, Parcel } from '#libs/flow';
import { seededRandom, uuidV7Source, VirtualClock } from '#libs/kernel';
import { makeAddressGuard } from '../../address-guard/address-guard.js';
import { closeConnections } from '../../http/agents.js';
import { readPackage } from '../../packages/read-package.js';
import { resolveCid } from '../../packages/resolve-reference.js';
import type { DriverPorts } from '../device-driver.js';
import { jmfHttp } from './jmf-http.driver.js';

const NOW = Date.parse('2025-03-03T06:00:00Z');
const parcel: Parcel = {
  ticketId: 'T1',
  stepId: 'press-1',
  entryId: 'E1',
  jobId: 'Festival-7',
  jobPartId: 'press-1',
  name: 'Programme',
  priority: 60,
  document: '<JDF ID="größe"/>',
  returnUrl: 'http://127.0.0.1:7420/jmf',
};

/** A Response in the form of the standard's samples (jmf/abortQueueEntryResponse.jmf, responseWithNotificationElement.jmf). */
function response(request: string, code: number, content = '', type = 'SubmitQueueEntry'): string {
  const id = /<(?:Command|Query)[^>]* ID="([^"]+)"/.exec(request)?.[1];
  return `<?xml version="1.0" encoding="UTF-8"?>
<JMF MaxVersion="1.9" SenderID="press" TimeStamp="2024-07-25T12:32:48+02:00" Version="1.9"
  xmlns="http://www.CIP4.org/JDFSchema_1_1" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance">
  <Response ID="M1" Type="${type}" refID="${id}" ReturnCode="${code}" xsi:type="Response${type}">${content}</Response>
</JMF>`;
}
const entry = (id: string, status = 'Waiting', part = parcel.jobPartId): string =>
  `<QueueEntry QueueEntryID="${id}" Status="${status}" JobID="${parcel.jobId}" JobPartID="${part}"/>`;
const queue = (...entries: string[]): string =>
  `<Queue DeviceID="press" Status="Waiting">${entries.join('')}</Queue>`;
const words = (text: string): string =>
  `<Notification Class="Error" TimeStamp="2024-03-25T12:32:48+02:00" Type="Error"><Comment>${text}</Comment></Notification>`;

interface Heard {
  readonly contentType: string;
  /** The message, whether it came alone or in a package. */
  readonly jmf: string;
  /** The document that the message's cid: leads to. */
  readonly ticket: string | null;
}
type Script = (heard: Heard) => { status?: number; body: string };

describe('the JMF driver', () => {
  let server: http.Server;
  let heard: Heard[];
  let script: Script;
  let device: Device;
  const ports = (): DriverPorts => {
    const clock = new VirtualClock(NOW);
    return {
      guard: makeAddressGuard({
        fileRoots: [],
        allowedHosts: [],
        registeredDevices: () => [device.url ?? ''],
      }),
      clock,
      ids: uuidV7Source(clock, seededRandom(1)),
      senderId: 'sidelay',
      timeoutMs: 2000,
    };
  };

  beforeEach(async () => {
    heard = [];
    server = http.createServer((request, answer) => {
      const chunks: Buffer[] = [];
      request.on('data', (chunk: Buffer) => chunks.push(chunk));
      request.on('end', async () => {
        const contentType = request.headers['content-type'] ?? '';
        const bytes = Buffer.concat(chunks);
        const pack = contentType.startsWith('multipart/') ? await readPackage(bytes, contentType) : null;
        if (pack !== null && !pack.ok) throw new Error(pack.problems[0]!.message);
        const jmf = (pack === null ? bytes : Buffer.from(pack.value.parts[0]!.bytes)).toString('utf8');
        const cid = /URL="(cid:[^"]+)"/.exec(jmf)?.[1];
        const part = pack === null || cid === undefined ? null : resolveCid(pack.value, cid);
        const ticket = part?.ok ? Buffer.from(part.value.bytes).toString('utf8') : null;
        heard.push({ contentType, jmf, ticket });
        const { status, body } = script(heard.at(-1)!);
        answer.writeHead(status ?? 200, { 'content-type': 'application/vnd.cip4-jmf+xml' }).end(body);
      });
    });
    await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
    const url = `http://127.0.0.1:${(server.address() as AddressInfo).port}/jmf`;
    device = {
      id: 'press',
      kind: 'press',
      name: 'Press',
      driver: 'jmf',
      url,
      status: 'Unknown',
      statusDetails: null,
      job: null,
      ticketId: null,
      stepId: null,
      speed: null,
      since: NOW,
      source: 'assumed',
      lastSeen: null,
      silentBecause: null,
    };
  });
  afterEach(async () => {
    closeConnections();
    server.closeAllConnections();
    await new Promise((resolve) => server.close(resolve));
  });

  it('submits the ticket in one package with the message, and is called back at the return address', async () => {
    script = ({ jmf }) => ({ body: response(jmf, 0, entry('Q1')) });
    expect(await jmfHttp.make(ports()).submit(device, parcel)).toEqual({
      outcome: 'taken',
      deviceEntryId: 'Q1',
    });
    const [only] = heard;
    expect(heard.length).toBe(1);
    expect(only!.ticket).toBe(parcel.document);
    expect(only!.contentType).toMatch(
      /^multipart\/related; boundary=".+"; type="application\/vnd\.cip4-jmf\+xml"$/,
    );
    for (const said of [
      'SenderID="sidelay"',
      'DeviceID="press"',
      'xsi:type="CommandSubmitQueueEntry"',
      'Priority="60"',
    ]) {
      expect(only!.jmf).toContain(said);
    }
    expect(only!.jmf).toContain(`ReturnJMF="${parcel.returnUrl}"`);
    expect(only!.jmf).toContain('TimeStamp="2025-03-03T06:00:00');
  });

  // Codes: JDF 1.4 specification, appendix D; which of them pass by themselves is ours to say.
  it.each([8, 10, 100, 112])(
    'tries later when the device cannot take a job now (ReturnCode %i)',
    async (code) => {
      script = ({ jmf }) => ({ body: response(jmf, code) });
      const outcome = await jmfHttp.make(ports()).submit(device, parcel);
      expect(outcome).toMatchObject({ outcome: 'later', silent: false });
    },
  );

  it.each([1, 2, 4, 5, 6, 7, 101, 102, 110, 120, 121, 200, 300])(
    'passes on a refusal in the words of the device (ReturnCode %i)',
    async (code) => {
      script = ({ jmf }) => ({ body: response(jmf, code, words('No fountain\n solution.')) });
      const outcome = await jmfHttp.make(ports()).submit(device, parcel);
      expect(outcome).toEqual({ outcome: 'refused', reason: `No fountain solution. (ReturnCode ${code})` });
    },
  );

  it('says what a code means when the device says nothing', async () => {
    script = ({ jmf }) => ({ body: response(jmf, 102) });
    const outcome = await jmfHttp.make(ports()).submit(device, parcel);
    expect(outcome).toMatchObject({ reason: 'it finds nothing to execute in the ticket (ReturnCode 102)' });
  });

  it('takes a duplicate for taken, by the name that the queue gives it', async () => {
    script = ({ jmf }) => ({
      body: jmf.includes('QueueStatus')
        ? response(
            jmf,
            0,
            queue(
              entry('Q0', 'Aborted'),
              entry('Q7', 'Running', 'other'),
              entry('Q2', 'Completed'),
              entry('Q3', 'Running'),
            ),
            'QueueStatus',
          )
        : response(jmf, 116),
    });
    expect(await jmfHttp.make(ports()).submit(device, parcel)).toEqual({
      outcome: 'taken',
      deviceEntryId: 'Q3',
    });
    expect(heard[1]!.jmf).toContain(`JobPartID="${parcel.jobPartId}"`);
  });

  it('takes a duplicate that has ended meanwhile for taken, and one that was aborted for a refusal', async () => {
    let entries = queue(entry('Q2', 'Completed'));
    script = ({ jmf }) => ({
      body: jmf.includes('QueueStatus') ? response(jmf, 0, entries, 'QueueStatus') : response(jmf, 116),
    });
    expect(await jmfHttp.make(ports()).submit(device, parcel)).toMatchObject({ deviceEntryId: 'Q2' });
    entries = queue(entry('Q2', 'Aborted'));
    expect(await jmfHttp.make(ports()).submit(device, parcel)).toMatchObject({ outcome: 'refused' });
  });

  it('finds the name of an entry that the answer forgot, and uses its own when the queue does not tell', async () => {
    let entries = queue(entry('Q9'));
    script = ({ jmf }) => ({
      body: jmf.includes('QueueStatus') ? response(jmf, 0, entries, 'QueueStatus') : response(jmf, 0),
    });
    expect(await jmfHttp.make(ports()).submit(device, parcel)).toMatchObject({ deviceEntryId: 'Q9' });
    entries = '';
    expect(await jmfHttp.make(ports()).submit(device, parcel)).toMatchObject({ deviceEntryId: 'E1' });
  });

  describe('that can give an address', () => {
    const address = 'http://127.0.0.1:7420/jmf/tickets/E1';
    const kinds = (): string[] =>
      heard.map(
        ({ contentType, jmf }) =>
          `${/ Type="(\w+)"/.exec(jmf)![1]} ${contentType.split(';')[0]!.split('/')[0]}`,
      );
    const methods = (attributes: string) => (jmf: string) =>
      response(jmf, 0, `<SubmissionMethods ${attributes}/>`, 'SubmissionMethods');
    const asked = (jmf: string): boolean => jmf.includes('Type="SubmissionMethods"');
    const submitTwice = async (): Promise<void> => {
      const driver = jmfHttp.make({ ...ports(), documentUrl: () => address });
      for (let i = 0; i < 2; i++)
        expect(await driver.submit(device, parcel)).toMatchObject({ outcome: 'taken' });
    };

    it('sends the ticket in a package to a device that says it takes packages, and asks only once', async () => {
      const says = methods('MIME="true" URLSchemes="http cid"');
      script = ({ jmf }) => ({ body: asked(jmf) ? says(jmf) : response(jmf, 0, entry('Q1')) });
      await submitTwice();
      expect(kinds()).toEqual([
        'SubmissionMethods application',
        'SubmitQueueEntry multipart',
        'SubmitQueueEntry multipart',
      ]);
      expect(heard[1]!.ticket).toBe(parcel.document);
    });

    it.each([
      ['does not know the question', (jmf: string) => response(jmf, 5, '', 'SubmissionMethods')],
      ['takes no packages', methods('URLSchemes="http"')],
    ])('gives the address to a device that %s', async (_what, says) => {
      script = ({ jmf }) => ({ body: asked(jmf) ? says(jmf) : response(jmf, 0, entry('Q1')) });
      await submitTwice();
      expect(kinds()).toEqual([
        'SubmissionMethods application',
        'SubmitQueueEntry application',
        'SubmitQueueEntry application',
      ]);
      expect(heard[1]!.jmf).toContain(`URL="${address}"`);
    });

    it.each([
      ['ReturnCode 3', 200, 3],
      ['HTTP 415', 415, null],
    ])(
      'gives the address when a package is not taken after all (%s), and remembers it',
      async (_what, status, code) => {
        const says = methods('MIME="true"');
        script = ({ jmf, contentType }) => {
          if (asked(jmf)) return { body: says(jmf) };
          if (!contentType.startsWith('multipart/')) return { body: response(jmf, 0, entry('Q1')) };
          return { status, body: code === null ? '' : response(jmf, code) };
        };
        await submitTwice();
        expect(kinds().slice(1)).toEqual([
          'SubmitQueueEntry multipart',
          'SubmitQueueEntry application',
          'SubmitQueueEntry application',
        ]);
      },
    );
  });

  it.each([
    ['ReturnCode 3', 200, 3],
    ['HTTP 415', 415, null],
  ])(
    'is refused by a device that takes no package where there is no address (%s)',
    async (_what, status, code) => {
      script = ({ jmf }) => ({ status, body: code === null ? '' : response(jmf, code) });
      expect(await jmfHttp.make(ports()).submit(device, parcel)).toMatchObject({ outcome: 'refused' });
    },
  );

  it.each<[string, number, string]>([
    ['an error of HTTP', 500, 'oops'],
    ['no such path', 404, '<html/>'],
    ['an answer that is no XML', 200, 'ok'],
    ['an answer that is no JMF', 200, '<html/>'],
    ['an empty answer', 200, ''],
    ['a document type declaration', 200, '<!DOCTYPE JMF [<!ENTITY a "b">]><JMF/>'],
  ])('waits for a device that answers with %s', async (_what, status, body) => {
    script = () => ({ status, body });
    expect(await jmfHttp.make(ports()).submit(device, parcel)).toMatchObject({
      outcome: 'later',
      silent: true,
    });
  });

  it('does not take the Response to another message for its own', async () => {
    script = () => ({ body: response('<Command ID="m-other"', 0, entry('Q1')) });
    expect(await jmfHttp.make(ports()).submit(device, parcel)).toMatchObject({
      outcome: 'later',
      silent: true,
    });
  });

  it('gives up on a ticket that the device finds too large', async () => {
    script = () => ({ status: 413, body: '' });
    expect(await jmfHttp.make(ports()).submit(device, parcel)).toMatchObject({ outcome: 'refused' });
  });

  it('is silent about nothing: an address that the guard forbids is a reason too', async () => {
    const far = { ...device, url: 'http://10.0.0.1/jmf' };
    const outcome = await jmfHttp.make(ports()).submit(far, parcel);
    expect(outcome).toMatchObject({ outcome: 'later', silent: true });
    expect(await jmfHttp.make(ports()).submit({ ...device, url: null }, parcel)).toMatchObject({
      outcome: 'later',
    });
  });

  // Commands and the codes by state: JDF 1.4 specification, table 5-92.
  it.each<['Held' | 'Waiting' | 'Aborted', string, number, string]>([
    ['Held', 'CommandHoldQueueEntry', 0, 'taken'],
    ['Held', 'CommandHoldQueueEntry', 113, 'taken'],
    ['Held', 'CommandHoldQueueEntry', 106, 'refused'],
    ['Held', 'CommandHoldQueueEntry', 105, 'refused'],
    ['Waiting', 'CommandResumeQueueEntry', 0, 'taken'],
    ['Waiting', 'CommandResumeQueueEntry', 113, 'taken'],
    ['Waiting', 'CommandResumeQueueEntry', 8, 'later'],
    ['Aborted', 'CommandAbortQueueEntry', 0, 'taken'],
    ['Aborted', 'CommandAbortQueueEntry', 113, 'taken'],
    ['Aborted', 'CommandAbortQueueEntry', 105, 'taken'],
    ['Aborted', 'CommandAbortQueueEntry', 114, 'refused'],
  ])('wants an entry %s by %s, and ReturnCode %i means %s', async (wanted, kind, code, outcome) => {
    script = ({ jmf }) => ({ body: response(jmf, code, '', kind.slice('Command'.length)) });
    expect(await jmfHttp.make(ports()).instruct(device, 'Q1', wanted)).toMatchObject({ outcome });
    expect(heard[0]!.jmf).toContain(`xsi:type="${kind}"`);
    expect(heard[0]!.jmf).toContain('<QueueEntryDef QueueEntryID="Q1"/>');
  });

  it('lists the queue of a device, and tells silence from a device that has no such question', async () => {
    script = ({ jmf }) => ({
      body: response(jmf, 0, queue(entry('Q1'), entry('Q2', 'Held')), 'QueueStatus'),
    });
    const driver = jmfHttp.make(ports());
    expect(await driver.queueStatus(device)).toMatchObject({
      kind: 'entries',
      entries: [{ queueEntryId: 'Q1' }, { queueEntryId: 'Q2', status: 'Held' }],
    });
    script = ({ jmf }) => ({ body: response(jmf, 5, '', 'QueueStatus') });
    expect(await driver.queueStatus(device)).toEqual({ kind: 'unknown' });
    script = () => ({ status: 503, body: '' });
    expect(await driver.queueStatus(device)).toMatchObject({ kind: 'silent' });
  });
});
