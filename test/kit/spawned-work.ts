/** Work on parts of a random ticket, done elsewhere: spawned, edited, merged back. */
import { merge, spawn, writeXml, type XmlDocument } from '#libs/jdf';
import { schedulesOf, type TicketPlan, type Work } from './random-tickets.js';
import { edited } from './ticket-edits.js';
import { parsedXml, valueIn } from './value-in.js';

const START = Date.UTC(2026, 4, 3, 8);
const agent = { name: 'test' };

/** As it comes back from elsewhere: written and read again. */
const sent = (doc: XmlDocument): XmlDocument => parsedXml(writeXml(doc));

/** In which order the pieces come back. */
export type Order = (count: number) => readonly number[];
export const forwards: Order = (count) => [...Array(count).keys()];
export const backwards: Order = (count) => [...forwards(count)].reverse();

/** Spawns all work, does it out there, and merges it in an order; `see` is shown every ticket on the way. */
export function workedOutside(
  plan: TicketPlan,
  doc: XmlDocument,
  work: readonly Work[],
  order: Order,
  see: (doc: XmlDocument) => void,
): XmlDocument {
  let parent = doc;
  const children: XmlDocument[] = [];
  for (const one of work) {
    const { nodeId, spawnId, parts } = one;
    const readWrite = schedulesOf(plan, one);
    const options = { at: START, agent, spawnId, readWrite, ...(parts.length > 0 ? { parts } : {}) };
    const out = valueIn(spawn(parent, { nodeId }, options));
    see(out.parent);
    see(out.child);
    parent = out.parent;
    const done = one.edits.reduce((at, edit) => edited(at, one, edit, true), sent(out.child));
    children.push(workedOutside(plan, done, one.inner, order, see));
  }
  for (const [turn, i] of order(work.length).entries()) {
    parent = valueIn(merge(parent, sent(children[i]!), { at: START + turn * 1000, agent }));
    see(parent);
  }
  return parent;
}
