import type { PackagePart } from './package.js';

/** What a part is to the order of a package: a message, a ticket, or anything else. */
export type PartKind = 'message' | 'ticket' | 'content';

/** Media types of the open standard; the two of its second generation are from memory. */
const BY_MEDIA_TYPE: Readonly<Record<string, PartKind>> = {
  'application/vnd.cip4-jmf+xml': 'message',
  'application/vnd.cip4-xjmf+xml': 'message',
  'application/vnd.cip4-jdf+xml': 'ticket',
  'application/vnd.cip4-xjdf+xml': 'ticket',
};

/** Types under which software sends tickets without knowing better; then the root element decides. */
const UNTOLD: ReadonlySet<string> = new Set([
  'text/xml',
  'application/xml',
  'application/octet-stream',
  'text/plain',
]);

/** What a part is: by its media type, else by the root element where the type tells nothing. */
export function kindOfPart(part: PackagePart): PartKind {
  return BY_MEDIA_TYPE[part.mediaType] ?? (UNTOLD.has(part.mediaType) ? kindByRoot(part.bytes) : 'content');
}

/** Media type by a file's name, for containers that do not say (ZIP). Endings: the standard's, and the usual ones. */
export function mediaTypeByName(name: string): string {
  const ending = /\.([a-z0-9]+)$/i.exec(name)?.[1]?.toLowerCase() ?? '';
  return BY_ENDING[ending] ?? 'application/octet-stream';
}

const BY_ENDING: Readonly<Record<string, string>> = {
  jdf: 'application/vnd.cip4-jdf+xml',
  jmf: 'application/vnd.cip4-jmf+xml',
  xjdf: 'application/vnd.cip4-xjdf+xml',
  xjmf: 'application/vnd.cip4-xjmf+xml',
  xml: 'application/xml',
  pdf: 'application/pdf',
  png: 'image/png',
  tif: 'image/tiff',
  tiff: 'image/tiff',
  jpg: 'image/jpeg',
  jpeg: 'image/jpeg',
};

const START_BYTES = 4096;

/** Looks for the first element only; whether the document is sound is for the ticket reader to say. */
function kindByRoot(bytes: Uint8Array): PartKind {
  const start = bytes.subarray(0, START_BYTES);
  const text = new TextDecoder(encodingOf(start)).decode(start);
  const bare = text.replace(/<!--.*?-->|<\?.*?\?>|<!DOCTYPE[^>]*>/gs, '');
  const name = /<(?:[^\s<>/:]+:)?([A-Za-z_][\w.-]*)/.exec(bare)?.[1];
  if (name === 'JMF' || name === 'XJMF') return 'message';
  return name === 'JDF' || name === 'XJDF' ? 'ticket' : 'content';
}

/** By byte order mark or, without one, by where the zero byte of the first `<` lies (XML 1.0, appendix F). */
function encodingOf(start: Uint8Array): string {
  const [first, second] = start;
  if ((first === 0xff && second === 0xfe) || second === 0) return 'utf-16le';
  return (first === 0xfe && second === 0xff) || first === 0 ? 'utf-16be' : 'utf-8';
}
