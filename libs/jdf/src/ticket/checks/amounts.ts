import { oncePer } from '#libs/kernel';
import { type Findings, parseNumber } from '../../codec/index.js';
import {
  type LinkAmountKind,
  linkAmounts,
  partAttribute,
  partitionLeaves,
  partsNamed,
} from '../../partition/index.js';
import { attributeOf, childElements, type XmlElement } from '../../xml/index.js';
import type { TicketCheck, TicketLink, TicketNode } from './ticket-check.js';

const KINDS: readonly LinkAmountKind[] = ['Amount', 'ActualAmount', 'MinAmount', 'MaxAmount'];

/** Processes that make one sheet of each that they take (from memory); others cut, gather or bind. */
const ONE_OF_ONE: ReadonlySet<string> = new Set([
  'ConventionalPrinting',
  'DigitalPrinting',
  'Embossing',
  'Folding',
  'Laminating',
  'Varnishing',
]);

/** What links state of amounts agrees (JDF ResourceLink Amount, ActualAmount, PartAmount). */
export const amounts: TicketCheck = {
  number: 17,
  name: 'amounts',
  run({ named, nodes }, findings) {
    for (const [name, those] of named) {
      if (name === 'PartAmount' || name.endsWith('Link')) for (const el of those) checkSign(el, findings);
    }
    for (const node of nodes) {
      for (const link of node.links) checkTotal(link, findings);
      const [only] = node.processes;
      if (node.processes.length === 1 && only !== undefined && ONE_OF_ONE.has(only))
        checkYield(node, findings);
    }
  },
};

function checkSign(el: XmlElement, findings: Findings): void {
  for (const kind of KINDS) {
    const value = parseNumber(attributeOf(el, kind) ?? '');
    if (value === undefined || value >= 0) continue;
    findings.warning('JDF_COUNT', el, `${kind} of ${el.name} is less than 0.`, 'State 0 or more.');
  }
}

/** What is stated for the whole is the total of what is stated for the parts, waste included or not. */
function checkTotal({ element, resource }: TicketLink, findings: Findings): void {
  if (resource === undefined) return;
  for (const kind of ['Amount', 'ActualAmount'] as const) {
    const whole = parseNumber(attributeOf(element, kind) ?? '');
    if (whole === undefined) continue;
    checkUnits(element, resource, kind, findings);
    if (childElements(element, 'AmountPool').length === 0) continue;
    const { all } = linkAmounts(element, resource, kind);
    if (isNear(whole, all.total) || (all.good > 0 && isNear(whole, all.good))) continue;
    const message = `${kind}="${whole}" of ${element.name}, but its parts make ${all.total}.`;
    findings.warning('JDF_COUNT', element, message, 'Correct the total, or leave it out.');
  }
}

function checkUnits(link: XmlElement, resource: XmlElement, kind: string, findings: Findings): void {
  const units = unitsOf(resource);
  if (units.size < 2 || partsNamed(link).length === 1) return;
  const message = `${kind} of ${link.name} is one figure for parts in ${[...units].join(' and ')}.`;
  findings.warning('JDF_COUNT', link, message, 'State the amount of each part in a PartAmount.');
}

/**
 * Good and waste came out of what went in; only where both are counted in the same unit. What is planned may differ: the
 * input is corrected to what the step before has made before the plan of this one is.
 */
function checkYield({ links }: TicketNode, findings: Findings): void {
  const takes = links.filter((link) => link.usage === 'Input' && isSheet(link));
  const makes = links.filter((link) => link.usage === 'Output' && link.name === 'Component');
  const units = new Set(
    [...takes, ...makes].flatMap(({ resource }) => (resource ? [...unitsOf(resource)] : [])),
  );
  if (units.size !== 1) return;
  const [taken, made] = [totalOf(takes), totalOf(makes)];
  if (taken === undefined || made === undefined || made <= taken || isNear(made, taken)) return;
  const message = `Of ${taken} that went in, ${made} came out (ActualAmount, good and waste).`;
  findings.warning('JDF_COUNT', makes[0]!.element, message, 'Correct what was taken or what was made.');
}

const isSheet = ({ name, role }: TicketLink): boolean =>
  (name === 'Media' || name === 'Component') && (role === '' || role === 'Input');

/** Undefined as soon as one link states nothing, or counts the sides of a sheet one by one. */
function totalOf(links: readonly TicketLink[]): number | undefined {
  let total = 0;
  for (const { element, resource } of links) {
    if (resource === undefined || isBySide(element)) return undefined;
    const { all } = linkAmounts(element, resource, 'ActualAmount');
    if (all.stated === 0) return undefined;
    total += all.total;
  }
  return links.length === 0 ? undefined : total;
}

function isBySide(link: XmlElement): boolean {
  return childElements(link, 'AmountPool')
    .flatMap((pool) => childElements(pool, 'PartAmount'))
    .some((el) =>
      partsNamed(el).some(({ Side, Separation }) => Side !== undefined || Separation !== undefined),
    );
}

/** Units of the parts of a resource; what states none is counted in pieces. */
const unitsOf = oncePer(
  (resource: XmlElement): ReadonlySet<string> =>
    new Set(partitionLeaves(resource).map((leaf) => partAttribute(leaf, 'Unit')?.trim() || 'Countable')),
);

const isNear = (one: number, other: number): boolean =>
  Math.abs(one - other) <= 1e-6 * Math.max(1, Math.abs(one), Math.abs(other));
