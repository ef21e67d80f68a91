import { wallClock } from '#libs/kernel';

/** Bytes that are read in one turn: a few milliseconds. */
const TURN_BYTES = 64 * 1024;

/**
 * Bytes piece by piece, with a turn of the event loop between two: what is read so, however long, lets everybody else be
 * served meanwhile. What fits in one piece is not held up.
 */
export async function* inTurns(bytes: Uint8Array): AsyncGenerator<Uint8Array> {
  for (let at = 0; at < bytes.length; at += TURN_BYTES) {
    if (at > 0) await new Promise<void>((turn) => void wallClock.setTimeout(() => turn(), 0));
    yield bytes.subarray(at, at + TURN_BYTES);
  }
}
