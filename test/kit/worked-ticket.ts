/** What a device does to the ticket of a step before it gives it back: its own log, status and counts, and a note. */

import type { Phase } from '#libs/flow';
import {
  type Audit,
  appendAudits,
  attributeOf,
  childElements,
  elementsLike,
  findById,
  firstChild,
  replaceElements,
  withAttributes,
  withChildren,
  writeXml,
  type XmlDocument,
  type XmlElement,
} from '#libs/jdf';
import { parsedXml } from './value-in.js';

/** The words by which a test knows the note again. */
export const DEVICE_NOTE = 'Dried overnight in the rack';

/** The ticket as it comes back: completed, with these phases told once more and a run over them. */
export function workedTicket(sent: string, phases: readonly Phase[]): string {
  const doc = parsedXml(sent);
  const changed = new Map<XmlElement, XmlElement>();
  for (const link of childElements(firstChild(doc.root, 'ResourceLinkPool')!)) {
    if (attributeOf(link, 'Usage') !== 'Output') continue;
    const made = findById(doc, attributeOf(link, 'rRef')!)!;
    changed.set(made, withAttributes(made, { Status: 'Available' }));
    if (attributeOf(link, 'Amount') !== undefined) {
      changed.set(link, withAttributes(link, { ActualAmount: attributeOf(link, 'Amount') }));
    }
  }
  return writeXml(withLog(noted(replaceElements(doc, changed)), phases));
}

function noted(doc: XmlDocument): XmlDocument {
  const note = elementsLike(doc.root)('Comment', { Name: 'Instruction' }, [
    { kind: 'text', value: DEVICE_NOTE },
  ]);
  const root = withAttributes(doc.root, { Status: 'Completed' });
  return { ...doc, root: withChildren(root, [note, ...root.children]) };
}

function withLog(doc: XmlDocument, phases: readonly Phase[]): XmlDocument {
  const end = Math.max(...phases.map((phase) => phase.end ?? phase.start));
  const told = phases.map(
    ({ start, end: ended, status, deviceId }): Audit => ({
      kind: 'PhaseTime',
      timeStamp: ended ?? start,
      agentName: 'the device',
      start,
      end: ended ?? start,
      status: status as Extract<Audit, { kind: 'PhaseTime' }>['status'],
      devices: [{ deviceId }],
    }),
  );
  const run: Audit = {
    kind: 'ProcessRun',
    timeStamp: end,
    agentName: 'the device',
    start: phases[0]!.start,
    end,
    endStatus: 'Completed',
  };
  return appendAudits(doc, [...told, run]);
}
