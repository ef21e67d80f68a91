import type { XmlElement } from '../../../xml/index.js';
import type { Overflow, Source } from '../../source.js';
import type { Direction, Draft } from '../../translate.js';
import type { Ticket } from '../ticket.js';

export interface Older {
  readonly ticket: Ticket;
  readonly direction: Direction;
}

/** Writes what is built differently in the older generation and gives back what is left for the common way. */
export type Rule = (older: Older, source: Source, out: Draft, overflow: Overflow) => Source;

/** Children of some names, in the namespace of their parent. */
export function named(source: Source, ...names: readonly string[]): XmlElement[] {
  return source.children.filter(({ local, uri }) => uri === source.el.uri && names.includes(local));
}
