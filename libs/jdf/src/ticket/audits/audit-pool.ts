import { done, type Result, refuse } from '#libs/kernel';
import { Findings, likeIn } from '../../codec/index.js';
import {
  appended,
  childElements,
  elementsLike,
  firstChild,
  replaceElements,
  text as textNode,
  withChildren,
  type XmlDocument,
  type XmlElement,
  type XmlNode,
} from '../../xml/index.js';
import { type Audit, type AuditKind, auditCodecs } from './kinds.js';

/** The audits of a node that are of a kind known here, in document order. Errors: JDF_MISSING, JDF_VALUE. */
export function readAudits(doc: XmlDocument, node: XmlElement = doc.root): Result<readonly Audit[]> {
  const findings = new Findings(doc, { missing: 'JDF_MISSING', wrong: 'JDF_VALUE' });
  const pool = firstChild(node, 'AuditPool');
  const audits = (pool === undefined ? [] : childElements(pool)).flatMap((el): Audit[] => {
    const kind = el.local as AuditKind;
    const value = Object.hasOwn(auditCodecs, kind) ? auditCodecs[kind].read(el, findings) : undefined;
    // The codec was chosen by the kind, so the value is of that kind.
    return value === undefined ? [] : [{ kind, ...value } as Audit];
  });
  return findings.problems.length > 0 ? refuse(...findings.problems) : done(audits);
}

/**
 * The document with audits added at the end of a node's AuditPool, which is made if it is not there. What was there
 * stays as it was. IDs are the caller's and must be new to the document.
 */
export function appendAudits(
  doc: XmlDocument,
  audits: readonly Audit[],
  node: XmlElement = doc.root,
): XmlDocument {
  const made = audits.flatMap((audit): XmlNode[] => [textNode('\n    '), likeIn(node, writeAudit(audit))]);
  const pool = firstChild(node, 'AuditPool');
  if (pool !== undefined) {
    const { children: old } = pool;
    const last = old.at(-1);
    // Keep the line end before the end tag where it is.
    const closing = last?.kind === 'text' ? [last] : [textNode('\n  ')];
    const kept = last?.kind === 'text' ? old.slice(0, -1) : old;
    return replaceElements(doc, new Map([[pool, withChildren(pool, [...kept, ...made, ...closing])]]));
  }
  const fresh = appended(elementsLike(node)('AuditPool', {}, made), textNode('\n  '));
  return replaceElements(
    doc,
    new Map([[node, withChildren(node, [textNode('\n  '), fresh, ...node.children])]]),
  );
}

function writeAudit({ kind, ...audit }: Audit): XmlElement {
  return auditCodecs[kind].write(audit as never);
}
