import { children, inside, nmtoken, oneOf, optional, pointMm, required, sizeMm } from '../../codec/index.js';
import { fullElement } from '../../elements/base.js';
import { spans, stringSpan } from './span-types.js';

// "Eliptical" is how the standard writes it.
const hole = fullElement('Hole', {
  centerMm: required('Center', pointMm),
  extentMm: required('Extent', sizeMm),
  shape: required('Shape', oneOf(['Eliptical', 'Round', 'Rectangular'])),
  reinforcement: optional('Reinforcement', nmtoken),
});

export const holeList = inside('HoleList', children(hole));

export const holeMakingIntent = fullElement('HoleMakingIntent', {
  extentMm: optional('Extent', sizeMm),
  holeReferenceEdge: optional('HoleReferenceEdge', oneOf(['Left', 'Right', 'Top', 'Bottom', 'Pattern'])),
  ...spans(stringSpan, 'HoleType'),
  holeList,
});
