import type { Severity } from '#libs/kernel';
import { type Findings, splitTokens } from '../../codec/index.js';
import type { XmlElement } from '../../xml/index.js';
import { isNode } from '../node.js';
import type { Ticket, TicketCheck } from './ticket-check.js';

/** How much it matters that an attribute leads nowhere, in a whole ticket and in a part that was sent away. */
interface Reference {
  readonly attribute: string;
  readonly severity: Severity;
  /** What it leads to may have stayed behind in the ticket that the part came from. */
  readonly inSpawned: Severity | null;
}

/** Attributes that hold IDs. Source: the official JDF 1.9 schema, attributes of type IDREF and IDREFS. */
const ALL: readonly Reference[] = [
  { attribute: 'rRef', severity: 'error', inSpawned: 'warning' },
  { attribute: 'rSubRef', severity: 'error', inSpawned: 'warning' },
  { attribute: 'rRefs', severity: 'error', inSpawned: null },
  { attribute: 'jRef', severity: 'error', inSpawned: null },
  { attribute: 'refID', severity: 'error', inSpawned: null },
  { attribute: 'ContentRef', severity: 'error', inSpawned: 'warning' },
  { attribute: 'ContentRefs', severity: 'error', inSpawned: 'warning' },
  { attribute: 'ContentDataRefs', severity: 'error', inSpawned: 'warning' },
  { attribute: 'KnockoutRefs', severity: 'error', inSpawned: 'warning' },
  // What was made or changed once may have been taken out since.
  { attribute: 'ref', severity: 'warning', inSpawned: null },
];

const REFERENCES: ReadonlyMap<string, Reference> = new Map(ALL.map((one) => [one.attribute, one]));

/** Names of the attributes that hold IDs of other elements. */
export const referenceAttributes: ReadonlySet<string> = new Set(REFERENCES.keys());

/** JDF rRef, jRef, refID: each reference leads to something in the document. */
export const references: TicketCheck = {
  number: 1,
  name: 'references',
  run(ticket, findings) {
    for (const el of ticket.elements) {
      if (findings.full) return;
      for (const { local, uri, value } of el.attributes) {
        const reference = uri === '' ? REFERENCES.get(local) : undefined;
        if (reference !== undefined) checkReference(ticket, el, reference, value, findings);
      }
    }
  },
};

function checkReference(
  ticket: Ticket,
  el: XmlElement,
  reference: Reference,
  value: string,
  findings: Findings,
): void {
  const { attribute } = reference;
  if (!isReference(el, attribute)) return;
  const severity = ticket.spawned ? reference.inSpawned : reference.severity;
  for (const id of splitTokens(value)) {
    const target = ticket.ids.get(id);
    if (target !== undefined) checkKind(el, attribute, target, findings);
    else if (severity !== null) {
      const message = `${attribute}="${id}" of ${el.name} leads nowhere.`;
      findings.tell(severity, 'JDF_DANGLING', el, message, `Nothing has the ID "${id}".`);
    }
  }
}

/** In messages within a ticket refID names a message, which is not in it. */
function isReference(el: XmlElement, attribute: string): boolean {
  return attribute !== 'refID' || !['Acknowledge', 'Response', 'Signal'].includes(el.local);
}

function checkKind(el: XmlElement, attribute: string, target: XmlElement, findings: Findings): void {
  if (attribute !== 'jRef' || isNode(target)) return;
  const message = `jRef of ${el.name} leads to a ${target.name}.`;
  findings.error('JDF_LINK', el, message, 'jRef names a JDF node.');
}
