import { type Findings, splitTokens } from '../../codec/index.js';
import { attributeOf, descendants, parentOf, type XmlDocument, type XmlElement } from '../../xml/index.js';
import { type ElementShape, xjdfVocabulary } from '../facts.js';

/** What a reference leads to when its name says so: a name without Ref or Refs is that of a resource. */
const KINDS: Readonly<Record<string, readonly string[]>> = {
  ContentRef: ['Content', 'RunList', 'PlacedObject'],
  FilmRef: ['Media'],
  PaperRef: ['Media'],
  PlateRef: ['Media'],
  ProofPaperRef: ['Media'],
};

/** References lead to an element that is what their name says. */
export function checkReferences(doc: XmlDocument, findings: Findings): void {
  const ids = new Map<string, XmlElement>();
  for (const el of descendants(doc.root)) {
    const id = el.uri === doc.root.uri ? attributeOf(el, 'ID') : undefined;
    if (id === undefined || shapeOf(el)?.attributes.get('ID') === undefined) continue;
    if (!ids.has(id)) ids.set(id, el);
  }
  for (const el of descendants(doc.root)) {
    if (el.uri !== doc.root.uri) continue;
    for (const { local, uri, value } of el.attributes) {
      const type = uri === '' ? shapeOf(el)?.attributes.get(local)?.type : undefined;
      if (type !== 'idref' && type !== 'idrefs') continue;
      for (const id of splitTokens(value)) checkReference(doc, el, local, ids.get(id), id, findings);
    }
  }
}

const shapeOf = (el: XmlElement): ElementShape | undefined => xjdfVocabulary.named(el.local);

function checkReference(
  doc: XmlDocument,
  el: XmlElement,
  name: string,
  target: XmlElement | undefined,
  id: string,
  findings: Findings,
): void {
  if (target === undefined) {
    findings.error(
      'JDF_DANGLING',
      el,
      `${name}="${id}" leads nowhere.`,
      'Add what has that ID, or correct it.',
    );
    return;
  }
  const wanted = KINDS[name.replace(/s$/, '')] ?? resourceIn(name);
  if (wanted === undefined) return;
  const set = target.local === 'Resource' ? parentOf(doc, target) : target;
  const found = set?.local === 'ResourceSet' ? (attributeOf(set, 'Name') ?? '') : target.local;
  if (wanted.includes(found)) return;
  findings.error(
    'JDF_LINK',
    el,
    `${name}="${id}" leads to a ${found}.`,
    `It has to lead to a ${wanted.join(' or ')}.`,
  );
}

/** The resource that a reference is named for. */
function resourceIn(name: string): readonly string[] | undefined {
  const resource = name.replace(/Refs?$/, '');
  return xjdfVocabulary.isMember('SpecificResource', resource) ? [resource] : undefined;
}
