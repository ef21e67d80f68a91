import { integer, splitTokens, xyPair } from '../../codec/index.js';
import { effectivePart, partsNamed, subElements } from '../../partition/index.js';
import { pagesOfFoldCode } from '../../standard/index.js';
import {
  attributeOf,
  childElements,
  firstChild,
  type XmlDocument,
  type XmlElement,
} from '../../xml/index.js';
import { selectedLeaves } from './look-up/parts.js';
import { inputOf } from './look-up/printing.js';
import type { TicketCheck, TicketLink, TicketNode } from './ticket-check.js';

/**
 * The sections of a product have room for its pages (LayoutIntent Pages): each has as many as its signature folds
 * (BinderySignature FoldCatalog, or NumberUp on both sides), and is counted once, on however many sheets it lies
 * (StrippingParams AssemblyIDs, SectionList). Only where every sheet names its one section. There may be more room than
 * that: for a cover that Pages leaves out, or on the back of what is printed on one side.
 */
export const sectionPages: TicketCheck = {
  number: 22,
  name: 'pages of sections',
  run({ doc, nodes, spawned }, findings) {
    // What was sent away may be a part of the sheets.
    if (spawned) return;
    for (const node of nodes) {
      if (node.type !== 'Product' || node.children.some(({ type }) => type === 'Product')) continue;
      const stripping = strippingIn(node);
      const stated = stripping.length === 0 ? undefined : statedPages(node);
      if (stated === undefined) continue;
      const pages = pagesOfSections(doc, stripping);
      if (pages === undefined || pages >= stated) continue;
      const message = `The sections have ${pages} pages together, too few for the ${stated} of the product.`;
      const hint =
        'Correct FoldCatalog, the sections of the sheets (AssemblyIDs, SectionList), or Pages of LayoutIntent.';
      findings.warning('JDF_FOLD', stripping[0]!.resource!, message, hint);
    }
  },
};

/** Links to what is stripped for a product: of its own nodes, those of no product inside. */
function strippingIn(node: TicketNode): TicketLink[] {
  const own = node.links.filter(
    ({ name, usage, resource }) => name === 'StrippingParams' && usage === 'Input' && resource !== undefined,
  );
  return [...own, ...node.children.flatMap(strippingIn)];
}

/** Undefined where the product has no number of pages, or a choice of them. */
function statedPages(node: TicketNode): number | undefined {
  const link = inputOf(node, 'LayoutIntent');
  if (link?.resource === undefined) return undefined;
  const leaves = selectedLeaves(link.resource, partsNamed(link.element));
  if (leaves.length !== 1) return undefined;
  const span = firstChild(effectivePart(leaves[0]!), 'Pages');
  const value = span && (attributeOf(span, 'Actual') ?? attributeOf(span, 'Preferred'));
  return value === undefined ? undefined : integer.read(value);
}

function pagesOfSections(doc: XmlDocument, stripping: readonly TicketLink[]): number | undefined {
  const sections = new Map<string, number>();
  for (const { element, resource } of stripping) {
    for (const leaf of selectedLeaves(resource!, partsNamed(element))) {
      const part = effectivePart(leaf);
      const [name, pages] = [sectionOf(part), pagesOfSignature(doc, part)];
      if (name === undefined || pages === undefined || (sections.get(name) ?? pages) !== pages)
        return undefined;
      sections.set(name, pages);
    }
  }
  return [...sections.values()].reduce((sum, pages) => sum + pages, 0);
}

/** What a signature on a sheet is a section of; undefined where it does not say, or is several. */
function sectionOf(part: XmlElement): string | undefined {
  const assemblies = splitTokens(attributeOf(part, 'AssemblyIDs') ?? attributeOf(part, 'AssemblyID') ?? '');
  const sections = splitTokens(attributeOf(part, 'SectionList') ?? '');
  if (assemblies.length > 1 || sections.length > 1 || assemblies.length + sections.length === 0)
    return undefined;
  return JSON.stringify([assemblies, sections]);
}

/** Only of a signature that is folded: others hold copies of a page, or pages that are no section. */
function pagesOfSignature(doc: XmlDocument, part: XmlElement): number | undefined {
  const signatures = subElements(doc, part, 'BinderySignature');
  const [signature] = signatures;
  if (signature === undefined || signatures.length > 1) return undefined;
  if ((attributeOf(signature, 'BinderySignatureType')?.trim() ?? 'Fold') !== 'Fold') return undefined;
  const code = attributeOf(signature, 'FoldCatalog');
  if (code !== undefined) return pagesOfFoldCode(code);
  const up = xyPair.read(attributeOf(signature, 'NumberUp') ?? '');
  const isFolded = childElements(signature).some(
    ({ local }) => local === 'Fold' || local === 'SignatureCell',
  );
  return up === undefined || !isFolded ? undefined : 2 * up.x * up.y;
}
