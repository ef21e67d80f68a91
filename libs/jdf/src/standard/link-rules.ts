import { linesOf, type VersionRange, versionsOf } from './notation.js';
import { everyProcessTakes, processLinks } from './process-links.js';

/** A link that a process may have. */
export interface LinkRule {
  /** Name of the resource; `any` for one of any name. */
  readonly name: string;
  readonly usage: 'Input' | 'Output';
  /** ProcessUsage; '' for a link without one. */
  readonly role: string;
  readonly least: number;
  readonly most: number;
  readonly versions: VersionRange | null;
}

export interface ProcessRule {
  readonly process: string;
  readonly versions: VersionRange | null;
  readonly links: readonly LinkRule[];
}

const LINK = /^(\w+)(?:\((\w+)\))?([?*+]|\{1,2\})?(?:\{([\d.]*-[\d.]*)\})?$/;
const TIMES: Readonly<Record<string, readonly [least: number, most: number]>> = {
  '': [1, 1],
  '?': [0, 1],
  '*': [0, Number.POSITIVE_INFINITY],
  '+': [1, Number.POSITIVE_INFINITY],
  '{1,2}': [1, 2],
};

/** All processes of the standard by name; `Product` with them, though it is none. */
export const processRules: ReadonlyMap<string, ProcessRule> = readTable();

/** Whether any process may take a resource of this name, whatever it does. */
export function isTakenByAll(name: string): boolean {
  return (everyProcessTakes as readonly string[]).includes(name);
}

function readTable(): ReadonlyMap<string, ProcessRule> {
  return new Map(
    linesOf(processLinks)
      .map(readRow)
      .map((rule) => [rule.process, rule]),
  );
}

function readRow(row: string): ProcessRule {
  const [head, inputs, outputs] = row.split(/ : | > ?/) as [string, string, string];
  const [, process, versions] = /^(\w+)(?:\{(.*)\})?$/.exec(head)!;
  const links = [...readLinks(inputs, 'Input'), ...readLinks(outputs, 'Output')];
  return { process: process!, versions: versionsOf(versions), links };
}

function readLinks(text: string, usage: LinkRule['usage']): LinkRule[] {
  return text.split(' ').flatMap((word) => {
    const found = LINK.exec(word);
    if (found === null) return [];
    const [, name, role = '', times = '', versions] = found;
    const [least, most] = TIMES[times]!;
    return [{ name: name!, usage, role, least, most, versions: versionsOf(versions) }];
  });
}
