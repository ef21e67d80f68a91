import type { ElementCodec, Field, Fields, Findings } from '../codec/index.js';
import { baseAttributes } from '../elements/base.js';
import type { XmlElement } from '../xml/index.js';

/** What is read of an element: attributes and elements by name, and elements kept whatever is in them. */
interface Known {
  readonly attributes: Set<string>;
  readonly elements: Map<string, Known>;
  readonly kept: ((local: string) => boolean)[];
  /** A field reads in a way of its own, so nothing here can be called unknown. */
  opaque: boolean;
}

// Attributes of an element that is nothing but a bracket around others.
const BASE = Object.values(baseAttributes).flatMap(({ place }) =>
  place?.kind === 'attribute' ? [place.name] : [],
);

// In nearly every element of the standard, without a view of its own.
const EVERYWHERE = new Set(['Comment', 'GeneralID', 'Preview', 'PreviewRef']);

const knownOf = new WeakMap<object, Known>();

/**
 * Warns of attributes and elements of the standard's namespace that `fields` do not read. They stay in the element and
 * do not keep the rest from being read. Other namespaces are everybody's own and not judged.
 */
export function warnOfUnknown(el: XmlElement, fields: Fields, findings: Findings): void {
  warn(el, known(fields), findings);
}

function known(fields: Fields): Known {
  const before = knownOf.get(fields);
  if (before !== undefined) return before;
  const made: Known = { attributes: new Set(), elements: new Map(), kept: [], opaque: false };
  knownOf.set(fields, made);
  for (const field of Object.values(fields)) add(field, made);
  return made;
}

function add({ place }: Field<unknown>, to: Known): void {
  if (place === undefined) to.opaque = true;
  else if (place.kind === 'attribute') to.attributes.add(place.name);
  else if (place.kind === 'kept') to.kept.push(place.fits);
  else if (place.kind === 'child') to.elements.set(place.codec.name, ofCodec(place.codec));
  else {
    const inner = to.elements.get(place.wrapper) ?? known({});
    const merged = {
      ...inner,
      attributes: new Set([...inner.attributes, ...BASE]),
      elements: new Map(inner.elements),
    };
    add(place.field, merged);
    to.elements.set(place.wrapper, merged);
  }
}

function ofCodec({ fields }: ElementCodec<unknown>): Known {
  return fields === undefined
    ? { attributes: new Set(), elements: new Map(), kept: [], opaque: true }
    : known(fields);
}

function warn(el: XmlElement, { attributes, elements, kept, opaque }: Known, findings: Findings): void {
  if (opaque) return;
  for (const { local, uri } of el.attributes) {
    if (uri === '' && !attributes.has(local)) unknown(el, `attribute ${local}`, el, findings);
  }
  for (const child of el.children) {
    if (child.kind !== 'element' || child.uri !== el.uri || EVERYWHERE.has(child.local)) continue;
    const within = elements.get(child.local);
    if (within !== undefined) warn(child, within, findings);
    else if (!kept.some((fits) => fits(child.local))) unknown(child, `element ${child.local}`, el, findings);
  }
}

function unknown(at: XmlElement, what: string, el: XmlElement, findings: Findings): void {
  const hint = 'Correct the name, or put content of your own into a namespace of your own.';
  findings.warning('JMF_CONTENT', at, `${el.local} has no ${what} in the standard; it is not read.`, hint);
}
