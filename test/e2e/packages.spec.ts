import { request } from 'node:http';
import { parseXml } from '#libs/jdf';
import {
  checkReferences,
  gathered,
  kindOfPart,
  type PartToSend,
  readPackage,
  writeMultipart,
  writeZip,
} from '#libs/wire';
import { demoData, Hub, type TicketJson } from '../kit/journey.js';
import { valueIn } from '../kit/value-in.js';

const JDF = 'application/vnd.cip4-jdf+xml';
const NOW = Date.parse('2026-03-02T08:00:00Z');
const art = Buffer.alloc(3000, '%PDF-1.4 of the festival \0\xff');

/** The demo's ticket with a file of its own, named by an address. */
const ticketWith = (url: string): Buffer =>
  Buffer.from(
    demoData('tickets/paper-boat-300.jdf')
      .toString()
      .replace(
        '</ResourcePool>',
        `<RunList ID="RL" Class="Parameter" Status="Available"><LayoutElement><FileSpec URL="${url}"/></LayoutElement></RunList></ResourcePool>`,
      ),
  );
const part = (name: string, contentId: string | null, mediaType: string, content: Buffer): PartToSend => ({
  name,
  contentId,
  mediaType,
  content,
});

describe('a package', () => {
  let hub: Hub;
  beforeAll(async () => {
    hub = await Hub.open({});
  }, 120_000);
  afterAll(() => hub?.close());

  const multipart = async (ticket: Buffer) => {
    const parts = [
      part('boat.jdf', 'boat@x', JDF, ticket),
      part('cover.pdf', 'art@x', 'application/pdf', art),
      part('unused.txt', null, 'text/plain', Buffer.from('left behind')),
    ];
    const { body, contentType } = writeMultipart({ parts, encoding: 'binary' }, { next: () => 'e2e' });
    return { body: Buffer.from(await gathered(body)), contentType };
  };
  const zip = async (ticket: Buffer) => ({
    body: Buffer.from(
      await gathered(
        writeZip(
          [part('boat.jdf', null, JDF, ticket), part('art/cover 1.pdf', null, 'application/pdf', art)],
          NOW,
        ),
      ),
    ),
    contentType: 'application/zip',
  });

  /** The package as it leaves: names and contents, once every address in it was found to lead to a part. */
  const leaving = async (id: string, accept: string): Promise<[string, string][]> => {
    const answer = await fetch(`${hub.server.url}/api/v1/tickets/${id}/document`, { headers: { accept } });
    expect(answer.headers.get('content-type')).toContain(accept.split(',')[0]);
    const pack = valueIn(
      await readPackage(new Uint8Array(await answer.arrayBuffer()), answer.headers.get('content-type')),
    );
    const documents = pack.parts
      .filter((one) => kindOfPart(one) !== 'content')
      .map((one) => {
        const read = parseXml(one.bytes);
        return { part: one, document: read.ok ? read.value : null };
      });
    expect(checkReferences(pack, documents)).toEqual([]);
    return pack.parts.map(({ name, bytes }) => [name, Buffer.from(bytes).toString('latin1')]);
  };

  it.each([
    ['multipart', 'cid:ART%40x', 'cover.pdf', multipart],
    ['ZIP', 'art/cover%201.pdf', 'art/cover 1.pdf', zip],
  ] as const)(
    'that came as %s leaves as either, the ticket with the files it refers to',
    async (_container, url, name, make) => {
      const { body, contentType } = await make(ticketWith(url));
      const answer = await hub.post('/api/v1/tickets', body, contentType);
      expect(answer.status).toBe(201);
      const { id } = (await answer.json()) as TicketJson;
      for (const accept of ['multipart/related', 'application/zip']) {
        const [ticket, file, ...more] = await leaving(id, accept);
        expect(more).toEqual([]);
        expect(ticket![0]).toBe('ticket.jdf');
        expect(ticket![1]).toContain('<RunList ');
        // A multipart shows a name, a ZIP has a path.
        expect(file).toEqual([
          accept === 'application/zip' ? name : name.split('/').at(-1),
          art.toString('latin1'),
        ]);
      }
      // The second generation goes in a ZIP.
      const newer = await leaving(id, 'application/zip, application/vnd.cip4-xjdf+xml');
      expect(newer.map(([shown]) => shown)).toEqual(['ticket.xjdf', name]);
      expect(newer[0]![1]).toContain('<XJDF ');
      const bare = await hub.get<string>(`/api/v1/tickets/${id}/document`, JDF);
      expect(bare).toContain(`URL="${url}"`);
    },
  );

  it('of one part is what a ticket becomes that came alone', async () => {
    const answer = await hub.post('/api/v1/tickets', demoData('tickets/paper-boat-300.jdf'), JDF);
    const { id } = (await answer.json()) as TicketJson;
    expect((await leaving(id, 'multipart/related')).map(([name]) => name)).toEqual(['ticket.jdf']);
  });

  it('is refused with the part in the path', async () => {
    const faulty = Buffer.from(ticketWith('cid:art@x').toString().replace('rRef="R3"', 'rRef="R9"'));
    const { body, contentType } = await multipart(faulty);
    const answer = await hub.post('/api/v1/tickets', body, contentType);
    expect(answer.status).toBe(422);
    const { problems } = (await answer.json()) as { problems: { code: string; path: string }[] };
    const dangling = problems.filter(({ code }) => code === 'JDF_DANGLING').map(({ path }) => path);
    expect(dangling).toEqual(['boat.jdf!/JDF/ResourceLinkPool/MediaIntentLink']);
  });

  it('that misses a file its ticket refers to is refused', async () => {
    const { body, contentType } = await multipart(ticketWith('cid:other@x'));
    const answer = await hub.post('/api/v1/tickets', body, contentType);
    expect(answer.status).toBe(422);
    expect(await answer.json()).toMatchObject({
      problems: [
        { code: 'PACKAGE_PART_MISSING', path: expect.stringMatching(/^boat\.jdf!\/JDF\/.*FileSpec$/) },
      ],
    });
  });

  it('with a message submits its ticket, and what it refers to is kept with it', async () => {
    const message = `<JMF xmlns="http://www.CIP4.org/JDFSchema_1_1" SenderID="tester" TimeStamp="2026-01-05T08:00:00Z" Version="1.9"><Command ID="c1" Type="SubmitQueueEntry"><QueueSubmissionParams URL="cid:boat@x"/></Command></JMF>`;
    const parts = [
      part('a.jmf', null, 'application/vnd.cip4-jmf+xml', Buffer.from(message)),
      part('other.jdf', 'other@x', JDF, ticketWith('cid:none@x')),
      part('boat.jdf', 'boat@x', JDF, ticketWith('cid:art@x')),
      part('cover.pdf', 'art@x', 'application/pdf', art),
    ];
    const { body, contentType } = writeMultipart({ parts, encoding: 'base64' }, { next: () => 'e2e' });
    const answer = await hub.post('/jmf', Buffer.from(await gathered(body)), contentType);
    const text = await answer.text();
    expect(text).toContain('ReturnCode="0"');
    const id = /QueueEntryID="([^"]+)"/.exec(text)![1]!;
    expect((await leaving(id, 'multipart/related')).map(([name]) => name)).toEqual([
      'ticket.jdf',
      'cover.pdf',
    ]);
  });

  // The default SIDELAY_BODY_LIMIT_MB is 16; what the sockets of both sides hold besides is the system's affair.
  it.each(['/api/v1/tickets', '/jmf'])(
    'of a thousand million bytes sent to %s is refused at the limit, while others are served',
    async (path) => {
      const size = 1_000_000_000;
      const block = Buffer.alloc(1_000_000, 'press ready ');
      const head = `--b\r\nContent-Type: ${JDF}\r\n\r\n<JDF/>\r\n--b\r\nContent-Type: image/tiff\r\n\r\n`;
      const sending = request(`${hub.server.url}${path}`, {
        method: 'POST',
        headers: { 'content-type': 'multipart/related; boundary=b' },
      });
      let status = 0;
      let isOver = false;
      const over = new Promise<void>((settle) => {
        sending.on('response', (answer) => {
          status = answer.statusCode ?? 0;
          answer.resume();
          isOver = true;
          settle();
        });
        // The server closes the line behind its answer; what is still on its way then fails.
        sending.on('error', () => {
          isOver = true;
          settle();
        });
      });
      let given = 0;
      let served = 0;
      sending.write(head);
      while (given < size && !isOver) {
        const taken = sending.write(block);
        given += block.length;
        if (!taken) await Promise.race([over, new Promise((settle) => sending.once('drain', settle))]);
        const beside = await fetch(`${hub.server.url}/health/live`);
        if (beside.status === 200) served += 1;
      }
      await over;
      sending.destroy();
      expect(status).toBe(413);
      expect(served).toBeGreaterThanOrEqual(16);
      expect(given).toBeLessThan(64_000_000);
    },
    60_000,
  );
});
