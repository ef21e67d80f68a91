import type { XmlElement } from '../../../xml/index.js';
import type { Overflow, Source } from '../../source.js';
import type { Direction, Draft } from '../../translate.js';
import type { Job } from '../job.js';
import type { Placer } from '../placer.js';

export interface Newer {
  readonly job: Job;
  readonly direction: Direction;
  readonly placer: Placer;
}

/** Writes what is built differently in the newer generation and gives back what is left for the common way. */
export type Rule = (newer: Newer, source: Source, out: Draft, overflow: Overflow) => Source;

/** Children of a name, inline or as references, with the resource that a reference leads to. */
export function subs(
  newer: Newer,
  source: Source,
  name: string,
): { child: XmlElement; target: XmlElement }[] {
  return source.children.flatMap((child) => {
    if (child.uri !== source.el.uri) return [];
    if (child.local === name) return [{ child, target: child }];
    if (child.local !== `${name}Ref`) return [];
    const rRef = child.attributes.find(({ local }) => local === 'rRef');
    const target = rRef && newer.job.target(rRef.value);
    return target === undefined ? [] : [{ child, target }];
  });
}
