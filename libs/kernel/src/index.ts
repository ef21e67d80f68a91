export {
  type Clock,
  type ClockSetting,
  type Instant,
  isoTime,
  plantClock,
  realClock,
  type WallClock,
  wallClock,
} from './clock.js';
export { type Code, type CodeRow, codes, type LogLevel } from './codes.js';
export { Fault } from './fault.js';
export { type IdSource, uuidV7Source } from './ids.js';
export { oncePer } from './once-per.js';
export { type Random, seededRandom, seedFrom, systemRandom } from './random.js';
export {
  type Done,
  done,
  error,
  hasErrors,
  type Problem,
  type Refused,
  type Result,
  refuse,
  type Severity,
  warning,
} from './result.js';
export { mmFromPoints, piecesToFeed, pointsFromMm, roundTo } from './units.js';
export { VirtualClock } from './virtual-clock.js';
