import { withAttributes, type XmlElement } from '../xml/index.js';
import type { ElementCodec, Field, Written } from './field.js';
import type { Findings } from './findings.js';
import { childrenNamed, likeIn, replaceChildren } from './in-place.js';

/**
 * The element with a field set to a value (undefined: taken out). The element itself where the field has that value
 * already, however it is written, or cannot be read and is to be taken out: nobody has seen what is there.
 */
export function setField<T>(
  field: Field<T>,
  el: XmlElement,
  value: T | undefined,
  findings: Findings,
): XmlElement {
  const old = field.read(el, findings);
  const [before, after] = [written(field, old), written(field, value)];
  if (isSame(before, after)) return el;
  if (field.set !== undefined) return field.set(el, value, findings);
  return replaceWritten(el, before, after);
}

/** For the elements in some places: what becomes of them when they are to have these values, in the order of the values. */
export function editedChildren<T>(
  codec: ElementCodec<T>,
  parent: XmlElement,
  places: readonly XmlElement[],
  values: readonly T[],
  findings: Findings,
): XmlElement[] {
  const left = places.map((el) => ({ el, shown: shownOf(codec, codec.read(el, findings)!) }));
  // Those that have their value already keep their element; the others share out what is left, in order.
  const kept = values.map((value) => {
    const shown = shownOf(codec, value);
    const at = left.findIndex((one) => one.shown === shown);
    return at < 0 ? undefined : left.splice(at, 1)[0]!.el;
  });
  return values.map((value, i) => {
    const same = kept[i];
    if (same !== undefined) return same;
    const next = left.shift()?.el;
    return (next && codec.edit?.(next, value, findings)) ?? likeIn(parent, codec.write(value));
  });
}

function shownOf<T>(codec: ElementCodec<T>, value: T): string {
  return JSON.stringify(codec.write(value));
}

function written<T>(field: Field<T>, value: T | undefined): Written {
  return value === undefined ? {} : field.write(value);
}

function isSame(a: Written, b: Written): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}

/** For a field that does not say how it is set. */
function replaceWritten(el: XmlElement, before: Written, after: Written): XmlElement {
  const gone = Object.keys(before.attributes ?? {}).map((name) => [name, undefined] as const);
  const changed = withAttributes(el, { ...Object.fromEntries(gone), ...after.attributes });
  const names = new Set([...(before.children ?? []), ...(after.children ?? [])].map(({ local }) => local));
  const fresh = (after.children ?? []).map((one) => likeIn(el, one));
  return replaceChildren(changed, childrenNamed(changed, names), fresh);
}
