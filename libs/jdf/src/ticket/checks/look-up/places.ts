import { type Rectangle, rectangle, type XYPair } from '../../../codec/index.js';
import { attributeOf, childElements, type XmlElement } from '../../../xml/index.js';

/** Where a signature lies on a sheet, as a share of the sheet: 0 0 1 1 is all of it. */
export interface Place {
  /** Its Position; what has none takes the whole sheet. */
  readonly position: XmlElement | undefined;
  readonly share: Rectangle;
}

const WHOLE: Rectangle = { llx: 0, lly: 0, urx: 1, ury: 1 };

/**
 * The places of what a part of StrippingParams puts on a sheet (Position RelativeBox, AbsoluteBox in points). Undefined
 * where one cannot be read, or is in points and the size of the paper is not known.
 */
export function placesOf(part: XmlElement, paper: XYPair | undefined): Place[] | undefined {
  const found: Place[] = [];
  for (const position of childElements(part, 'Position')) {
    const share = shareOf(position, paper);
    if (share === undefined) return undefined;
    found.push({ position, share });
  }
  return found.length === 0 ? [{ position: undefined, share: WHOLE }] : found;
}

function shareOf(position: XmlElement, paper: XYPair | undefined): Rectangle | undefined {
  const relative = attributeOf(position, 'RelativeBox');
  if (relative !== undefined) return rectangle.read(relative);
  const absolute = attributeOf(position, 'AbsoluteBox');
  if (absolute === undefined) return WHOLE;
  const box = rectangle.read(absolute);
  if (box === undefined || paper === undefined || paper.x <= 0 || paper.y <= 0) return undefined;
  const { x, y } = paper;
  return { llx: box.llx / x, lly: box.lly / y, urx: box.urx / x, ury: box.ury / y };
}
