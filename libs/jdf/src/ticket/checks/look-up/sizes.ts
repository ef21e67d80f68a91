import { oncePer } from '#libs/kernel';
import { shape, type XYPair, xyPair } from '../../../codec/index.js';
import { partAttribute, partitionLeaves, subElements } from '../../../partition/index.js';
import { attributeOf, type XmlDocument, type XmlElement } from '../../../xml/index.js';
import type { TicketNode } from '../ticket-check.js';

/** The largest sides, in points, of the sheets and components that go in; undefined where one of them is not known. */
export function largestInput({ links }: TicketNode): XYPair | undefined {
  let [x, y] = [0, 0];
  for (const { element, usage, resource } of links) {
    if (usage !== 'Input' || !(resource?.local === 'Component' || isPaper(resource))) continue;
    // Turned on its way in: its sides are no longer those of the resource.
    if (['Orientation', 'Transformation'].some((name) => attributeOf(element, name) !== undefined)) return;
    for (const leaf of partitionLeaves(resource!)) {
      const size =
        xyPair.read(partAttribute(leaf, 'Dimension') ?? '') ??
        shape.read(partAttribute(leaf, 'Dimensions') ?? '');
      if (size === undefined || size.x <= 0 || size.y <= 0) return undefined;
      [x, y] = [Math.max(x, size.x), Math.max(y, size.y)];
    }
  }
  return x > 0 ? { x, y } : undefined;
}

/** The size in points of the paper that the nearest of some levels of a resource states, the outermost first. */
export function paperOf(doc: XmlDocument, levels: readonly XmlElement[]): XYPair | undefined {
  const media = nearest(levels, 'Media').flatMap((level) => subElements(doc, level, 'Media'));
  const paper = media.find(isPaper);
  return paper === undefined ? undefined : xyPair.read(attributeOf(paper, 'Dimension') ?? '');
}

/** The innermost level that has a sub-element, inline or by reference: it replaces those of the levels around. */
export function nearest(levels: readonly XmlElement[], name: string): XmlElement[] {
  return levels.filter((level) => hasInside(level, name)).slice(-1);
}

const hasInside = (level: XmlElement, name: string): boolean =>
  namesInside(level).has(name) || namesInside(level).has(`${name}Ref`);

// All parts inside a level ask for the same, and there may be thousands of them.
const namesInside = oncePer(
  ({ children }: XmlElement): ReadonlySet<string> =>
    new Set(children.flatMap((child) => (child.kind === 'element' ? child.local : []))),
);

const isPaper = (media: XmlElement | undefined): boolean =>
  media?.local === 'Media' && (attributeOf(media, 'MediaType')?.trim() ?? 'Paper') === 'Paper';
