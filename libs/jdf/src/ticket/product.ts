import { done, type Result, refuse } from '#libs/kernel';
import { Findings, parseNumber, type SizeMm } from '../codec/index.js';
import type { Activation } from '../enumerations.js';
import { effectivePart, selectPart } from '../partition/index.js';
import { attributeOf, childElements, type XmlDocument, type XmlElement } from '../xml/index.js';
import { type Administration, readAdministration, readAllAdministration } from './administration.js';
import { inksOf } from './inks.js';
import { type Intent, intentsOf, MOST_LINKS, spanOf } from './intents.js';
import { linksOf, type ResourceLink } from './links.js';
import { activationOf, inheritedAttribute, nodesOf } from './node.js';
import { type Placed, placed } from './placed.js';
import {
  enumerationSpan,
  integerSpan,
  nameSpan,
  numberSpan,
  shapeSpan,
  sizeSpan,
  stringSpan,
} from './product-intents/span-types.js';

/** What a product node asks for. What the ticket leaves open is left out; every value knows where it was read. */
export interface ProductIntent extends Administration {
  readonly node: Placed<string>;
  readonly activation: Placed<Activation>;
  readonly jobId?: Placed<string>;
  readonly jobPartId?: Placed<string>;
  readonly descriptiveName?: Placed<string>;
  /** Of the product Component: Body, Cover and such. */
  readonly productType?: Placed<string>;
  /** Copies. */
  readonly amount: Placed<number>;
  /** Closed, trimmed. */
  readonly finishedDimensionsMm?: Placed<SizeMm>;
  /** Flat. */
  readonly dimensionsMm?: Placed<SizeMm>;
  /** Page faces, not leaves. */
  readonly pages?: Placed<number>;
  readonly sides?: Placed<string>;
  readonly bindingType?: Placed<string>;
  readonly bindingSide?: Placed<string>;
  readonly foldCatalog?: Placed<string>;
  readonly inksFront?: Placed<readonly string[]>;
  readonly inksBack?: Placed<readonly string[]>;
  readonly weightGsm?: Placed<number>;
  readonly thicknessUm?: Placed<number>;
  readonly frontCoating?: Placed<string>;
  readonly backCoating?: Placed<string>;
  readonly stockBrand?: Placed<string>;
  readonly stockType?: Placed<string>;
  readonly grainDirection?: Placed<string>;
  /** Product nodes inside this one, such as a cover. */
  readonly children: readonly ProductIntent[];
}

/**
 * The product of a ticket: the first Product node in document order, with those inside it. Errors: JDF_NO_PRODUCT,
 * JDF_AMOUNT (no amount on the product's output), JDF_VALUE, JDF_PARTITION; the places are those of the document.
 */
export function readProduct(doc: XmlDocument): Result<ProductIntent> {
  const findings = new Findings(doc, { missing: 'JDF_MISSING', wrong: 'JDF_VALUE' });
  const node = [...nodesOf(doc.root)].find((one) => attributeOf(one, 'Type') === 'Product');
  if (node === undefined) {
    findings.error('JDF_NO_PRODUCT', doc.root, 'There is no node of Type="Product".');
    return refuse(...findings.problems);
  }
  const product = readNode(doc, node, undefined, findings);
  return findings.problems.length > 0 ? refuse(...findings.problems) : done(product);
}

function readNode(
  doc: XmlDocument,
  node: XmlElement,
  around: ProductIntent | undefined,
  findings: Findings,
): ProductIntent {
  const outputs = linksOf(doc, node).filter(({ name, usage }) => name === 'Component' && usage === 'Output');
  const amount = readAmount(doc, node, outputs, around?.amount, findings);
  const component = outputs[0]?.resource;
  const activation = activationOf(doc, node);
  const administration =
    around === undefined
      ? readAllAdministration(doc, node, findings)
      : readAdministration(doc, node, around, findings);
  const product: ProductIntent = {
    node: placed(doc, node, attributeOf(node, 'ID') ?? ''),
    activation: placed(doc, activation.at, activation.value),
    jobId: inherited(doc, node, 'JobID'),
    jobPartId: stated(doc, node, 'JobPartID'),
    descriptiveName: stated(doc, node, 'DescriptiveName') ?? stated(doc, component, 'DescriptiveName'),
    productType: stated(doc, component, 'ProductType'),
    amount,
    ...readIntents(doc, node, findings),
    ...administration,
    children: [],
  };
  const inner = childElements(node, 'JDF').filter((child) => attributeOf(child, 'Type') === 'Product');
  return { ...product, children: inner.map((child) => readNode(doc, child, product, findings)) };
}

