import { type WallClock, wallClock } from '#libs/kernel';
import { NoServer, WrongUse } from './command.js';
import type { Client } from './http-client.js';
import { type SseEvent, SseReader } from './sse-reader.js';

/** What a stream gives: word of each connection, so that the listener can look what it missed, and the events. */
export type Heard = { readonly kind: 'connected' } | ({ readonly kind: 'event' } & SseEvent);

/** Connections in a row that may fail before the server counts as gone. */
const PATIENCE = 30;
const PAUSE_MS = 1000;
/** The server says something every 15 s; a line that is silent for so long is dead. */
const SILENCE_MS = 60_000;

/** Events of a stream, taken up where it was cut: none is missed or given twice. Throws NoServer in the end. */
export async function* readEvents(
  client: Client,
  path: string,
  wall: WallClock = wallClock,
): AsyncGenerator<Heard> {
  const place: Place = { last: null, pauseMs: PAUSE_MS };
  let failures = 0;
  let connected = false;
  for (;;) {
    try {
      for await (const heard of connection(client, path, place, wall)) {
        connected = true;
        failures = 0;
        yield heard;
      }
    } catch (cause) {
      // A wrong address or token will not mend itself; a server that was there may come back.
      if (cause instanceof WrongUse || !connected) throw cause;
    }
    if (++failures > PATIENCE) throw new NoServer('The server is gone.');
    await new Promise<void>((settle) => void wall.setTimeout(settle, place.pauseMs));
  }
}

interface Place {
  last: string | null;
  pauseMs: number;
}

/** One connection until it is cut or falls silent. */
async function* connection(
  client: Client,
  path: string,
  place: Place,
  wall: WallClock,
): AsyncGenerator<Heard> {
  const line = new AbortController();
  let unwatch = (): void => undefined;
  const watch = (): void => {
    unwatch();
    unwatch = wall.setTimeout(() => line.abort(), SILENCE_MS);
  };
  try {
    watch();
    const headers: Record<string, string> = {
      accept: 'text/event-stream',
      ...(place.last === null ? {} : { 'last-event-id': place.last }),
    };
    const response = await client.open(path, { headers, signal: line.signal });
    if (response.status !== 200 || response.body === null) {
      throw new WrongUse(`${client.base} has no events: it answered ${response.status}.`);
    }
    yield { kind: 'connected' };
    const reader = new SseReader();
    const decoder = new TextDecoder();
    for await (const piece of response.body as unknown as AsyncIterable<Uint8Array>) {
      watch();
      for (const event of reader.push(decoder.decode(piece, { stream: true }))) {
        place.last = event.id;
        yield { kind: 'event', ...event };
      }
      place.pauseMs = reader.retryMs ?? place.pauseMs;
    }
  } finally {
    unwatch();
    line.abort();
  }
}
