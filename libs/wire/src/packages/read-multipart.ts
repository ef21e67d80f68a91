import { done, type Problem, type Result, refuse } from '#libs/kernel';
import { readMediaType } from './media-type.js';
import { canonicalId, headerEnd, readHeader } from './multipart-header.js';
import { MultipartLevel, type PartEvent, Tally } from './multipart-level.js';
import {
  broken,
  overLimit,
  type Package,
  type PackageLimits,
  packageLimits,
  refuseBroken,
} from './package.js';
import { boundaryOf, type PartHead } from './part-head.js';
import { checkOrder } from './part-order.js';
import { type OpenSink, type PartSink, toMemory } from './part-sink.js';

/** A part of a package that was read as a stream, with what its sink made of its content. */
export interface StreamedPart<T> {
  readonly head: PartHead;
  readonly content: T;
}

/**
 * Reads multipart/related as it comes in (RFC 2046 section 5.1, RFC 2387; part rules: JDF specification, "MIME
 * packaging"): one part after the other, each into the sink that `open` chooses for it; packages within it give their
 * parts in their place. `contentType` is the HTTP header; null when the bytes are a file that begins with its own header
 * (.mjm, .mjd). The parts are in the order of the package, the one that `start` names before them.
 * Refusals: PACKAGE_BROKEN, PACKAGE_LIMIT, each with the part's label as its path, as soon as they are certain; what the
 * sinks had was discarded then, and no more is read. A source or sink that throws goes on throwing.
 */
export async function streamMultipart<T>(
  source: AsyncIterable<Uint8Array>,
  contentType: string | null,
  open: OpenSink<T>,
  limits: PackageLimits = packageLimits,
): Promise<Result<readonly StreamedPart<T>[]>> {
  const reader = new PackageReader(contentType, limits);
  const parts: StreamedPart<T>[] = [];
  const now: { head?: PartHead; sink?: PartSink<T> } = {};
  const follow = async (events: readonly PartEvent[]): Promise<void> => {
    for (const event of events) {
      if (event.kind === 'open') {
        now.head = event.head;
        now.sink = await open(event.head);
      } else if (event.kind === 'bytes') await now.sink!.write(event.bytes);
      else {
        const { sink } = now;
        now.sink = undefined;
        parts.push({ head: now.head!, content: await sink!.close() });
      }
    }
  };
  try {
    for await (const chunk of source) {
      const events: PartEvent[] = [];
      const fault = reader.push(chunk, events);
      await follow(events);
      if (fault !== null) return refuse(fault);
    }
    const events: PartEvent[] = [];
    const fault = reader.end(events);
    await follow(events);
    return fault === null ? rootFirst(parts, reader) : refuse(fault);
  } finally {
    await now.sink?.discard();
  }
}

/** Reads multipart/related into memory, and checks the order of its parts. Refusals as `streamMultipart`. */
export async function readMultipart(
  source: AsyncIterable<Uint8Array>,
  contentType: string | null,
  limits: PackageLimits = packageLimits,
): Promise<Result<Package>> {
  const read = await streamMultipart(source, contentType, toMemory, limits);
  if (!read.ok) return read;
  const parts = read.value.map(({ head, content }) => ({
    name: head.name,
    contentId: head.contentId,
    mediaType: head.mediaType,
    bytes: content,
  }));
  const ordered = checkOrder({ container: 'multipart', parts });
  return ordered.ok ? done(ordered.value, read.problems) : ordered;
}

/** The part that `start` names (RFC 2387 section 3.2) goes first; without it, the order stays as sent. */
function rootFirst<T>(
  parts: readonly StreamedPart<T>[],
  { start, warnings }: PackageReader,
): Result<readonly StreamedPart<T>[]> {
  if (start === undefined) return done(parts, warnings);
  const wanted = canonicalId(start.replace(/^<|>$/g, ''));
  const root = parts.find(({ head }) => head.contentId !== null && canonicalId(head.contentId) === wanted);
  if (root === undefined) return refuseBroken(`The package starts with <${wanted}>, but has no such part.`);
  return done([root, ...parts.filter((part) => part !== root)], warnings);
}

/** The outermost level, with the header before it where the package is a file. */
class PackageReader {
  readonly #tally: Tally;
  #level: MultipartLevel | Problem | null;
  #header: Uint8Array = new Uint8Array();
  #bytes = 0;
  start: string | undefined;

  constructor(
    contentType: string | null,
    private readonly limits: PackageLimits,
  ) {
    this.#tally = new Tally(limits);
    this.#level = contentType === null ? null : this.#levelOf(contentType);
  }

  get warnings(): readonly Problem[] {
    return this.#tally.warnings;
  }

  push(chunk: Uint8Array, out: PartEvent[]): Problem | null {
    // Base64 is a third larger than what it means; white space, preamble and epilogue have no other bound.
    const { maxBytes, maxParts, maxHeaderBytes } = this.limits;
    const most = maxBytes * 2 + maxParts * maxHeaderBytes;
    this.#bytes += chunk.length;
    if (this.#bytes > most) return overLimit(`The package is larger than ${most} bytes.`);
    if (this.#level instanceof MultipartLevel) return this.#level.push(chunk, out);
    if (this.#level !== null) return this.#level;
    this.#header = Buffer.concat([this.#header, chunk]);
    const end = headerEnd(this.#header.subarray(0, maxHeaderBytes));
    if (end === null) return this.#header.length > maxHeaderBytes ? noHeader() : null;
    const written = readHeader(this.#header.subarray(0, end.header))?.get('content-type');
    this.#level = written === undefined ? noHeader() : this.#levelOf(written);
    return this.#level instanceof MultipartLevel
      ? this.#level.push(this.#header.subarray(end.body), out)
      : this.#level;
  }

  end(out: PartEvent[]): Problem | null {
    if (this.#level instanceof MultipartLevel) return this.#level.end(out);
    return this.#level ?? noHeader();
  }

  #levelOf(contentType: string): MultipartLevel | Problem {
    const type = readMediaType(contentType);
    if (type?.essence !== 'multipart/related') {
      return broken('The package is not of the type multipart/related.');
    }
    this.start = type.parameters.get('start');
    const boundary = boundaryOf(type);
    return boundary === null
      ? broken('The package names no boundary, or one that is not allowed.')
      : new MultipartLevel(boundary, this.#tally);
  }
}

function noHeader(): Problem {
  return broken('The file does not begin with the header of a package (MIME-Version, Content-Type).');
}
