import type { Plan, PlanStep, Plant } from '#libs/craft';
import { convertDocument, kindOf, noXmlLimits, parseXml, type XmlDocument } from '#libs/jdf';
import type { StoredDocument } from '../../ports.js';
import type { TicketFile } from '../../state/ticket.js';
import type { StepScope } from '../process-type.js';
import type { IdBook } from './ids.js';

/** The document as a JDF tree: itself, or what an XJDF says in JDF; an order has no such tree. */
export function jdfOf(original: StoredDocument | null): XmlDocument | null {
  if (original === null) return null;
  const parsed = parseXml(original.bytes, noXmlLimits);
  if (!parsed.ok) return null;
  const kind = kindOf(parsed.value);
  if (!kind.ok || (kind.value !== 'jdf' && kind.value !== 'xjdf')) return null;
  const converted = convertDocument(parsed.value, 'jdf');
  return converted.ok ? converted.value.doc : null;
}

/** Addresses of the artwork in a JSON order; a ticket of the standard keeps its own. */
export function filesOf(file: TicketFile, original: StoredDocument | null): readonly string[] {
  if (original === null || file.ticket.kind !== 'order') return [];
  try {
    const order: unknown = JSON.parse(new TextDecoder().decode(original.bytes));
    const files = (order as { files?: unknown }).files;
    return Array.isArray(files) ? files.filter((url) => typeof url === 'string') : [];
  } catch {
    // An order that is no JSON was never accepted; the ticket then simply names no files.
    return [];
  }
}

/** What each step of a plan needs for its ticket: files, plant and identifiers, the same for all steps. */
export function scopes(
  plan: Plan,
  plant: Plant | null,
  file: TicketFile,
  original: StoredDocument | null,
  ids: IdBook,
): (step: PlanStep) => StepScope {
  const files = filesOf(file, original);
  return (step) => ({
    plan,
    step,
    plant,
    uses: file.uses.filter((use) => use.stepId === step.id),
    files,
    idOf: (key) => ids.idOf(key),
  });
}
