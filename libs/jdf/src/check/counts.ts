import type { Findings } from '../codec/index.js';
import type { ChildType } from '../standard/index.js';
import { attributeOf, type XmlElement } from '../xml/index.js';
import type { Kind } from './kind.js';

/**
 * How often each child stands in an element whose children have no order. The schema only notes these numbers, so what
 * is missing or too much is a warning, but where a kind's numbers are enforced. What a partitioned resource lacks may be
 * in its parts, and what a part lacks comes from around it.
 */
export function checkCounts(
  el: XmlElement,
  kind: Kind,
  children: readonly XmlElement[],
  findings: Findings,
): void {
  const { type } = kind;
  if (type.identical) checkIdentical(el, children, findings);
  if (children.length === 0 && type.needed.length === 0) return;
  const severity = type.counted ? 'error' : 'warning';
  let counts: Map<ChildType, number> | undefined;
  for (const child of children) {
    const limit = kind.child(child.local)?.limit;
    if (limit === undefined) continue;
    counts ??= new Map();
    const count = (counts.get(limit) ?? 0) + 1;
    counts.set(limit, count);
    if (count !== limit.max + 1) continue;
    const hint = `There may be ${limit.max === 1 ? 'one' : limit.max}.`;
    findings.tell(severity, 'JDF_CHILDREN', child, `${el.name} has ${limit.name} too often.`, hint);
  }
  if (type.needed.length === 0 || type.key.endsWith('.part') || attributeOf(el, 'PartIDKeys') !== undefined)
    return;
  for (const limit of type.needed) {
    if ((counts?.get(limit) ?? 0) >= limit.min) continue;
    findings.tell(severity, 'JDF_CHILDREN', el, `${el.name} has no ${limit.name}.`, addition(limit));
  }
}

const addition = ({ name, min }: ChildType): string => `Add ${min === 1 ? name : `${min} ${name}`}.`;

function checkIdentical(el: XmlElement, children: readonly XmlElement[], findings: Findings): void {
  if (children.length < 2 || !children.some(({ local }) => local === 'Identical')) return;
  const hint = 'All else is that of the part which it is identical to.';
  findings.error('JDF_PARTITION', el, `${el.name} has Identical and other elements beside it.`, hint);
}
