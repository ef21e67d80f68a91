import type { Problem } from '#libs/kernel';
import { readJmf } from './jmf/index.js';
import { checkTicket, type DocumentKind, kindOf } from './ticket/index.js';
import { attributeOf, type XmlDocument } from './xml/index.js';

export interface DocumentVerdict {
  readonly kind: DocumentKind | 'unknown';
  /** As the root states it. */
  readonly version: string | null;
  readonly problems: readonly Problem[];
}

/**
 * What kind of document it is and what is wrong with it. Tickets and messages of the older generation are checked;
 * of XJDF and XJMF only root and namespace. A message of a type not served here is no fault of the document: a warning.
 */
export function checkDocument(doc: XmlDocument): DocumentVerdict {
  const version = attributeOf(doc.root, 'Version') ?? null;
  const kind = kindOf(doc);
  if (!kind.ok) return { kind: 'unknown', version, problems: kind.problems };
  if (kind.value === 'jdf') return { kind: 'jdf', version, problems: checkTicket(doc) };
  if (kind.value === 'jmf') return { kind: 'jmf', version, problems: checkMessages(doc) };
  return { kind: kind.value, version, problems: [] };
}

function checkMessages(doc: XmlDocument): readonly Problem[] {
  const jmf = readJmf(doc);
  if (!jmf.ok) return jmf.problems;
  return jmf.value.messages
    .flatMap(({ problems }) => problems)
    .map((problem) => (problem.code === 'JMF_TYPE' ? { ...problem, severity: 'warning' } : problem));
}
