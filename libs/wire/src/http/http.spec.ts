import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import http, { type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { makeAddressGuard } from '../address-guard/address-guard.js';
import { closeConnections } from './agents.js';
import { fetchGuarded } from './fetch-guarded.js';
import { postXml } from './post-xml.js';

type Handler = (request: IncomingMessage, response: ServerResponse) => void;

/** Real servers on loopback; the names below are answered by the test, so no look-up leaves the machine. */
describe('HTTP through the address guard', () => {
  const servers: http.Server[] = [];
  async function serve(handler: Handler): Promise<number> {
    const server = http.createServer(handler);
    servers.push(server);
    await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
    return (server.address() as AddressInfo).port;
  }
  afterEach(async () => {
    closeConnections();
    for (const server of servers.splice(0)) {
      server.closeAllConnections();
      await new Promise((resolve) => server.close(resolve));
    }
  });

  const limits = { maxBytes: 1000, timeoutMs: 2000 };
  const guardFor = (
    hosts: string[],
    resolve?: (host: string) => Promise<string[]>,
    fileRoots: string[] = [],
  ) => makeAddressGuard({ fileRoots, allowedHosts: hosts, registeredDevices: () => [], resolve });

  it('connects to the address that was checked, though the name leads elsewhere a moment later', async () => {
    const port = await serve((request, response) => response.end(`host ${request.headers.host}`));
    let asked = 0;
    const guard = guardFor(['rebind.example'], async () => (asked++ === 0 ? ['127.0.0.1'] : ['127.0.0.9']));
    const answer = await fetchGuarded(`http://rebind.example:${port}/a`, guard, limits);
    expect(asked).toBe(1);
    expect(answer.ok && Buffer.from(answer.value.bytes).toString()).toBe(`host rebind.example:${port}`);
  });

  it('follows three redirects and not a fourth', async () => {
    const port = await serve((request, response) => {
      const left = Number(request.url!.slice(1));
      if (left === 0) response.end('there');
      else response.writeHead(302, { location: `/${left - 1}` }).end();
    });
    const guard = guardFor(['127.0.0.1']);
    expect(await fetchGuarded(`http://127.0.0.1:${port}/3`, guard, limits)).toMatchObject({ ok: true });
    expect(await fetchGuarded(`http://127.0.0.1:${port}/4`, guard, limits)).toMatchObject({
      ok: false,
      problems: [{ code: 'URL_UNREADABLE' }],
    });
  });

  it('checks where a redirect leads, to hosts and to files', async () => {
    let reached = 0;
    const inner = await serve((_request, response) => {
      reached++;
      response.end('inner');
    });
    const folder = await mkdtemp(join(tmpdir(), 'sidelay-http-'));
    await writeFile(join(folder, 'a.jdf'), 'file');
    const fileUrl = pathToFileURL(join(folder, 'a.jdf')).href;
    const port = await serve((request, response) => {
      const location = request.url === '/host' ? `http://127.0.0.1:${inner}/` : fileUrl;
      response.writeHead(307, { location }).end();
    });
    const guard = guardFor([`127.0.0.1:${port}`], undefined, [folder]);
    for (const path of ['host', 'file']) {
      expect(await fetchGuarded(`http://127.0.0.1:${port}/${path}`, guard, limits)).toMatchObject({
        ok: false,
        problems: [{ code: 'URL_REFUSED' }],
      });
    }
    expect(reached).toBe(0);
    expect(await fetchGuarded(fileUrl, guard, limits)).toMatchObject({ ok: true });
    await rm(folder, { recursive: true });
  });

  it('stops reading at the byte limit, whether the length was announced or not', async () => {
    const port = await serve((request, response) => {
      if (request.url === '/long') response.setHeader('content-length', 5000);
      response.write('x'.repeat(1001));
      if (request.url === '/long') response.end('x'.repeat(3999));
    });
    const guard = guardFor(['127.0.0.1']);
    for (const path of ['long', 'chunked']) {
      const answer = await fetchGuarded(`http://127.0.0.1:${port}/${path}`, guard, limits);
      expect(answer.ok ? '' : answer.problems[0]!.message).toContain('larger than 1000 bytes');
    }
  });

  it('calls a device silent that accepts the connection and never answers, or breaks off', async () => {
    const port = await serve((request, response) => {
      if (request.url === '/half') {
        response.writeHead(200, { 'content-length': 10 });
        response.write('half', () => response.destroy());
      }
    });
    const guard = guardFor(['127.0.0.1']);
    const mute = await postXml(`http://127.0.0.1:${port}/mute`, '<JMF/>', 'text/xml', {
      ...limits,
      timeoutMs: 100,
      guard,
    });
    expect(mute).toEqual({ kind: 'silent', reason: 'no answer within 100 ms' });
    const half = await postXml(`http://127.0.0.1:${port}/half`, '<JMF/>', 'text/xml', { ...limits, guard });
    expect(half.kind).toBe('silent');
  });

  it('tells apart silence that may pass and an address that is forbidden', async () => {
    const closed = await serve(() => undefined);
    const server = servers.pop()!;
    await new Promise((resolve) => server.close(resolve));
    const guard = guardFor(['127.0.0.1', 'gone.example'], async () => []);
    const post = (url: string) => postXml(url, '<JMF/>', 'text/xml', { ...limits, guard });
    expect(await post(`http://127.0.0.1:${closed}/`)).toEqual({
      kind: 'silent',
      reason: 'nothing listens at its address',
    });
    expect((await post('http://gone.example/')).kind).toBe('silent');
    expect((await post('http://127.0.0.2/')).kind).toBe('refused');
    expect((await post('file:///dev/null')).kind).toBe('refused');
  });

  it('hands over status and body of every answer, errors included, and follows no redirect of a device', async () => {
    const port = await serve((request, response) => {
      const chunks: Buffer[] = [];
      request.on('data', (chunk: Buffer) => chunks.push(chunk));
      request.on('end', () => {
        response.writeHead(request.url === '/moved' ? 302 : 503, {
          location: '/x',
          'content-type': 'text/plain',
        });
        response.end(`${request.headers['content-type']} ${Buffer.concat(chunks).length}`);
      });
    });
    const options = { ...limits, guard: guardFor(['127.0.0.1']) };
    const jmf = 'application/vnd.cip4-jmf+xml';
    const busy = await postXml(`http://127.0.0.1:${port}/busy`, '<JMF ä/>', jmf, options);
    expect(busy).toMatchObject({ kind: 'answered', status: 503, contentType: 'text/plain' });
    expect(busy.kind === 'answered' && Buffer.from(busy.body).toString()).toBe(`${jmf} 9`);
    expect(await postXml(`http://127.0.0.1:${port}/moved`, '', jmf, options)).toMatchObject({ status: 302 });
  });

  it('keeps a connection for the next message, and outlives the device closing it', async () => {
    let connections = 0;
    const port = await serve((request, response) => {
      request.resume();
      response.end('ok');
    });
    servers[0]!.on('connection', () => connections++);
    const options = { ...limits, guard: guardFor(['127.0.0.1']) };
    const post = () => postXml(`http://127.0.0.1:${port}/`, '<JMF/>', 'text/xml', options);
    for (let i = 0; i < 3; i++) expect((await post()).kind).toBe('answered');
    expect(connections).toBe(1);
    servers[0]!.closeAllConnections();
    expect((await post()).kind).toBe('answered');
    expect(connections).toBe(2);
  });
});
