import type { PartHead } from './part-head.js';

/**
 * Where the content of one part goes: memory, a file, a digest. Called in order, each call awaited before the next bytes
 * are read, so that a slow sink slows the sender and nothing piles up. What a sink cannot do (a full disk) it throws.
 */
export interface PartSink<T> {
  write(bytes: Uint8Array): void | Promise<void>;
  /** The part is complete; what became of it. */
  close(): T | Promise<T>;
  /** The package broke off or was refused before the part was complete. */
  discard(): void | Promise<void>;
}

/** Decides by its head where a part goes. */
export type OpenSink<T> = (head: PartHead) => PartSink<T> | Promise<PartSink<T>>;

/** Keeps the content. */
export function toMemory(): PartSink<Uint8Array> {
  const chunks: Uint8Array[] = [];
  return {
    write: (bytes) => void chunks.push(bytes),
    close: () => (chunks.length === 1 ? chunks[0]! : Buffer.concat(chunks)),
    discard: () => undefined,
  };
}
