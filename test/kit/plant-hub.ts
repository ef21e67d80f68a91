import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';

interface Heard {
  readonly path: string;
  readonly authorization: string | undefined;
  readonly contentType: string;
  readonly body: string;
}

const FORGOTTEN =
  '<JMF xmlns="http://www.CIP4.org/JDFSchema_1_1" SenderID="hub" TimeStamp="2026-03-02T08:00:00Z" Version="1.9"><Response ID="r" refID="x" Type="Status" ReturnCode="121"/></JMF>';

/** The least that devices need of a hub: its clock, a list of devices, and an ear for JMF. */
export class Hub {
  readonly heard: Heard[] = [];
  readonly devices = new Map<string, { kind: string; url: string; driver: string; name: string }>();
  clock: object | null = null;
  #server: Server | null = null;
  #port = 0;

  get url(): string {
    return `http://127.0.0.1:${this.#port}`;
  }

  /** On the port it had, if it was open before. */
  async open(): Promise<this> {
    const server = createServer(async (request, response) => {
      let body = '';
      for await (const chunk of request) body += String(chunk);
      const path = request.url ?? '';
      if (path === '/health/ready') {
        response.end(JSON.stringify({ status: 'ok', clock: this.clock }));
        return;
      }
      const { authorization, 'content-type': contentType = '' } = request.headers;
      this.heard.push({ path, authorization, contentType, body });
      if (path === '/api/v1/devices') {
        const device = JSON.parse(body) as {
          id: string;
          kind: string;
          url: string;
          driver: string;
          name: string;
        };
        this.devices.set(device.id, device);
        response.writeHead(201).end();
        return;
      }
      const sender = /SenderID="([^"]*)"/.exec(body)?.[1] ?? '';
      const known = contentType.startsWith('multipart') || this.devices.has(sender);
      response.writeHead(200).end(known ? '' : FORGOTTEN);
    });
    await new Promise<void>((resolve) => server.listen(this.#port, '127.0.0.1', resolve));
    this.#port = (server.address() as AddressInfo).port;
    this.#server = server;
    return this;
  }

  async close(): Promise<void> {
    const server = this.#server;
    this.#server = null;
    if (server === null) return;
    await new Promise<void>((resolve) => {
      server.close(() => resolve());
      server.closeAllConnections();
    });
  }

  get jmf(): string[] {
    return this.heard.filter(({ path }) => path === '/jmf').map(({ body }) => body);
  }
}

/** Waits for something that happens in another part of the process; the test's own time limit ends it. */
export async function until(condition: () => boolean): Promise<void> {
  while (!condition()) await new Promise((resolve) => setTimeout(resolve, 20));
}
