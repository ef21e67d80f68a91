import {
  attributeOf,
  convertDocument,
  type Generation,
  kindOf,
  type Lost,
  nodesOf,
  parseXml,
  type XmlDocument,
  type XmlElement,
  xmlLimitsFrom,
} from '#libs/jdf';
import { done, error, type Problem, type Result, refuse } from '#libs/kernel';

/** One document in the generation that was asked for, with what it lost. */
export interface ConvertedDocument {
  readonly doc: XmlDocument;
  readonly lost: readonly Lost[];
}

/** Errors: KIND_UNKNOWN for what is no XML, and those of reading it. */
export function readXml(bytes: Uint8Array): Result<XmlDocument> {
  return MAY_BE_XML.has(bytes[0] ?? 0) ? parseXml(bytes, xmlLimitsFrom(process.env)) : refuse(notOne);
}

/**
 * A document in the other generation, or one node of a JDF ticket: `node` is its ID or JobPartID. Errors: those of
 * `readXml` and `convertDocument`, and STEP_UNKNOWN.
 */
export function convertBytes(
  bytes: Uint8Array,
  to: Generation,
  node: string | undefined,
): Result<ConvertedDocument> {
  const parsed = readXml(bytes);
  if (!parsed.ok) return parsed;
  if (node === undefined) return convertDocument(parsed.value, to);
  const found = nodeOf(parsed.value, node);
  return found.ok ? convertDocument(parsed.value, to, { node: found.value }) : found;
}

/** The node with an ID, else with a JobPartID, of a JDF ticket. */
function nodeOf(doc: XmlDocument, wanted: string): Result<XmlElement> {
  const kind = kindOf(doc);
  if (!kind.ok) return kind;
  const nodes = kind.value === 'jdf' ? [...nodesOf(doc.root)] : [];
  for (const name of ['ID', 'JobPartID']) {
    const found = nodes.filter((node) => attributeOf(node, name) === wanted);
    if (found.length === 1) return done(found[0]!);
  }
  const ids = nodes.flatMap((node) => attributeOf(node, 'ID') ?? []);
  const hint = ids.length === 0 ? 'Only a JDF has nodes.' : `There are: ${ids.slice(0, 20).join(', ')}.`;
  return refuse(error('STEP_UNKNOWN', `No one node has the ID or JobPartID "${wanted}".`, { hint }));
}

/** White space, "<", and the first bytes of byte order marks. */
const MAY_BE_XML: ReadonlySet<number> = new Set([0x09, 0x0a, 0x0d, 0x20, 0x3c, 0xef, 0xfe, 0xff]);

const notOne: Problem = error('KIND_UNKNOWN', 'This is no JDF, JMF, XJDF or XJMF document.', {
  hint: 'An order in JSON is planned as it is.',
});
