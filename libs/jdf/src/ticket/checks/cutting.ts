import { type Findings, matrix, parseNumber, type XYPair, xyPair } from '../../codec/index.js';
import { partitionLeaves, subElements } from '../../partition/index.js';
import { attributeOf, type XmlDocument, type XmlElement } from '../../xml/index.js';
import { isOn, overlapping, placed, SLACK_POINTS } from './look-up/boxes.js';
import { largestInput, paperOf } from './look-up/sizes.js';
import type { TicketCheck } from './ticket-check.js';

const MATRICES: ReadonlySet<string> = new Set(['BlockTrf', 'CTM', 'Transformation', 'TrimCTM']);
/** What is cut out; the other kinds of blocks hold blocks or lie on them. */
const CUT_OUT: ReadonlySet<string> = new Set(['CutBlock', 'SaveBlock']);

/** JDF CutBlock, CTM, TrimmingParams: matrices leave something, blocks lie apart on the sheet, trims take away. */
export const cutting: TicketCheck = {
  number: 18,
  name: 'geometry of cutting',
  run({ doc, elements, nodes }, findings) {
    for (const el of elements) checkMatrices(el, findings);
    const seen = new Set<XmlElement>();
    for (const node of nodes) {
      for (const { usage, resource } of node.links) {
        if (usage !== 'Input' || resource === undefined || seen.has(resource)) continue;
        if (resource.local !== 'CuttingParams' && resource.local !== 'TrimmingParams') continue;
        seen.add(resource);
        const size = largestInput(node);
        if (resource.local === 'CuttingParams') checkBlocks(doc, resource, size, findings);
        else if (size !== undefined) checkTrim(resource, size, findings);
      }
    }
  },
};

function checkMatrices(el: XmlElement, findings: Findings): void {
  for (const { local: name, uri, value: stated } of el.attributes) {
    if (uri !== '' || !MATRICES.has(name)) continue;
    const value = matrix.read(stated);
    if (value === undefined || value.a * value.d !== value.b * value.c) continue;
    const hint = 'The first four numbers turn and scale: 1 0 0 1 leaves everything as it is.';
    findings.warning('JDF_GEOMETRY', el, `${name} of ${el.name} makes everything vanish.`, hint);
  }
}

function checkBlocks(
  doc: XmlDocument,
  params: XmlElement,
  input: XYPair | undefined,
  findings: Findings,
): void {
  const seen = new Set<XmlElement>();
  for (const { chain } of partitionLeaves(params)) {
    for (const [at, level] of chain.entries()) {
      if (seen.has(level)) continue;
      seen.add(level);
      const blocks = subElements(doc, level, 'CutBlock').flatMap(blockOf);
      if (blocks.length === 0) continue;
      const sheet = paperOf(doc, chain.slice(0, at + 1)) ?? input;
      for (const { el, box } of blocks) {
        if (sheet === undefined || isOn(sheet, box)) continue;
        const message = `${nameOf(el)} reaches over the sheet of ${sheet.x} × ${sheet.y} points.`;
        findings.warning('JDF_GEOMETRY', el, message, 'Correct BlockSize or BlockTrf.');
      }
      for (const { el } of overlapping(blocks.filter(({ straight }) => straight))) {
        const message = `${nameOf(el)} lies on another block.`;
        findings.warning('JDF_GEOMETRY', el, message, 'Correct BlockSize or BlockTrf.');
      }
    }
  }
}

function blockOf(el: XmlElement) {
  const size = xyPair.read(attributeOf(el, 'BlockSize') ?? '');
  const place = matrix.read(attributeOf(el, 'BlockTrf') ?? '1 0 0 1 0 0');
  const kind = attributeOf(el, 'BlockType')?.trim() ?? '';
  if (size === undefined || place === undefined || !CUT_OUT.has(kind)) return [];
  const { a, b, c, d } = place;
  const straight = (a === 0 && d === 0) || (b === 0 && c === 0);
  return [{ el, box: placed(size, place), straight }];
}

const nameOf = (block: XmlElement): string => `Block ${attributeOf(block, 'BlockName') ?? ''}`.trim();

/** In either direction: how what is trimmed lies is not said with its size. */
function checkTrim(params: XmlElement, size: XYPair, findings: Findings): void {
  const [short, long] = [Math.min(size.x, size.y), Math.max(size.x, size.y)];
  for (const { chain } of partitionLeaves(params)) {
    const at = chain.at(-1)!;
    const sides = ['Width', 'Height'].map((name) => parseNumber(attributeOf(at, name) ?? '') ?? 0);
    if (Math.min(...sides) <= short + SLACK_POINTS && Math.max(...sides) <= long + SLACK_POINTS) continue;
    const message = `${at.name} leaves ${sides.join(' × ')} points of ${size.x} × ${size.y}.`;
    findings.warning('JDF_GEOMETRY', at, message, 'Correct Width and Height, or Dimensions of what goes in.');
  }
}
