import type { StoredDocument } from '#libs/flow';
import { encodeXml, parseXml, replaceElements, withAttributes, type XmlElement } from '#libs/jdf';
import type { IdSource, Instant } from '#libs/kernel';
import {
  gathered,
  mediaTypeByName,
  type Package,
  type PackagePart,
  partReferences,
  resolveReference,
  ticketIn,
  writeMultipart,
  writeZip,
} from '#libs/wire';

/** The ticket as it would leave alone. */
export interface LeavingTicket {
  readonly text: string;
  readonly generation: 'jdf' | 'xjdf';
}

export interface TicketPackage {
  readonly contentType: string;
  readonly bytes: Uint8Array;
}

/**
 * A ticket as it leaves, with the files it refers to that are kept here: those of the package in which it came as
 * `documentPart`. In a multipart
 * they are named by `cid:`, in a ZIP by their path, whatever they were named by when they came. A ticket that came alone
 * makes a package of one part.
 */
export async function ticketPackage(
  { text: ticket, generation }: LeavingTicket,
  original: StoredDocument | null,
  documentPart: string | null,
  container: Package['container'],
  { ids, now }: { ids: IdSource; now: Instant },
): Promise<TicketPackage> {
  const came = original === null ? null : await ticketIn(original.bytes, original.mediaType, documentPart);
  const within = came?.ok ? came.value.within : null;
  const name = `ticket.${generation}`;
  const { text, files } =
    within === null
      ? { text: Buffer.from(ticket), files: [] }
      : withFiles(ticket, within.pack, within.part, container, name);
  const root = {
    name,
    contentId: `ticket.${ids.next()}@sidelay`,
    mediaType: mediaTypeByName(name),
    content: text,
  };
  const parts = [root, ...files.map(({ bytes, ...file }) => ({ ...file, content: bytes }))];
  if (container === 'zip')
    return { contentType: 'application/zip', bytes: await gathered(writeZip(parts, now)) };
  const { contentType, body } = writeMultipart({ parts, encoding: 'base64' }, ids);
  return { contentType, bytes: await gathered(body) };
}

/** The parts that the ticket refers to, and the ticket with their addresses in the new package. */
function withFiles(
  ticket: string,
  pack: Package,
  from: PackagePart,
  container: Package['container'],
  ticketName: string,
): { text: Uint8Array; files: readonly PackagePart[] } {
  const parsed = parseXml(ticket);
  if (!parsed.ok) return { text: Buffer.from(ticket), files: [] };
  const files = new Map<PackagePart, PackagePart>();
  const names = new Set([ticketName]);
  const changed = new Map<XmlElement, XmlElement>();
  for (const { el, attribute, url } of partReferences(parsed.value)) {
    const found = resolveReference(pack, from, url);
    // What was missing when it came is missing still.
    if (!found.ok) continue;
    const part = found.value;
    const file = files.get(part) ?? renamed(part, files.size + 1, names);
    files.set(part, file);
    const address = container === 'zip' ? encodeURI(file.name) : `cid:${file.contentId}`;
    const isTheSame = container === pack.container && file.name === part.name && part.contentId !== null;
    if (!isTheSame) changed.set(el, withAttributes(changed.get(el) ?? el, { [attribute]: address }));
  }
  const document = replaceElements(parsed.value, changed);
  return { text: changed.size === 0 ? Buffer.from(ticket) : encodeXml(document), files: [...files.values()] };
}

/** The part under a name that no other has, and with an id by which it can be named. */
function renamed(part: PackagePart, n: number, names: Set<string>): PackagePart {
  const isTaken = names.has(part.name.toLowerCase());
  const name = isTaken ? `${n}-${part.name.split('/').at(-1)}` : part.name;
  names.add(name.toLowerCase());
  return { ...part, name, contentId: part.contentId ?? `file.${n}@sidelay` };
}
