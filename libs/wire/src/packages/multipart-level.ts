import type { Problem } from '#libs/kernel';
import { BoundarySplitter, type Piece } from './boundary-splitter.js';
import { canonicalId, headerEnd } from './multipart-header.js';
import { broken, loose, overLimit, type PackageLimits } from './package.js';
import { boundaryOf, type PartHead, readPartHead } from './part-head.js';
import { type Decoder, makeDecoder } from './transfer-encoding.js';

/** What comes out, in this order for each part: its head, its content decoded in pieces of any size, its end. */
export type PartEvent =
  | { readonly kind: 'open'; readonly head: PartHead }
  | { readonly kind: 'bytes'; readonly bytes: Uint8Array }
  | { readonly kind: 'close' };

/** What all levels of one package count together. */
export class Tally {
  readonly ids = new Set<string>();
  readonly warnings: Problem[] = [];
  parts = 0;
  bytes = 0;

  constructor(readonly limits: PackageLimits) {}
}

type Open =
  | { readonly kind: 'header'; bytes: Uint8Array }
  | {
      readonly kind: 'leaf';
      readonly head: PartHead;
      readonly decoder: Decoder;
      bytes: number;
      is7bit: boolean;
    }
  | { readonly kind: 'package'; readonly head: PartHead; readonly inner: MultipartLevel };

/**
 * One multipart in the making: bytes go in as they come, events of its parts come out, those of packages within it too.
 * Each call returns the first thing wrong, after which nothing may be pushed. Nothing is held but one header and one line
 * for each level.
 */
export class MultipartLevel {
  readonly #splitter: BoundarySplitter;
  #open: Open | null = null;
  #count = 0;
  #isClosed = false;

  /**
   * `contentId`: of the package itself when it lies in another one. It means its root (RFC 2387 section 3.4), so the
   * first part answers to it unless it has an id of its own.
   */
  constructor(
    boundary: string,
    private readonly tally: Tally,
    private readonly prefix = 'part ',
    private readonly depth = 1,
    private readonly contentId: string | null = null,
  ) {
    this.#splitter = new BoundarySplitter(boundary);
  }

  /** Reads a chunk and adds what it settles to `out`; the problem at which reading stops, or null. */
  push(chunk: Uint8Array, out: PartEvent[]): Problem | null {
    return this.#follow(this.#splitter.push(chunk), out);
  }

  /** Nothing more comes: a level that is not closed is a problem. */
  end(out: PartEvent[]): Problem | null {
    const fault = this.#follow(this.#splitter.end(), out);
    if (fault !== null) return fault;
    const inside = this.depth === 1 ? null : this.prefix.replace(/\.$/, '');
    if (!this.#isClosed && this.#count === 0) {
      return broken(`The ${inside ?? 'package'} does not contain its boundary.`, inside);
    }
    if (!this.#isClosed) {
      return broken('The package breaks off: its closing boundary is missing.', this.#label());
    }
    return this.#count > 0 ? null : broken(`The ${inside ?? 'package'} has no part.`, inside);
  }

  #label(): string {
    return `${this.prefix}${this.#count}`;
  }

