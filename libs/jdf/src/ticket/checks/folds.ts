import { type Findings, integers } from '../../codec/index.js';
import { foldedPageCounts, pagesOfFoldCode } from '../../standard/index.js';
import { attributeOf, childElements, type XmlElement } from '../../xml/index.js';
import type { TicketCheck } from './ticket-check.js';

/**
 * JDF FoldCatalog, SignatureCell: codes of the folding catalogue are known, and the cells of a binding signature
 * hold each page of a section once and as many as its code folds.
 */
export const folds: TicketCheck = {
  number: 22,
  name: 'folds',
  run({ elements }, findings) {
    for (const el of elements) {
      checkCode(el, 'FoldCatalog', findings);
      if (el.local === 'FoldingCatalog') for (const name of SPAN) checkCode(el, name, findings);
      if (el.local === 'BinderySignature') checkCells(el, findings);
    }
  },
};

const SPAN = ['Actual', 'Preferred'];

function checkCode(el: XmlElement, name: string, findings: Findings): void {
  const code = attributeOf(el, name)?.trim();
  if (code === undefined || pagesOfFoldCode(code) !== undefined) return;
  const hint = `A code is F, the pages of the section and the number of the scheme; there are codes for ${foldedPageCounts.join(', ')} pages.`;
  findings.warning(
    'JDF_FOLD',
    el,
    `${name}="${code.slice(0, 40)}" is no code of the folding catalogue.`,
    hint,
  );
}

function checkCells(signature: XmlElement, findings: Findings): void {
  const sections = new Map<string, Set<number>>();
  for (const cell of childElements(signature, 'SignatureCell')) {
    const section = attributeOf(cell, 'SectionIndex')?.trim() ?? '0';
    const seen = sections.get(section) ?? new Set<number>();
    sections.set(section, seen);
    for (const side of ['FrontPages', 'BackPages']) {
      for (const page of integers.read(attributeOf(cell, side) ?? '') ?? []) {
        if (!seen.has(page)) {
          seen.add(page);
          continue;
        }
        const message = `Page ${page} of section ${section} is in this signature twice.`;
        findings.warning('JDF_FOLD', cell, message, 'Give each page of a section one place.');
      }
    }
  }
}
