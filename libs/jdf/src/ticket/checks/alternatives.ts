import type { Findings } from '../../codec/index.js';
import { partitionKeysOf, partsOf } from '../../partition/index.js';
import { attributeOf, childElements, type XmlElement } from '../../xml/index.js';
import type { TicketCheck } from './ticket-check.js';

/** What a mark may be. */
const MARK_KINDS = [
  'CIELABMeasuringField',
  'ColorControlStrip',
  'CutMark',
  'DensityMeasuringField',
  'FillMark',
  'IdentificationField',
  'JobField',
  'RegisterMark',
  'ScavengerArea',
];

/** What else a mark may show: text that is made up at the time, or a piece of a document. */
const OTHER_CONTENT = ['DeviceMark', 'DynamicField', 'LayoutElement'];

/** What says the same thing in two ways, of which one may stand. A name with "@" is an attribute, else an element. */
const ALTERNATIVES: Readonly<Record<string, readonly (readonly string[])[]>> = {
  BinderySignature: [['@FoldCatalog', 'Fold', 'SignatureCell']],
  ContentObject: [['@Ord', '@OrdExpression']],
  MarkObject: [['@Ord', '@ContentRef'], MARK_KINDS],
  Position: [['@AbsoluteBox', '@RelativeBox']],
  QueueSubmissionParams: [['@ReturnURL', '@ReturnJMF']],
};

/**
 * Of alternatives one is there (BinderySignature FoldCatalog, Fold and SignatureCell; ContentObject Ord and OrdExpression;
 * MarkObject Ord, ContentRef and its elements; Position AbsoluteBox and RelativeBox; QueueSubmissionParams ReturnURL and
 * ReturnJMF); and what is placed on a sheet stands in a leaf of its Layout, since what stands further out is replaced by,
 * and not added to, what the leaf has.
 */
export const alternatives: TicketCheck = {
  number: 14,
  name: 'alternatives',
  run({ named, nodes }, findings) {
    for (const [name, alternatives] of Object.entries(ALTERNATIVES)) {
      for (const el of named.get(name) ?? []) checkElement(el, alternatives, findings);
    }
    for (const mark of named.get('MarkObject') ?? []) checkMark(mark, findings);
    for (const { resources } of nodes) {
      for (const resource of resources)
        if (resource.local === 'Layout') checkPlaced(resource, 0, resource, findings);
    }
  },
};

function checkElement(
  el: XmlElement,
  alternatives: readonly (readonly string[])[],
  findings: Findings,
): void {
  for (const ways of alternatives) {
    const stated = ways.filter((way) =>
      way.startsWith('@') ? attributeOf(el, way.slice(1)) !== undefined : isInside(el, way),
    );
    if (stated.length < 2) continue;
    const names = stated.map((way) => way.replace('@', '')).join(' and ');
    findings.error('JDF_ALTERNATIVE', el, `${el.name} has ${names}.`, 'Keep the one that is meant.');
  }
}

/** Content that is somebody else's may be all that a mark has. */
function checkMark(mark: XmlElement, findings: Findings): void {
  const content = ['Ord', 'ContentRef', 'LayoutElementPageNum'].some(
    (name) => attributeOf(mark, name) !== undefined,
  );
  const kind = MARK_KINDS.find((name) => isInside(mark, name));
  if (kind !== undefined && attributeOf(mark, 'ContentRef') !== undefined) {
    const message = `${mark.name} has ContentRef, so what it shows is there, and a ${kind} beside it.`;
    findings.warning('JDF_ALTERNATIVE', mark, message, 'Keep the one that is meant.');
  }
  if (content || [...MARK_KINDS, ...OTHER_CONTENT].some((name) => isInside(mark, name))) return;
  if (mark.children.some((child) => child.kind === 'element' && child.uri !== mark.uri)) return;
  const hint = `Name its content by Ord or ContentRef, or put a ${MARK_KINDS.join(', ')} into it.`;
  findings.error('JDF_ALTERNATIVE', mark, `${mark.name} has nothing that it shows.`, hint);
}

const isInside = (el: XmlElement, name: string): boolean =>
  childElements(el).some(({ local }) => local === name || local === `${name}Ref`);

/** Source: the comments in the standard's sample invalidMarkObject. */
function checkPlaced(root: XmlElement, level: number, at: XmlElement, findings: Findings): void {
  const parts = level < partitionKeysOf(root).length ? partsOf(at) : [];
  if (parts.length === 0) return;
  for (const el of childElements(at)) {
    if (el.local !== 'MarkObject' && el.local !== 'ContentObject') continue;
    const hint = 'Put it into each leaf of the Layout that it is meant for.';
    findings.error(
      'JDF_ALTERNATIVE',
      el,
      `${el.name} stands in a part of ${root.name} that has parts itself.`,
      hint,
    );
  }
  for (const part of parts) checkPlaced(root, level + 1, part, findings);
}