function readIntents(doc: XmlDocument, node: XmlElement, findings: Findings): Partial<ProductIntent> {
  const first = (name: string): Intent | undefined => intentsOf(doc, node, name, findings)[0];
  const layout = first('LayoutIntent');
  const binding = first('BindingIntent');
  const folding = first('FoldingIntent');
  const color = first('ColorIntent');
  // Other media (a cover foil, a plate) may be linked too; the paper is the one that says so or says nothing.
  const media = intentsOf(doc, node, 'MediaIntent', findings).find((intent) =>
    ['Paper', undefined].includes(spanOf(doc, intent, 'MediaType', enumerationSpan, findings)?.value),
  );
  const sides = layout && stated(doc, layout.view, 'Sides', layout.resource);
  const inks = inksOf(doc, color, sides?.value);
  return {
    finishedDimensionsMm: spanOf(doc, layout, 'FinishedDimensions', shapeSpan, findings),
    dimensionsMm: spanOf(doc, layout, 'Dimensions', sizeSpan, findings),
    pages: spanOf(doc, layout, 'Pages', integerSpan, findings),
    sides,
    bindingType: spanOf(doc, binding, 'BindingType', enumerationSpan, findings),
    bindingSide: spanOf(doc, binding, 'BindingSide', enumerationSpan, findings),
    foldCatalog: spanOf(doc, folding, 'FoldingCatalog', nameSpan, findings),
    inksFront: inks.front,
    inksBack: inks.back,
    weightGsm: spanOf(doc, media, 'Weight', numberSpan, findings),
    thicknessUm: spanOf(doc, media, 'Thickness', numberSpan, findings),
    frontCoating: spanOf(doc, media, 'FrontCoatings', enumerationSpan, findings),
    backCoating: spanOf(doc, media, 'BackCoatings', enumerationSpan, findings),
    stockBrand: spanOf(doc, media, 'StockBrand', stringSpan, findings),
    stockType: spanOf(doc, media, 'StockType', nameSpan, findings),
    grainDirection: spanOf(doc, media, 'GrainDirection', enumerationSpan, findings),
  };
}

/** The amount of the output link, else of its Component, else that of the product around it. */
function readAmount(
  doc: XmlDocument,
  node: XmlElement,
  outputs: readonly ResourceLink[],
  around: Placed<number> | undefined,
  findings: Findings,
): Placed<number> {
  for (const { link, resource, parts } of outputs.slice(0, MOST_LINKS)) {
    const selected = selectPart(resource, parts[0] ?? {});
    for (const at of [link, selected && effectivePart(selected)]) {
      const value = at && attributeOf(at, 'Amount');
      if (value === undefined) continue;
      const place = at === link ? link : resource;
      const amount = parseNumber(value);
      if (amount !== undefined && Number.isInteger(amount) && amount > 0) return placed(doc, place, amount);
      findings.wrong(place, 'Amount', value, 'a whole number of copies above 0');
      return placed(doc, place, 0);
    }
  }
  if (around !== undefined) return around;
  findings.error(
    'JDF_AMOUNT',
    outputs[0]?.resource ?? node,
    'The ticket does not say how many copies are wanted.',
    'Give the Component that the product node has as output an Amount.',
  );
  return placed(doc, node, 0);
}

function stated(
  doc: XmlDocument,
  el: XmlElement | undefined,
  name: string,
  at: XmlElement | undefined = el,
): Placed<string> | undefined {
  const value = el && attributeOf(el, name);
  return value === undefined ? undefined : placed(doc, at!, value);
}

function inherited(doc: XmlDocument, node: XmlElement, name: string): Placed<string> | undefined {
  const found = inheritedAttribute(doc, node, name);
  return found && placed(doc, found.at, found.value);
}
