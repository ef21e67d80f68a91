import {
  boolean,
  integerOrInfinity,
  lengthMm,
  oneOf,
  optional,
  pointMm,
  string,
  xyPair,
} from '../../codec/index.js';
import { fullElement } from '../../elements/base.js';

/** A line of glue, or an area with it: where it begins and how it runs on, as lengths or as shares of the size. */
export const glueLine = fullElement('GlueLine', {
  areaGlue: optional('AreaGlue', boolean),
  glueBrand: optional('GlueBrand', string),
  glueType: optional('GlueType', oneOf(['ColdGlue', 'Hotmelt', 'PUR'])),
  glueLineWidthMm: optional('GlueLineWidth', lengthMm),
  /** Length with glue and length without, in turn. */
  gluingPatternMm: optional('GluingPattern', pointMm),
  startPositionMm: optional('StartPosition', pointMm),
  workingPathMm: optional('WorkingPath', pointMm),
  relativeStartPosition: optional('RelativeStartPosition', xyPair),
  relativeWorkingPath: optional('RelativeWorkingPath', xyPair),
  meltingTemperatureC: optional('MeltingTemperature', integerOrInfinity),
});
