import { parseDateTime } from '../codec/index.js';
import {
  attributeOf,
  childElements,
  text,
  withChildren,
  type XmlElement,
  type XmlNode,
} from '../xml/index.js';
import { sameContent } from './same-content.js';

/** The audits of one pool that another lacks; each is looked for once, so that real repetitions stay. */
export function lackingAudits(
  some: readonly XmlElement[],
  others: readonly XmlElement[],
  same: (a: XmlElement, b: XmlElement) => boolean,
): XmlElement[] {
  const left = [...others];
  return some.filter((audit) => {
    const at = left.findIndex((other) => same(audit, other));
    if (at >= 0) left.splice(at, 1);
    return at < 0;
  });
}

/** Whether an audit is a later state of another: the same ID, or the same phase since closed. */
export function sameAudit(a: XmlElement, b: XmlElement): boolean {
  if (a.local !== b.local || a.uri !== b.uri) return false;
  const [id, otherId] = [attributeOf(a, 'ID'), attributeOf(b, 'ID')];
  if (id !== undefined && otherId !== undefined) return id === otherId;
  if (a.local !== 'PhaseTime') return sameContent(a, b, ['ID']);
  const parts = (audit: XmlElement): XmlElement => withChildren(audit, [...childElements(audit, 'Part')]);
  const bare = (audit: XmlElement): XmlElement => ({ ...parts(audit), attributes: [] });
  return attributeOf(a, 'Start') === attributeOf(b, 'Start') && sameContent(bare(a), bare(b));
}

/** The pool with more audits, each before the first that is later than it. */
export function withAudits(pool: XmlElement, added: readonly XmlElement[]): XmlElement {
  let children = pool.children;
  for (const audit of added) children = inTime(children, audit);
  return added.length === 0 ? pool : withChildren(pool, children);
}

function inTime(children: readonly XmlNode[], audit: XmlElement): readonly XmlNode[] {
  const at = timeOf(audit);
  const later = children.findIndex((child) => {
    const time = child.kind === 'element' ? timeOf(child) : undefined;
    return at !== undefined && time !== undefined && time > at;
  });
  const first = children.find((child) => child.kind === 'element');
  const before = first === undefined ? undefined : children[children.indexOf(first) - 1];
  const space = text(before?.kind === 'text' ? before.value : '\n    ');
  const spaced = before === undefined && first !== undefined ? [audit] : [space, audit];
  if (later < 0) {
    const last = children.at(-1);
    const closing = last?.kind === 'text' && last.value.trim() === '' && children.length > 1;
    return closing ? [...children.slice(0, -1), ...spaced, last] : [...children, ...spaced];
  }
  const from = children[later - 1]?.kind === 'text' ? later - 1 : later;
  return [...children.slice(0, from), ...spaced, ...children.slice(from)];
}

function timeOf(audit: XmlElement): number | undefined {
  return parseDateTime(attributeOf(audit, 'TimeStamp') ?? '');
}
