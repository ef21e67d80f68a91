import { type Findings, parseDateTime } from '../../codec/index.js';
import { attributeOf, childElements, type XmlElement } from '../../xml/index.js';
import type { TicketCheck } from './ticket-check.js';

/** Audits stand in the order of time, end after they begin and point back (JDF TimeStamp, Start, End, refID). */
export const audits: TicketCheck = {
  number: 15,
  name: 'audits',
  run({ nodes }, findings) {
    for (const { element } of nodes) {
      for (const pool of childElements(element, 'AuditPool')) checkPool(childElements(pool), findings);
    }
  },
};

const time = (el: XmlElement, name: string) => parseDateTime(attributeOf(el, name) ?? '');

function checkPool(pool: readonly XmlElement[], findings: Findings): void {
  const seen = new Set<string>();
  const ids = new Set(pool.map((audit) => attributeOf(audit, 'ID')));
  let latest = Number.NEGATIVE_INFINITY;
  for (const audit of pool) {
    const at = time(audit, 'TimeStamp') ?? latest;
    if (at < latest) {
      const hint = 'Audits are written one after another; none is put in between.';
      findings.warning('JDF_AUDIT', audit, `${audit.name} is older than the audit before it.`, hint);
    }
    latest = Math.max(latest, at);
    const [start, end] = [time(audit, 'Start'), time(audit, 'End')];
    if (start !== undefined && end !== undefined && end < start) {
      findings.warning('JDF_AUDIT', audit, `${audit.name} ends before it begins.`, 'Correct Start or End.');
    }
    const corrects = attributeOf(audit, 'refID');
    if (corrects !== undefined && ids.has(corrects) && !seen.has(corrects)) {
      const hint = 'An audit corrects one that stands before it.';
      findings.warning('JDF_AUDIT', audit, `refID="${corrects}" of ${audit.name} does not point back.`, hint);
    }
    const id = attributeOf(audit, 'ID');
    if (id !== undefined) seen.add(id);
  }
}
