import http from 'node:http';
import type { AddressInfo } from 'node:net';
import { readPackage, resolveCid } from '#libs/wire';

interface Entry {
  readonly id: string;
  readonly jobPartId: string;
  readonly ticket: string;
  status: 'Waiting' | 'Held' | 'Aborted';
}

/**
 * A device in one page: a queue behind real HTTP. It reads and answers by plain text, in the form of the standard's
 * samples (jmf/abortQueueEntryCommand.jmf, abortQueueEntryResponse.jmf), so that it shares no JMF code with the driver.
 * ReturnCodes: JDF 1.4 specification, appendix D and table 5-92.
 */
export class SmallJmfDevice {
  readonly entries: Entry[] = [];
  loseNext = false;
  #server: http.Server | null = null;
  #port = 0;

  async open(): Promise<string> {
    this.#server = http.createServer((request, answer) => {
      const chunks: Buffer[] = [];
      request.on('data', (chunk: Buffer) => chunks.push(chunk));
      request.on('end', async () => {
        const body = await this.#answer(Buffer.concat(chunks), request.headers['content-type'] ?? '');
        if (this.loseNext) answer.destroy();
        else answer.writeHead(200, { 'content-type': 'application/vnd.cip4-jmf+xml' }).end(body);
        this.loseNext = false;
      });
    });
    await new Promise<void>((resolve) => this.#server!.listen(this.#port, '127.0.0.1', resolve));
    this.#port = (this.#server.address() as AddressInfo).port;
    return `http://127.0.0.1:${this.#port}/jmf`;
  }

  async close(): Promise<void> {
    const server = this.#server;
    this.#server = null;
    server?.closeAllConnections();
    if (server !== null) await new Promise((resolve) => server.close(resolve));
  }

  async #answer(bytes: Buffer, contentType: string): Promise<string> {
    const pack = contentType.startsWith('multipart/') ? await readPackage(bytes, contentType) : null;
    const first = pack?.ok ? pack.value.parts[0]!.bytes : bytes;
    const jmf = Buffer.from(first).toString('utf8');
    const [, id, type] = /<(?:Command|Query) ID="([^"]+)"[^>]* Type="([^"]+)"/.exec(jmf) ?? ['', '', ''];
    const reply = (code: number, content = ''): string => `<?xml version="1.0" encoding="UTF-8"?>
<JMF SenderID="device" TimeStamp="2024-07-25T12:32:48+02:00" Version="1.9" MaxVersion="1.9"
  xmlns="http://www.CIP4.org/JDFSchema_1_1" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance">
  <Response ID="R${id}" Type="${type}" refID="${id}" ReturnCode="${code}" xsi:type="Response${type}">${content}</Response>
</JMF>`;
    if (type === 'QueueStatus') return reply(0, this.#queue());
    if (type === 'SubmitQueueEntry') {
      const cid = / URL="(cid:[^"]+)"/.exec(jmf)?.[1];
      const part = pack?.ok && cid !== undefined ? resolveCid(pack.value, cid) : null;
      if (!part?.ok) return reply(120);
      const ticket = Buffer.from(part.value.bytes).toString('utf8');
      const jobPartId = part.value.name.replace(/\.jdf$/, '');
      if (this.entries.some((entry) => entry.jobPartId === jobPartId)) return reply(116);
      const entry: Entry = { id: `Q${this.entries.length + 1}`, jobPartId, ticket, status: 'Waiting' };
      this.entries.push(entry);
      return reply(0, `${this.#entry(entry)}${this.#queue()}`);
    }
    const wanted = /QueueEntryID="([^"]+)"/.exec(jmf)?.[1];
    const entry = this.entries.find((one) => one.id === wanted);
    if (entry === undefined) return reply(105);
    const next = type === 'HoldQueueEntry' ? 'Held' : type === 'ResumeQueueEntry' ? 'Waiting' : 'Aborted';
    if (entry.status === next) return reply(113);
    if (entry.status === 'Aborted') return reply(114);
    entry.status = next;
    return reply(0);
  }

  #queue(): string {
    return `<Queue DeviceID="device" Status="Waiting">${this.entries.map((e) => this.#entry(e)).join('')}</Queue>`;
  }

  #entry({ id, status, jobPartId }: Entry): string {
    const job = 'Festival/7 &quot;Größe&quot;';
    return `<QueueEntry QueueEntryID="${id}" Status="${status}" JobID="${job}" JobPartID="${jobPartId}"/>`;
  }
}
