import { dataTypes, type Findings, integer } from '../../codec/index.js';
import { effectivePart, partitionLeaves } from '../../partition/index.js';
import { attributeOf, descendants, type XmlElement } from '../../xml/index.js';
import type { TicketCheck, TicketNode } from './ticket-check.js';

/**
 * JDF RunList NPage, ContentObject Ord: a run names no more pages than it says it has, and no page is placed that the
 * document to be imposed does not have.
 */
export const runPages: TicketCheck = {
  number: 21,
  name: 'pages of runs',
  run({ nodes }, findings) {
    for (const node of nodes) {
      for (const resource of node.resources) if (resource.local === 'RunList') checkRuns(resource, findings);
      checkPlaced(node, findings);
    }
  },
};

function checkRuns(list: XmlElement, findings: Findings): void {
  for (const leaf of partitionLeaves(list)) {
    const run = effectivePart(leaf);
    const count = integer.read(attributeOf(run, 'NPage') ?? '');
    const named = namedPages(run);
    if (count === undefined || named === undefined || named <= count) continue;
    const hint = `Correct NPage, or name ${count} pages.`;
    findings.warning(
      'JDF_PAGES',
      leaf.chain.at(-1)!,
      `Pages names ${named} pages, NPage says ${count}.`,
      hint,
    );
  }
}

/** How many pages the Pages of a run names; undefined where it counts from the end, so that nobody can tell. */
function namedPages(run: XmlElement): number | undefined {
  const stated = attributeOf(run, 'Pages');
  const ranges = stated === undefined ? undefined : dataTypes.IntegerRangeList.read(stated);
  let count = 0;
  for (const { from, to } of ranges ?? []) {
    if (from < 0 || to < 0 || !Number.isFinite(from) || !Number.isFinite(to)) return undefined;
    count += Math.abs(to - from) + 1;
  }
  return ranges === undefined ? undefined : count;
}

/** Ord counts the pages of the document from 0, or from its end where it is negative. */
function checkPlaced(node: TicketNode, findings: Findings): void {
  const layout = node.links.find(({ name, usage }) => name === 'Layout' && usage === 'Input')?.resource;
  const document = node.links.find(({ name, role }) => name === 'RunList' && role === 'Document')?.resource;
  const pages = document === undefined ? undefined : pagesOf(document);
  if (layout === undefined || pages === undefined) return;
  for (const el of descendants(layout)) {
    if (el.local !== 'ContentObject' || el.uri !== layout.uri) continue;
    const ord = integer.read(attributeOf(el, 'Ord') ?? '');
    if (ord === undefined || (ord < pages && ord >= -pages)) continue;
    const hint = `Its pages are counted from 0 to ${pages - 1}.`;
    findings.warning('JDF_PAGES', el, `Ord="${ord}" is beyond the ${pages} pages of the document.`, hint);
  }
}

/** The pages of a run list, where each of its runs says how many it has. */
function pagesOf(list: XmlElement): number | undefined {
  let sum = 0;
  for (const leaf of partitionLeaves(list)) {
    const run = effectivePart(leaf);
    const count = integer.read(attributeOf(run, 'NPage') ?? '') ?? namedPages(run);
    if (count === undefined) return undefined;
    sum += count;
  }
  return sum;
}
