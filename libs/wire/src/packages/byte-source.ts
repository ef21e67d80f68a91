import { wallClock } from '#libs/kernel';

/** Bytes between two breaks: a few milliseconds of work for whoever reads them. */
const STRETCH_BYTES = 1_000_000;

/**
 * Bytes that are in memory as a stream. Between two stretches others get their turn: reading a large package must not
 * stall boards, devices and queue locks.
 */
export async function* inStretches(bytes: Uint8Array): AsyncGenerator<Uint8Array> {
  for (let at = 0; at < bytes.length; at += STRETCH_BYTES) {
    if (at > 0) await new Promise<void>((settle) => void wallClock.setTimeout(settle, 0));
    yield bytes.subarray(at, at + STRETCH_BYTES);
  }
}

/** A stream as one piece of memory. */
export async function gathered(stream: AsyncIterable<Uint8Array>): Promise<Uint8Array> {
  const chunks: Uint8Array[] = [];
  for await (const chunk of stream) chunks.push(chunk);
  return Buffer.concat(chunks);
}
