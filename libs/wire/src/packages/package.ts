import { error, type Problem, type Result, refuse, warning } from '#libs/kernel';

/** One piece of a package, as it was sent. `name` is a label for people, never a path. */
export interface PackagePart {
  /** In a ZIP the entry's name, by which relative addresses find it. */
  readonly name: string;
  /** Without angle brackets; null when the sender gave none. */
  readonly contentId: string | null;
  /** Lower case, without parameters. */
  readonly mediaType: string;
  readonly bytes: Uint8Array;
}

/** A piece of a package that is written: its content may come as a stream, which is read once and never held whole. */
export type PartToSend = Omit<PackagePart, 'bytes'> & {
  readonly content: Uint8Array | AsyncIterable<Uint8Array>;
};

/**
 * A ticket with what belongs to it. The first part is the message (JMF, XJMF) if there is one, else the ticket (JDF,
 * XJDF): the JDF specification orders a multipart/related so, and a ZIP is put into that order when it is read.
 */
export interface Package {
  readonly container: 'multipart' | 'zip';
  readonly parts: readonly PackagePart[];
}

export interface PackageLimits {
  /** Parts and packages inside, on all levels together. */
  readonly maxParts: number;
  readonly maxHeaderBytes: number;
  /** Of one part unpacked. */
  readonly maxPartBytes: number;
  /** Of all parts unpacked. */
  readonly maxBytes: number;
  /** Packages within packages; the outermost is the first. */
  readonly maxDepth: number;
  /** Unpacked over packed; a package below `ratioFreeBytes` unpacked cannot hurt and is not measured. */
  readonly maxRatio: number;
  readonly ratioFreeBytes: number;
}

/** Ours, except that base64 and multipart/related follow RFC 2045 and RFC 2387. */
export const packageLimits: PackageLimits = {
  maxParts: 1000,
  maxHeaderBytes: 8192,
  maxPartBytes: 256_000_000,
  maxBytes: 256_000_000,
  maxDepth: 4,
  maxRatio: 20,
  ratioFreeBytes: 1_000_000,
};

/** `part` is the label that the problem's path begins with: `part!path`. */
export function broken(message: string, part: string | null = null): Problem {
  return error('PACKAGE_BROKEN', message, { path: part });
}

/** A limit that the package is over; the message names it. */
export function overLimit(message: string, part: string | null = null): Problem {
  return error('PACKAGE_LIMIT', message, { path: part });
}

/** Not as it should be, but nothing is in doubt. */
export function loose(message: string, part: string): Problem {
  return warning('PACKAGE_FORM', message, { path: part });
}

/** `broken` as a refusal. */
export function refuseBroken<T>(message: string, part: string | null = null): Result<T> {
  return refuse(broken(message, part));
}

/** `overLimit` as a refusal. */
export function refuseLimit<T>(message: string, part: string | null = null): Result<T> {
  return refuse(overLimit(message, part));
}
