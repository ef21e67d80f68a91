import { type Findings, type Rectangle, rectangle } from '../../codec/index.js';
import { partitionLeaves } from '../../partition/index.js';
import { attributeOf, childElements, type XmlDocument, type XmlElement } from '../../xml/index.js';
import { isOn } from './look-up/boxes.js';
import { paperOf } from './look-up/sizes.js';
import type { TicketCheck } from './ticket-check.js';

/** JDF StrippingParams Position: what stripping positions on a sheet has a size and lies on it. */
export const positions: TicketCheck = {
  number: 18,
  name: 'positions on the sheet',
  run({ doc, nodes }, findings) {
    for (const { resources } of nodes) {
      for (const resource of resources) {
        if (resource.local === 'StrippingParams') checkSheets(doc, resource, findings);
      }
    }
  },
};

function checkSheets(doc: XmlDocument, resource: XmlElement, findings: Findings): void {
  const seen = new Set<XmlElement>();
  for (const { chain } of partitionLeaves(resource)) {
    // All parts inside a level have it in their chain.
    const levels = chain.filter((level) => !seen.has(level));
    for (const level of levels) seen.add(level);
    for (const position of levels.flatMap((level) => childElements(level, 'Position'))) {
      const paper = paperOf(doc, chain);
      checkBox(position, 'RelativeBox', isShare, 'Its numbers are shares of the sheet, 0 to 1.', findings);
      if (paper === undefined) continue;
      const hint = `The sheet is ${paper.x} × ${paper.y} points.`;
      checkBox(position, 'AbsoluteBox', (box) => isOn(paper, box), hint, findings);
    }
  }
}

// Shares are written with as few digits as people like.
const SLACK = 0.001;
const isShare = ({ llx, lly, urx, ury }: Rectangle): boolean =>
  Math.min(llx, lly) >= -SLACK && Math.max(urx, ury) <= 1 + SLACK;

function checkBox(
  position: XmlElement,
  name: string,
  lies: (box: Rectangle) => boolean,
  where: string,
  findings: Findings,
): void {
  const box = rectangle.read(attributeOf(position, name) ?? '');
  if (box === undefined) return;
  if (box.llx >= box.urx || box.lly >= box.ury) {
    const hint = 'Its four numbers are the lower left and the upper right corner.';
    findings.warning('JDF_GEOMETRY', position, `${name} of ${position.name} has no size.`, hint);
  } else if (!lies(box)) {
    findings.warning('JDF_GEOMETRY', position, `${name} of ${position.name} lies beyond the sheet.`, where);
  }
}
