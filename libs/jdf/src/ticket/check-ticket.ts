import type { Problem } from '#libs/kernel';
import { Findings } from '../codec/index.js';
import type { XmlDocument } from '../xml/index.js';
import { ticketChecks, ticketOf } from './checks/index.js';
import { kindOf } from './kind.js';

/**
 * What is wrong with a JDF ticket that no schema can find: each finding with line, XPath and remedy, errors and warnings.
 * Foreign elements and capability descriptions are passed over. Empty for a sound ticket; for a document that is no JDF,
 * why it is none. `checkDocument` checks structure and values too.
 */
export function checkTicket(doc: XmlDocument): readonly Problem[] {
  const kind = kindOf(doc);
  if (!kind.ok) return kind.problems;
  if (kind.value !== 'jdf') return [];
  const findings = new Findings(doc, { missing: 'JDF_MISSING', wrong: 'JDF_VALUE' });
  const ticket = ticketOf(doc);
  for (const check of ticketChecks) {
    if (findings.full) break;
    check.run(ticket, findings);
  }
  return findings.problems;
}
