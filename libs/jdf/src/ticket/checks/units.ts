import { type Findings, parseNumber, xyPair } from '../../codec/index.js';
import { attributeOf, type XmlElement } from '../../xml/index.js';
import type { TicketCheck } from './ticket-check.js';

const MOST_MICROMETRES = 2000;
const MOST_GRAMS = 1000;
const LEAST_POINTS = 300;

/** Values likely in another unit: JDF Media Thickness, Weight, Dimension. Limits: common practice, no source. */
export const units: TicketCheck = {
  number: 19,
  name: 'units',
  run({ named }, findings) {
    for (const el of named.get('Media') ?? []) checkMedia(el, findings);
  },
};

function checkMedia(media: XmlElement, findings: Findings): void {
  const number = (name: string) => parseNumber(attributeOf(media, name) ?? '') ?? 0;
  const [thickness, weight] = [number('Thickness'), number('Weight')];
  if (isPaper(media) && thickness > MOST_MICROMETRES) {
    const hint = 'Thickness is in micrometres.';
    findings.warning('JDF_UNIT', media, `A sheet ${thickness} µm thick is not likely.`, hint);
  }
  if (isPaper(media) && weight > MOST_GRAMS) {
    findings.warning('JDF_UNIT', media, `A sheet of ${weight} g/m² is not likely.`, 'Weight is in g/m².');
  }
  const size = xyPair.read(attributeOf(media, 'Dimension') ?? '');
  // A size of 0 is an open one: that of a web, or one still to be chosen.
  const unit = attributeOf(media, 'MediaUnit')?.trim() ?? 'Sheet';
  if (size === undefined || unit !== 'Sheet' || !isPaper(media)) return;
  if (size.x <= 0 || size.y <= 0 || Math.max(size.x, size.y) >= LEAST_POINTS) return;
  const hint = 'Dimension is in points of 1/72 inch: one millimetre is 2.8346 points.';
  findings.warning('JDF_UNIT', media, `A sheet of ${size.x} × ${size.y} points is not likely.`, hint);
}

const isPaper = (media: XmlElement): boolean =>
  (attributeOf(media, 'MediaType')?.trim() ?? 'Paper') === 'Paper';
