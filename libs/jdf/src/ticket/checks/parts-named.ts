import type { Severity } from '#libs/kernel';
import type { Findings } from '../../codec/index.js';
import { keysOf } from '../../elements/part.js';
import {
  explainMiss,
  freeInAmounts,
  type Partition,
  partsNamed,
  resolveOne,
  resolveParts,
  spellingOf,
  wordsOf,
} from '../../partition/index.js';
import { childElements, type XmlElement } from '../../xml/index.js';
import type { TicketCheck } from './ticket-check.js';

const CODE = 'JDF_PARTITION';

/**
 * JDF Part, PartUsage, for links, references and amounts: what their Part elements name is there and
 * is clear. In a spawned ticket, whose resources may hold only some of their parts, and in audits, which tell of what
 * was, it is a warning.
 */
export const partsInUse: TicketCheck = {
  number: 6,
  name: 'parts named by links and references',
  run(ticket, findings) {
    const severity: Severity = ticket.spawned ? 'warning' : 'error';
    const inUse = new Set(ticket.nodes.flatMap(({ links }) => links.map(({ element }) => element)));
    for (const { element, target } of ticket.references) {
      if (findings.full) return;
      // What goes by another name has a check of its own.
      const name = /^(.+)(?:Link|Ref)$/.exec(element.local)?.[1];
      if (target === undefined || target.local !== name) continue;
      if (element.local.endsWith('Ref')) checkReference(element, target, severity, findings);
      else checkLink(element, target, inUse.has(element) ? severity : 'warning', findings);
    }
  },
};

function checkLink(link: XmlElement, resource: XmlElement, severity: Severity, findings: Findings): void {
  const free = freeInAmounts(resource.local);
  const parts = childElements(link, 'Part');
  tellMisses(parts, resource, severity, findings);
  tellTwice(parts, `${link.name} names the same part twice.`, findings);
  for (const pool of childElements(link, 'AmountPool')) {
    const amounts = childElements(pool, 'PartAmount');
    const within = parts.length === 0 ? undefined : placesOf(link, resource, free);
    for (const amount of amounts) {
      const found = tellMisses(childElements(amount, 'Part'), resource, severity, findings, free);
      if (within === undefined || found.length === 0 || within.size === 0) continue;
      if (found.some(({ chain }) => within.has(chain.at(-1)!))) continue;
      const hint = `Give ${link.name} a Part for it, or leave the amount out.`;
      findings.warning(CODE, amount, `${link.name} does not mean the part of this amount.`, hint);
    }
    const named = amounts.flatMap((amount) => childElements(amount, 'Part').slice(0, 1));
    tellTwice(named, 'Two PartAmount elements are for the same part.', findings);
  }
}

/** The parts that a link means, with all around them. */
function placesOf(
  link: XmlElement,
  resource: XmlElement,
  free: ReadonlySet<string>,
): ReadonlySet<XmlElement> {
  const { found } = resolveParts(resource, partsNamed(link), { free });
  return new Set(found.flatMap(({ chain }) => chain));
}

/** A reference stands for one thing. */
function checkReference(
  reference: XmlElement,
  resource: XmlElement,
  severity: Severity,
  findings: Findings,
): void {
  const parts = childElements(reference, 'Part');
  if (parts.length > 1) {
    const hint = 'A reference names one part at most: write one reference for each.';
    findings.tell(severity, CODE, parts[1]!, `${reference.name} has several Part elements.`, hint);
  }
  tellMisses(parts, resource, severity, findings);
  if (parts.length > 1 || LISTS.has(resource.local)) return;
  const [selection = {}] = partsNamed(reference);
  const [one, other] = resolveParts(resource, [selection], { most: ENOUGH }).found;
  if (other === undefined || resolveOne(resource, selection) !== undefined) return;
  const hint = `Name one of them by a Part, such as ${wordsOf(one!.keys)} or ${wordsOf(other!.keys)}.`;
  findings.tell(
    severity,
    CODE,
    reference,
    `${reference.name} leads to several parts of ${resource.name}.`,
    hint,
  );
}

// Their parts in order are one thing: the pages of a run, the sheets of a layout, what is gathered to a component.
const LISTS: ReadonlySet<string> = new Set(['Component', 'Layout', 'RunList']);

/** Tells of each Part that names nothing, and answers some of what the others mean. */
function tellMisses(
  parts: readonly XmlElement[],
  resource: XmlElement,
  severity: Severity,
  findings: Findings,
  free?: ReadonlySet<string>,
): readonly Partition[] {
  if (parts.length === 0) return [];
  const { found, missing } = resolveParts(resource, parts.map(keysOf), { free, most: ENOUGH });
  for (const miss of missing) {
    const { message, hint } = explainMiss(resource.name, miss);
    findings.tell(severity, CODE, parts[miss.selection]!, message, hint);
  }
  return found;
}

// To know whether there is any, and whether there are several.
const ENOUGH = 2;

function tellTwice(parts: readonly XmlElement[], message: string, findings: Findings): void {
  const seen = new Map<string, XmlElement>();
  for (const part of parts) {
    const spelling = spellingOf(keysOf(part));
    const first = seen.get(spelling);
    if (first === undefined) seen.set(spelling, part);
    else findings.warning(CODE, part, message, `The first is that of line ${first.line}: leave one out.`);
  }
}
