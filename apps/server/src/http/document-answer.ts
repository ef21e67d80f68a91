import { exportTicket, type StoredDocument, type TicketFile } from '#libs/flow';
import { convertDocument, kindOf, parseXml, writeXml } from '#libs/jdf';
import { ticketPackage } from '../export/ticket-package.js';
import { returnedTickets } from '../intake/returned-tickets.js';
import type { Runtime } from '../runtime.js';
import { accepts, containerOf, prefersXjdf } from './accept.js';
import { okOr } from './answers.js';
import { HttpProblem } from './problem.js';

export interface DocumentAnswer {
  readonly contentType: string;
  readonly body: Buffer;
}

type Generation = 'jdf' | 'xjdf';

const mediaTypeOf = (generation: Generation): string => `application/vnd.cip4-${generation}+xml`;

/**
 * A ticket as it leaves: in the generation that Accept wants more, alone or as a package. What was rejected has no plan to
 * write and is given as it came, or converted where another generation is asked for and it can be read. Throws HttpProblem:
 * NOT_ACCEPTABLE, and the refusals of exporting.
 */
export async function documentAnswer(
  runtime: Runtime,
  file: TicketFile,
  accept: string,
): Promise<DocumentAnswer> {
  const { store, version, clock, ports } = runtime;
  const original = await store.document(file.ticket.documentId);
  const ticket = await ports.ticketDocument(file);
  if (file.ticket.plan === null) return rejected(original, ticket, accept);
  const now = clock.now();
  const returned = await returnedTickets(store, file);
  const exported = okOr(exportTicket(file, ticket, { now, version, plant: ports.plant, returned }));
  const generation = prefersXjdf(accept) ? 'xjdf' : 'jdf';
  const text = generation === 'xjdf' ? asXjdf(exported) : exported;
  const container = containerOf(accept);
  if (container === null) return inText(generation, text);
  const { documentPart } = file.ticket;
  const pack = await ticketPackage({ text, generation }, original, documentPart, container, {
    ids: ports.ids,
    now,
  });
  return { contentType: pack.contentType, body: Buffer.from(pack.bytes) };
}

const inText = (generation: Generation, text: string): DocumentAnswer => ({
  contentType: `${mediaTypeOf(generation)}; charset=utf-8`,
  body: Buffer.from(text),
});

/** The ticket in the newer generation; what that cannot say stays in the JDF. */
function asXjdf(exported: string): string {
  const converted = convertDocument(okOr(parseXml(exported)), 'xjdf');
  return writeXml(okOr(converted).doc);
}

function rejected(
  original: StoredDocument | null,
  ticket: StoredDocument | null,
  accept: string,
): DocumentAnswer {
  const contentType = original?.mediaType ?? 'application/octet-stream';
  if (accepts(accept, contentType)) return { contentType, body: Buffer.from(original?.bytes ?? []) };
  const wanted = (['jdf', 'xjdf'] as const).filter((one) => accepts(accept, mediaTypeOf(one)));
  const generation = wanted.length === 2 && prefersXjdf(accept) ? 'xjdf' : wanted[0];
  const made = generation === undefined || ticket === null ? null : converted(ticket, generation);
  if (made !== null) return made;
  const came = contentType.split(';')[0];
  const detail = `The ticket was rejected and is only to be had as it came, as ${came}; Accept allows that or */*.`;
  throw new HttpProblem('NOT_ACCEPTABLE', detail);
}

/** The document in a generation, as it came where it is of that; null where it cannot be read as a ticket. */
function converted({ bytes }: StoredDocument, generation: Generation): DocumentAnswer | null {
  const parsed = parseXml(bytes);
  const kind = parsed.ok ? kindOf(parsed.value) : parsed;
  if (!parsed.ok || !kind.ok) return null;
  if (kind.value === generation) return { contentType: mediaTypeOf(generation), body: Buffer.from(bytes) };
  if (kind.value !== 'jdf' && kind.value !== 'xjdf') return null;
  const made = convertDocument(parsed.value, generation);
  return made.ok ? inText(generation, writeXml(made.value.doc)) : null;
}
