import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { Fault } from '#libs/kernel';
import { JMF_TYPE } from '../device/media-types.js';

/** Answers a body; null: not ready yet. Rejects with DEVICE_SILENT when it won't say anything. */
export type Receive = (body: Uint8Array, contentType: string) => Promise<string | null>;

export interface Listening {
  readonly url: string;
  close(): Promise<void>;
}

const MOST_BYTES = 64 * 1024 * 1024;
const ACCEPTED = /^\s*(application\/vnd\.cip4-jmf\+xml|multipart\/related|application\/xml|text\/xml)\b/i;

/** Listens for JMF on this machine only: a simulated device has no business with the world. */
export async function listen(receive: Receive, port: number): Promise<Listening> {
  const server = createServer((request, response) => void serve(request, response, receive));
  await new Promise<void>((resolve, reject) => {
    server.once('error', (cause) =>
      reject(new Fault('SETTING', `Port ${port} cannot be listened on.`, { cause })),
    );
    server.listen(port, '127.0.0.1', resolve);
  });
  const { port: bound } = server.address() as AddressInfo;
  return { url: `http://127.0.0.1:${bound}/jmf`, close: () => close(server) };
}

function close(server: Server): Promise<void> {
  return new Promise((resolve) => {
    server.close(() => resolve());
    server.closeAllConnections();
  });
}

async function serve(request: IncomingMessage, response: ServerResponse, receive: Receive): Promise<void> {
  const refuse = (status: number): void => {
    response.writeHead(status, { connection: 'close' }).end();
  };
  if (new URL(request.url ?? '/', 'http://localhost').pathname !== '/jmf') return refuse(404);
  if (request.method !== 'POST') return refuse(405);
  const contentType = request.headers['content-type'] ?? '';
  if (!ACCEPTED.test(contentType)) return refuse(415);
  try {
    const body = await readBody(request);
    if (body === null) return refuse(413);
    const answer = await receive(body, contentType);
    if (answer === null) return refuse(503);
    response.writeHead(200, answer === '' ? {} : { 'content-type': JMF_TYPE }).end(answer);
  } catch (cause) {
    // A silent device keeps the connection and says nothing.
    if (cause instanceof Fault && cause.code === 'DEVICE_SILENT') return;
    if (!response.headersSent) refuse(500);
    if (!request.destroyed) throw cause;
  }
}

async function readBody(request: IncomingMessage): Promise<Uint8Array | null> {
  const chunks: Buffer[] = [];
  let length = 0;
  for await (const chunk of request as AsyncIterable<Buffer>) {
    length += chunk.length;
    if (length > MOST_BYTES) return null;
    chunks.push(chunk);
  }
  return Buffer.concat(chunks);
}
