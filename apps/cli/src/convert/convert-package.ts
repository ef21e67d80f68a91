import { posix } from 'node:path';
import {
  encodeXml,
  type Generation,
  type Lost,
  replaceElements,
  withAttributes,
  type XmlElement,
} from '#libs/jdf';
import { done, type Result, refuse } from '#libs/kernel';
import {
  kindOfPart,
  mediaTypeByName,
  type Package,
  type PackagePart,
  partReferences,
  resolveReference,
  withinPart,
} from '#libs/wire';
import { type ConvertedDocument, convertBytes } from './convert-bytes.js';

export interface ConvertedPackage {
  /** In the order in which they came. */
  readonly parts: readonly PackagePart[];
  /** Places begin with the name that the part came under: `part!path`. */
  readonly lost: readonly Lost[];
}

/** A part on its way: as it came, as it goes, and the document in it where it was converted. */
interface Moving {
  readonly from: PackagePart;
  readonly to: PackagePart;
  readonly converted: ConvertedDocument | null;
}

/**
 * A package with every ticket and message in it converted, and all other parts as they came. Parts get the ending and media
 * type of what they are now, and what refers to them finds them again in the container that is written. A message that does
 * not exist in the other generation stays as it came and is listed. `node` as in `convertBytes`. Errors: those of converting
 * a ticket, with the name of its part.
 */
export function convertPackage(
  pack: Package,
  to: Generation,
  container: Package['container'],
  node: string | undefined,
): Result<ConvertedPackage> {
  const names = new Set<string>();
  const moving: Moving[] = [];
  const lost: Lost[] = [];
  for (const [n, from] of pack.parts.entries()) {
    const kind = kindOfPart(from);
    const made =
      kind === 'content' ? null : convertBytes(from.bytes, to, kind === 'ticket' ? node : undefined);
    if (made?.ok === false && kind === 'ticket') {
      return refuse(...made.problems.map((problem) => withinPart(from, problem)));
    }
    const converted = made?.ok ? made.value : null;
    if (made?.ok === false) {
      const what = `stays as it came: ${made.problems.map(({ message }) => message).join(' ')}`;
      lost.push({ path: `${from.name}!`, what, line: null });
    }
    for (const one of converted?.lost ?? []) lost.push({ ...one, path: `${from.name}!${one.path}` });
    moving.push({ from, to: placed(from, n + 1, converted !== null, to, container, names), converted });
  }
  return done({ parts: moving.map((one) => written(one, moving, pack, container)), lost });
}

/** The part under its new name, which no other has, and with an id by which it can be named. */
function placed(
  from: PackagePart,
  n: number,
  isConverted: boolean,
  to: Generation,
  container: Package['container'],
  names: Set<string>,
): PackagePart {
  // The name of a part of a multipart is a label: as a path in a ZIP only its last step is safe.
  const plain = container === 'zip' ? from.name : posix.basename(from.name);
  const wanted = isConverted ? withEnding(plain, from, to) : plain;
  const isTaken = names.has(wanted.toLowerCase());
  const name = isTaken ? posix.join(posix.dirname(wanted), `${n}-${posix.basename(wanted)}`) : wanted;
  names.add(name.toLowerCase());
  const mediaType = isConverted ? mediaTypeByName(name) : from.mediaType;
  return { ...from, name, mediaType, contentId: from.contentId ?? `part.${n}@sidelay` };
}

function withEnding(name: string, part: PackagePart, to: Generation): string {
  const isMessage = kindOfPart(part) === 'message';
  const ending = `${to === 'xjdf' ? 'x' : ''}${isMessage ? 'jmf' : 'jdf'}`;
  return `${name.replace(/\.(x?j[dm]f|xml)$/i, '')}.${ending}`;
}

/** The part with its content as it goes: addresses of other parts lead to where those are now. */
function written(
  { from, to, converted }: Moving,
  moving: readonly Moving[],
  pack: Package,
  container: Package['container'],
): PackagePart {
  if (converted === null) return to;
  const changed = new Map<XmlElement, XmlElement>();
  for (const { el, attribute, url } of partReferences(converted.doc)) {
    const found = resolveReference(pack, from, url);
    const target = found.ok ? moving.find((one) => one.from === found.value) : undefined;
    // What was missing when it came is missing still.
    if (target === undefined) continue;
    const address = addressOf(target.to, to, container);
    if (address !== url) changed.set(el, withAttributes(changed.get(el) ?? el, { [attribute]: address }));
  }
  return { ...to, bytes: encodeXml(replaceElements(converted.doc, changed)) };
}

function addressOf(target: PackagePart, from: PackagePart, container: Package['container']): string {
  if (container === 'multipart') return `cid:${target.contentId}`;
  return encodeURI(posix.relative(posix.dirname(from.name), target.name));
}
