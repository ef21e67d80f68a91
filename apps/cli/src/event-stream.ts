import { wallClock } from '#libs/kernel';
import { NoServer } from './command.js';
import type { Client } from './http-client.js';

export interface SseEvent {
  readonly id: string;
  readonly data: string;
}

/** Tries in a row that may fail before the server counts as gone. */
const PATIENCE = 30;
const PAUSE_MS = 1000;

/** Events of a stream, resumed where it was cut: no event is missed or given twice. */
export async function* readEvents(client: Client, path: string): AsyncGenerator<SseEvent> {
  let last: string | null = null;
  let failures = 0;
  while (failures < PATIENCE) {
    try {
      const headers: Record<string, string> = {
        accept: 'text/event-stream',
        ...(last === null ? {} : { 'last-event-id': last }),
      };
      const response = await client.open(path, { headers });
      if (response.status !== 200 || response.body === null)
        throw new NoServer(`The server answered ${response.status}.`);
      for await (const event of parse(response.body)) {
        failures = 0;
        last = event.id;
        yield event;
      }
    } catch (cause) {
      if (last === null && failures === 0 && cause instanceof NoServer) throw cause;
    }
    failures++;
    await new Promise<void>((done) => void wallClock.setTimeout(done, PAUSE_MS));
  }
}

async function* parse(body: ReadableStream<Uint8Array>): AsyncGenerator<SseEvent> {
  const decoder = new TextDecoder();
  let text = '';
  for await (const chunk of body) {
    text += decoder.decode(chunk, { stream: true });
    for (let end = text.indexOf('\n\n'); end >= 0; end = text.indexOf('\n\n')) {
      const block = text.slice(0, end).split('\n');
      text = text.slice(end + 2);
      const field = (name: string): string | undefined =>
        block.find((line) => line.startsWith(`${name}: `))?.slice(name.length + 2);
      const [id, data] = [field('id'), field('data')];
      if (id !== undefined && data !== undefined) yield { id, data };
    }
  }
}
