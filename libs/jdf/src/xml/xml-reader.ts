import { done, error, type Result, refuse } from '#libs/kernel';
import { XmlDecoder } from './decode.js';
import { defaultXmlLimits, overLimit, type XmlLimits } from './limits.js';
import type { XmlDocument } from './node.js';
import { ReadingStopped } from './reading-stopped.js';
import { TreeReader } from './tree-reader.js';

/** Bytes that are decoded and parsed at once. */
const PIECE_BYTES = 64 * 1024;

/**
 * Reads a document that comes in pieces of any length, strictly and without loss. Beside the tree it holds one piece.
 * After a fault it takes no more in; `end` tells of it.
 */
export class XmlReader {
  readonly #limits: XmlLimits;
  readonly #decoder = new XmlDecoder();
  readonly #tree: TreeReader;
  readonly #gathered = new Uint8Array(PIECE_BYTES);
  #gatheredLength = 0;
  #bytes = 0;
  #stop: ReadingStopped | null = null;

  /** Limits that are left out have their usual value. */
  constructor(limits: Partial<XmlLimits> = {}) {
    this.#limits = { ...defaultXmlLimits, ...limits };
    this.#tree = new TreeReader(this.#limits, (encoding) => this.#decoder.mustBe(encoding));
  }

  /** Whether the document is refused already, so that the rest need not be fetched. */
  get stopped(): boolean {
    return this.#stop !== null;
  }

  push(bytes: Uint8Array): void {
    this.#unlessStopped(() => {
      this.#bytes += bytes.length;
      if (this.#bytes > this.#limits.bytes) this.#tooLong();
      let at = this.#gatheredLength === 0 ? 0 : this.#gather(bytes, 0);
      while (bytes.length - at > PIECE_BYTES) at += this.#read(bytes.subarray(at, at + PIECE_BYTES), false);
      this.#gather(bytes, at);
    });
  }

  /** The document, when all of it has come. Errors: as `parseXml`. */
  end(): Result<XmlDocument> {
    const tree = this.#unlessStopped(() => {
      this.#read(this.#gathered.subarray(0, this.#gatheredLength), true);
      return this.#tree.end();
    });
    if (tree === undefined) return refuse(this.#stop!.problem);
    const { encoding, bom } = this.#decoder;
    return done({ ...tree, encoding, bom });
  }

  /** Fills the piece that is being gathered, reads it when it is full, and answers where the rest begins. */
  #gather(bytes: Uint8Array, from: number): number {
    let at = from;
    while (at < bytes.length) {
      const part = bytes.subarray(at, at + PIECE_BYTES - this.#gatheredLength);
      this.#gathered.set(part, this.#gatheredLength);
      this.#gatheredLength += part.length;
      at += part.length;
      if (this.#gatheredLength < PIECE_BYTES) break;
      const used = this.#read(this.#gathered, false);
      this.#gathered.copyWithin(0, used);
      this.#gatheredLength = PIECE_BYTES - used;
      if (this.#gatheredLength === 0) break;
    }
    return at;
  }

  #read(piece: Uint8Array, last: boolean): number {
    const { text, used } = this.#decoder.decode(piece, this.#tree.line, last);
    this.#tree.write(text);
    return used;
  }

  #tooLong(): never {
    const { bytes } = this.#limits;
    const [message, hint] = overLimit(this.#limits, 'bytes', `more than ${bytes} bytes`);
    throw new ReadingStopped(error('XML_LIMIT', message, { hint }));
  }

  #unlessStopped<T>(work: () => T): T | undefined {
    if (this.#stop !== null) return undefined;
    try {
      return work();
    } catch (stop) {
      if (!(stop instanceof ReadingStopped)) throw stop;
      this.#stop = stop;
      return undefined;
    }
  }
}
