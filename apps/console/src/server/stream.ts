import type { WallClock } from '#libs/kernel';
import { eventNames } from './event-names.js';

/** One event of the live stream, cut down to what the console needs to know where to look again. */
export interface News {
  readonly id: string;
  readonly type: string;
  readonly ticket: string | null;
  readonly device: string | null;
}

export interface StreamEars {
  opened(): void;
  heard(news: News): void;
  cut(): void;
}

/** The part of EventSource that is used, so that a test can stand in for the browser. */
export interface Source {
  addEventListener(type: string, listener: (event: { data: string; lastEventId: string }) => void): void;
  onopen: (() => void) | null;
  onerror: (() => void) | null;
  readonly readyState: number;
  close(): void;
}

const CLOSED = 2;
const AGAIN_MS = 2000;

/**
 * Keeps the live stream open. While the browser itself tries again, it sends the last id it saw; once it has given up
 * (any answer but 200), the stream is opened anew behind that id, so that nothing is lost or told twice.
 */
export function keepStream(
  ears: StreamEars,
  clock: WallClock,
  connect: (url: string) => Source = (url) => new EventSource(url) as unknown as Source,
): () => void {
  let last: string | null = null;
  let source: Source | null = null;
  let cancel = (): void => undefined;

  const open = (): void => {
    const opened = connect(`/api/v1/events${last === null ? '' : `?after=${last}`}`);
    source = opened;
    opened.onopen = () => ears.opened();
    opened.onerror = () => {
      ears.cut();
      if (opened.readyState !== CLOSED) return;
      opened.close();
      cancel = clock.setTimeout(open, AGAIN_MS);
    };
    for (const name of eventNames) {
      opened.addEventListener(name, ({ data, lastEventId }) => {
        last = lastEventId;
        ears.heard(newsOf(data, lastEventId, name));
      });
    }
  };
  open();
  return () => {
    cancel();
    source?.close();
  };
}

/** Reads the CloudEvents envelope; one that cannot be read still tells that something happened. */
export function newsOf(text: string, id: string, type: string): News {
  try {
    const { data } = JSON.parse(text) as { data?: { ticket?: string | null; device?: string | null } };
    return { id, type, ticket: data?.ticket ?? null, device: data?.device ?? null };
  } catch {
    return { id, type, ticket: null, device: null };
  }
}
