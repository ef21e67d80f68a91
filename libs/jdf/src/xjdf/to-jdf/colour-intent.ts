import { attributeOf, childElements, type XmlElement } from '../../xml/index.js';
import { jdfVocabulary } from '../facts.js';
import { attributeNode } from '../ledger.js';
import { type Overflow, sourceOf } from '../source.js';
import { type Direction, Draft, fillDraft, finish } from '../translate.js';
import { attribute } from '../write.js';
import type { Ticket } from './ticket.js';

/** The colours of each surface as parts of a ColorIntent divided by Side. */
export function colourParts(
  ticket: Ticket,
  direction: Direction,
  intent: XmlElement,
  overflow: Overflow,
): XmlElement[] {
  const sides = new Set(['Front', 'Back']);
  const surfaces = childElements(intent, 'SurfaceColor').filter((one) =>
    sides.delete(attributeOf(one, 'Surface') ?? ''),
  );
  return surfaces.map((surface) => {
    const part = new Draft('ColorIntent', jdfVocabulary.shape('ColorIntent.part')!);
    const source = sourceOf(surface);
    const attributes = source.attributes.filter(({ local }) => local !== 'Surface');
    fillDraft(direction, { ...source, attributes }, part, overflow);
    ticket.ledger.carry(surface, attributeNode(surface, 'Surface'));
    const written = finish(direction, part);
    const side = attribute('Side', attributeOf(surface, 'Surface')!);
    return { ...written, attributes: [side, ...written.attributes] };
  });
}
