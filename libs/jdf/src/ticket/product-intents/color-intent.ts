import { children, inside, integerOrInfinity, optional, string } from '../../codec/index.js';
import { fullElement } from '../../elements/base.js';
import { certification } from './media-intent.js';
import { nameSpan, numberSpan, spans, spansIn, stringSpan } from './span-types.js';

export const separationSpec = fullElement('SeparationSpec', { name: optional('Name', string) });

/** Names of inks. */
export const colorsUsed = inside('ColorsUsed', children(separationSpec));

/** The inks and coatings of a product; partitioned by Side where its sides differ. */
export const colorIntent = fullElement('ColorIntent', {
  numColors: optional('NumColors', integerOrInfinity),
  colorsUsed,
  certifications: children(certification),
  ...spans(stringSpan, 'Coatings', 'ColorICCStandard'),
  ...spans(nameSpan, 'ColorStandard', 'InkManufacturer'),
  ...spansIn('Pct', numberSpan, 'Coverage'),
});
