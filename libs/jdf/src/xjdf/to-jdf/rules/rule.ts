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

/** The source without some of its children and attributes. */
export function without(
  source: Source,
  children: readonly XmlElement[],
  attributes: readonly string[] = [],
): Source {
  return {
    ...source,
    attributes: source.attributes.filter(({ local, uri }) => uri !== '' || !attributes.includes(local)),
    children: source.children.filter((child) => !children.includes(child)),
  };
}

export function named(source: Source, ...names: readonly string[]): XmlElement[] {
  return source.children.filter(({ local, uri }) => uri === source.el.uri && names.includes(local));
}
