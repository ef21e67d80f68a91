import {
  type Audit,
  type AuditLink,
  attributeOf,
  childElements,
  descendants,
  findById,
  firstChild,
  kindOf,
  parseXml,
  readAudits,
  type XmlDocument,
  type XmlElement,
} from '#libs/jdf';
import { done, error, type Instant, type Result, refuse } from '#libs/kernel';

/** A phase as the device writes it down at the end. */
export interface ReturnedPhase {
  readonly start: Instant;
  readonly end?: Instant;
  readonly status: string;
  readonly statusDetails?: string;
  /** Undefined where the phase does not count. */
  readonly good?: number;
  readonly waste?: number;
}

/** What was used of one thing: all of it, and the lost part where the ticket tells them apart. */
export interface ReturnedUse {
  /** Element name of the resource: Media, Ink … */
  readonly name: string;
  readonly mediaType?: string;
  /** Our name of the stock item, where the device kept it. */
  readonly productId?: string;
  readonly separation?: string;
  /** In sheets or plates; ink in kilograms. */
  readonly actual: number;
  readonly waste?: number;
}

export interface ReturnedTicket {
  readonly jobId: string;
  readonly jobPartId: string;
  /** The last ProcessRun's; undefined where there is none. */
  readonly endStatus?: string;
  readonly end?: Instant;
  readonly phases: readonly ReturnedPhase[];
  readonly uses: readonly ReturnedUse[];
}

/**
 * What the ticket that a device gives back says of its root node. Errors: those of reading XML, KIND_UNKNOWN and
 * XML_NAMESPACE, JDF_MISSING and JDF_VALUE in an audit.
 */
export function returnedAudits(xml: string | Uint8Array): Result<ReturnedTicket> {
  const parsed = parseXml(xml);
  if (!parsed.ok) return parsed;
  const doc = parsed.value;
  const kind = kindOf(doc);
  if (!kind.ok) return kind;
  if (kind.value !== 'jdf')
    return refuse(error('KIND_UNKNOWN', 'What came back is no ticket.', { path: `/${doc.root.name}` }));
  const read = readAudits(doc);
  if (!read.ok) return read;
  const run = read.value.filter((audit) => audit.kind === 'ProcessRun').at(-1);
  return done({
    jobId: attributeOf(doc.root, 'JobID') ?? '',
    jobPartId: attributeOf(doc.root, 'JobPartID') ?? '',
    endStatus: run?.endStatus,
    end: run?.end,
    phases: read.value.flatMap((audit) => (audit.kind === 'PhaseTime' ? [phase(audit, outputsOf(doc))] : [])),
    uses: read.value.flatMap((audit) =>
      audit.kind === 'ResourceAudit' ? usesIn(doc, audit.links?.[0]) : [],
    ),
  });
}

/** IDs of what the node makes for the next step: amounts of anything else in a phase are no counts of pieces. */
function outputsOf(doc: XmlDocument): ReadonlySet<string> {
  const pool = firstChild(doc.root, 'ResourceLinkPool');
  const links = pool === undefined ? [] : childElements(pool);
  return new Set(
    links
      .filter((link) => attributeOf(link, 'Usage') === 'Output')
      .flatMap((link) => attributeOf(link, 'rRef') ?? []),
  );
}

function phase(audit: Extract<Audit, { kind: 'PhaseTime' }>, outputs: ReadonlySet<string>): ReturnedPhase {
  const { start, end, status, statusDetails } = audit;
  const link = audit.links?.find(({ usage, rRef }) => usage === 'Output' && outputs.has(rRef));
  const { good, waste } = link === undefined ? {} : amounts(link);
  return { start, end, status, statusDetails, good, waste };
}

function usesIn(doc: XmlDocument, link: AuditLink | undefined): readonly ReturnedUse[] {
  if (link === undefined || link.usage !== 'Input') return [];
  const resource = findById(doc, link.rRef);
  const separations = new Set(
    [...(link.parts ?? []), ...(link.partAmounts ?? []).flatMap(({ parts }) => parts ?? [])].flatMap(
      (part) => part.Separation ?? [],
    ),
  );
  const factor = link.name === 'Ink' ? kilogramsPer(resource && attributeOf(resource, 'Unit')) : 1;
  return [...(separations.size === 0 ? [undefined] : separations)].flatMap((separation): ReturnedUse[] => {
    const { good, waste } = amounts(link, separation);
    if (good === undefined && waste === undefined) return [];
    return [
      {
        name: link.name,
        mediaType: resource && attributeOf(resource, 'MediaType'),
        productId: resource && productOf(resource, separation),
        separation,
        actual: ((good ?? 0) + (waste ?? 0)) * factor,
        waste: waste === undefined ? undefined : waste * factor,
      },
    ];
  });
}

/** Our tickets state ink in kilograms; without a unit it is grams, as weights of the standard are (from memory). */
function kilogramsPer(unit: string | undefined): number {
  return unit === 'kg' ? 1 : 0.001;
}

function productOf(resource: XmlElement, separation: string | undefined): string | undefined {
  const leaf =
    separation === undefined
      ? undefined
      : [...descendants(resource)].find((el) => attributeOf(el, 'Separation') === separation);
  return (leaf && attributeOf(leaf, 'ProductID')) ?? attributeOf(resource, 'ProductID');
}

/** Good and waste of a link; an amount that is not told apart counts as good. */
function amounts(link: AuditLink, separation?: string): { good?: number; waste?: number } {
  if (link.partAmounts === undefined) return { good: link.actualAmount ?? link.amount };
  let good: number | undefined;
  let waste: number | undefined;
  for (const { actualAmount, amount, parts = [] } of link.partAmounts) {
    const counted = actualAmount ?? amount;
    const names = parts.flatMap((part) => part.Separation ?? []);
    if (
      counted === undefined ||
      (separation !== undefined && names.length > 0 && !names.includes(separation))
    )
      continue;
    // The standard names kinds of waste too, such as WasteMakeReady: whatever is not Good is lost.
    const lost = parts.some((part) => part.Condition !== undefined && part.Condition !== 'Good');
    if (lost) waste = (waste ?? 0) + counted;
    else good = (good ?? 0) + counted;
  }
  return { good, waste };
}