  #follow(pieces: readonly Piece[], out: PartEvent[]): Problem | null {
    for (const piece of pieces) {
      const fault = piece.kind === 'bytes' ? this.#take(piece.bytes, out) : this.#turn(piece.kind, out);
      if (fault !== null) return fault;
    }
    return null;
  }

  /** A boundary: the part before it ends, and another begins or none. */
  #turn(kind: 'boundary' | 'closing', out: PartEvent[]): Problem | null {
    const fault = this.#endPart(out);
    if (fault !== null) return fault;
    if (kind === 'closing') {
      this.#isClosed = true;
      return null;
    }
    this.#count++;
    this.tally.parts++;
    const { maxParts } = this.tally.limits;
    if (this.tally.parts > maxParts) return overLimit(`The package has more than ${maxParts} parts.`);
    this.#open = { kind: 'header', bytes: new Uint8Array() };
    return null;
  }

  #take(bytes: Uint8Array, out: PartEvent[]): Problem | null {
    const open = this.#open;
    // What precedes the first boundary is for readers of mail that knows no multipart.
    if (open === null) return null;
    if (open.kind === 'leaf') return this.#give(open, open.decoder.push(bytes), bytes, out);
    if (open.kind === 'package') return open.inner.push(bytes, out);
    const header = open.bytes.length === 0 ? bytes : Buffer.concat([open.bytes, bytes]);
    const end = headerEnd(header);
    const { maxHeaderBytes } = this.tally.limits;
    // Without its end a header may still be followed by the two bytes of an empty line.
    if ((end?.header ?? header.length - 2) > maxHeaderBytes) {
      return overLimit(
        `The header of ${this.#label()} is longer than ${maxHeaderBytes} bytes.`,
        this.#label(),
      );
    }
    if (end === null) {
      // A copy: the chunk belongs to whoever gave it.
      open.bytes = Uint8Array.from(header);
      return null;
    }
    const fault = this.#begin(header.subarray(0, end.header), out);
    const body = header.subarray(end.body);
    return fault ?? (body.length === 0 ? null : this.#take(body, out));
  }

  /** The header is whole: now it is known what the part is. */
  #begin(header: Uint8Array, out: PartEvent[]): Problem | null {
    const label = this.#label();
    const read = readPartHead(header, label);
    if (!read.ok) return read.problems[0]!;
    this.tally.warnings.push(...read.problems);
    const { type, head: own } = read.value;
    const fault = this.#claimId(own);
    if (fault !== null) return fault;
    const inherits = own.contentId === null && this.#count === 1 && this.contentId !== null;
    const head = inherits ? { ...own, contentId: this.contentId } : own;
    if (type.essence.startsWith('multipart/')) {
      const boundary = boundaryOf(type);
      if (boundary === null) {
        return broken(`The package ${label} names no boundary, or one that is not allowed.`, label);
      }
      if (this.depth >= this.tally.limits.maxDepth) {
        return overLimit(`Packages lie more than ${this.tally.limits.maxDepth} deep in each other.`, label);
      }
      const inner = new MultipartLevel(boundary, this.tally, `${label}.`, this.depth + 1, head.contentId);
      this.#open = { kind: 'package', head, inner };
      return null;
    }
    const decoder = makeDecoder(head.encoding);
    if (decoder === null) {
      return broken(
        `The bytes of ${head.name} are in "${head.encoding}", which is no known encoding.`,
        head.name,
      );
    }
    this.#open = { kind: 'leaf', head, decoder, bytes: 0, is7bit: true };
    out.push({ kind: 'open', head });
    return null;
  }

  #claimId({ contentId, name }: PartHead): Problem | null {
    if (contentId === null) return null;
    const id = canonicalId(contentId);
    if (this.tally.ids.has(id)) return broken(`Two parts have the Content-ID <${contentId}>.`, name);
    this.tally.ids.add(id);
    return null;
  }

  #give(
    leaf: Open & { kind: 'leaf' },
    content: Uint8Array | null,
    raw: Uint8Array,
    out: PartEvent[],
  ): Problem | null {
    const { head } = leaf;
    if (content === null) {
      return broken(`The bytes of ${head.name} are not the "${head.encoding}" they claim.`, head.name);
    }
    if (head.encoding === '7bit' && leaf.is7bit) leaf.is7bit = !raw.some((byte) => byte > 0x7f);
    leaf.bytes += content.length;
    this.tally.bytes += content.length;
    const { maxPartBytes, maxBytes } = this.tally.limits;
    if (leaf.bytes > maxPartBytes)
      return overLimit(`The part unpacks to more than ${maxPartBytes} bytes.`, head.name);
    if (this.tally.bytes > maxBytes)
      return overLimit(`The package unpacks to more than ${maxBytes} bytes.`, head.name);
    if (content.length > 0) out.push({ kind: 'bytes', bytes: content });
    return null;
  }

  #endPart(out: PartEvent[]): Problem | null {
    const open = this.#open;
    this.#open = null;
    if (open === null) return null;
    if (open.kind === 'package') return open.inner.end(out);
    if (open.kind === 'leaf') return this.#endLeaf(open, out);
    // The empty line of a part without content ends with the line break that belongs to the boundary.
    if (open.bytes.at(-1) !== 0x0a)
      return broken(`The header of ${this.#label()} has no end.`, this.#label());
    const fault = this.#begin(open.bytes, out);
    return fault ?? this.#endPart(out);
  }

  #endLeaf(leaf: Open & { kind: 'leaf' }, out: PartEvent[]): Problem | null {
    const fault = this.#give(leaf, leaf.decoder.end(), new Uint8Array(), out);
    if (fault !== null) return fault;
    if (!leaf.is7bit) {
      this.tally.warnings.push(loose('The part claims "7bit", but has bytes above 127.', leaf.head.name));
    }
    out.push({ kind: 'close' });
    return null;
  }
}
