import type { Problem } from '#libs/kernel';
import { checkStructure, checkUniqueIds, jdfRules, type StructureRules, xjdfRules } from './check/index.js';
import { Findings } from './codec/index.js';
import { checkSent, readJmf } from './jmf/index.js';
import { checkTicket, type DocumentKind, kindOf } from './ticket/index.js';
import { checkXjdf } from './xjdf/index.js';
import { attributeOf, type XmlDocument } from './xml/index.js';

export interface DocumentVerdict {
  readonly kind: DocumentKind | 'unknown';
  /** As the root states it. */
  readonly version: string | null;
  readonly problems: readonly Problem[];
}

/**
 * What kind of document it is and what is wrong with it: structure against the standard's tables for all four, and what
 * no schema can find. A message of a type not served here is no fault of the document: a warning.
 */
export function checkDocument(doc: XmlDocument): DocumentVerdict {
  const version = attributeOf(doc.root, 'Version') ?? null;
  const kind = kindOf(doc);
  if (!kind.ok) return { kind: 'unknown', version, problems: kind.problems };
  return { kind: kind.value, version, problems: problemsOf(doc, kind.value) };
}

function problemsOf(doc: XmlDocument, kind: DocumentKind): readonly Problem[] {
  if (kind === 'jdf') return [...structureOf(doc, jdfRules()), ...checkTicket(doc)];
  if (kind === 'jmf') {
    const structure = structureOf(doc, jdfRules());
    return [...structure, ...checkMessages(doc, structure)];
  }
  return [...structureOf(doc, xjdfRules()), ...(kind === 'xjdf' ? checkXjdf(doc) : checkSent(doc))];
}

function structureOf(doc: XmlDocument, rules: StructureRules): readonly Problem[] {
  const findings = new Findings(doc, { missing: 'JDF_MISSING', wrong: 'JDF_VALUE' });
  checkStructure(doc.root, rules, findings);
  checkUniqueIds(doc, findings);
  return findings.problems;
}

/** What the reader says of an element that the tables have found wrong is the same fault again. */
function checkMessages(doc: XmlDocument, structure: readonly Problem[]): readonly Problem[] {
  const told = new Set(structure.map(({ path }) => path));
  const jmf = readJmf(doc);
  if (!jmf.ok) return jmf.problems.filter(({ path }) => !told.has(path));
  const unread = jmf.value.messages
    .flatMap(({ problems }) => problems)
    // Unknown content and IDs that occur twice the tables tell of already.
    .filter(({ severity, code, path }) => severity === 'error' && code !== 'JDF_ID_DOUBLE' && !told.has(path))
    .map((problem): Problem => (problem.code === 'JMF_TYPE' ? { ...problem, severity: 'warning' } : problem));
  return [...unread, ...checkSent(doc)];
}
