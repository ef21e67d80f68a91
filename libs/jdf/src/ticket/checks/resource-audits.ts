import { type Findings, parseDateTime } from '../../codec/index.js';
import { attributeOf, childElements, type XmlElement } from '../../xml/index.js';
import { validAudits } from './look-up/phases.js';
import type { Ticket, TicketCheck } from './ticket-check.js';

/**
 * A ResourceAudit has one link to the new resource, or that and one to the old, in this order. Which is the new one: the one with an actual amount; the one that can still be changed, where the other
 * is Locked; the one that a Created audit says was made later.
 */
export const resourceAudits: TicketCheck = {
  number: 15,
  name: 'records of use',
  run(ticket, findings) {
    for (const { element } of ticket.nodes) {
      const valid = validAudits(element);
      const created = createdAt(valid);
      for (const audit of valid) {
        if (audit.local === 'ResourceAudit') checkAudit(ticket, audit, created, findings);
      }
    }
  },
};

/** When resources were made, in milliseconds since 1970, by the IDs that Created audits name. */
function createdAt(audits: readonly XmlElement[]): ReadonlyMap<string, number> {
  return new Map(
    audits.flatMap((audit): [string, number][] => {
      const id = audit.local === 'Created' ? attributeOf(audit, 'ref')?.trim() : undefined;
      const at = parseDateTime(attributeOf(audit, 'TimeStamp') ?? '');
      return id === undefined || at === undefined ? [] : [[id, at]];
    }),
  );
}

function checkAudit(
  { ids }: Ticket,
  audit: XmlElement,
  created: ReadonlyMap<string, number>,
  findings: Findings,
): void {
  const [first, second, third] = childElements(audit).filter(({ local }) => local.endsWith('Link'));
  if (first === undefined || second === undefined) return;
  if (first.local !== second.local) {
    const message = `${audit.name} has links ${first.local} and ${second.local}.`;
    const hint = 'Its two links are the new and the old state of one resource; write an audit for each.';
    findings.warning('JDF_AUDIT', audit, message, hint);
    return;
  }
  if (third !== undefined) {
    const hint = 'It holds the link to the new resource and that to the old one.';
    findings.warning('JDF_AUDIT', third, `${audit.name} has a third link.`, hint);
  }
  const wrong = SIGNS.find(
    ({ isNewer }) => isNewer(second, first, ids, created) && !isNewer(first, second, ids, created),
  );
  if (wrong === undefined) return;
  const message = `${audit.name} tells of the old resource before the new one.`;
  findings.warning('JDF_AUDIT', audit, message, `Put the link ${wrong.which} first.`);
}

/** What shows that a link leads to the newer resource of two. */
interface Sign {
  readonly which: string;
  isNewer(
    link: XmlElement,
    other: XmlElement,
    ids: ReadonlyMap<string, XmlElement>,
    created: ReadonlyMap<string, number>,
  ): boolean;
}

const idOf = (link: XmlElement): string => attributeOf(link, 'rRef')?.trim() ?? '';

const isLocked = (resource: XmlElement): boolean => attributeOf(resource, 'Locked')?.trim() === 'true';

const SIGNS: readonly Sign[] = [
  { which: 'with ActualAmount', isNewer: hasActual },
  {
    which: 'to the resource that is not Locked',
    isNewer(link, other, ids) {
      const [here, there] = [ids.get(idOf(link)), ids.get(idOf(other))];
      return here !== undefined && there !== undefined && isLocked(there) && !isLocked(here);
    },
  },
  {
    which: 'to the resource that was Created later',
    isNewer: (link, other, _ids, created) =>
      (created.get(idOf(link)) ?? Number.NaN) > (created.get(idOf(other)) ?? Number.NaN),
  },
];

function hasActual(link: XmlElement): boolean {
  const amounts = childElements(link, 'AmountPool').flatMap((pool) => childElements(pool, 'PartAmount'));
  return [link, ...amounts].some((el) => attributeOf(el, 'ActualAmount') !== undefined);
}
