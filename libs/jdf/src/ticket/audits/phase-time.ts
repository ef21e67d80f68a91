import {
  children,
  elementCodec,
  integerRangeList,
  integers,
  nmtoken,
  oneOf,
  optional,
  required,
  shortString,
  text,
  time,
} from '../../codec/index.js';
import { device, misDetails } from '../../elements/device.js';
import { part } from '../../elements/part.js';
import { activity } from '../../elements/work.js';
import { deviceStatuses, phaseStatuses } from '../../enumerations.js';
import { resourceLinks } from '../views/resource-link.js';
import { auditFields } from './audit-fields.js';

/** What some modules of the device did in the phase. */
const modulePhase = elementCodec('ModulePhase', {
  deviceId: required('DeviceID', shortString),
  moduleType: required('ModuleType', nmtoken),
  moduleId: optional('ModuleID', shortString),
  /** From 0. */
  moduleIndex: optional('ModuleIndex', integerRangeList),
  combinedProcessIndex: optional('CombinedProcessIndex', integers),
  deviceStatus: optional('DeviceStatus', oneOf(deviceStatuses)),
  statusDetails: optional('StatusDetails', shortString),
  start: optional('Start', time),
  end: optional('End', time),
});

/** A stretch of time in which the node had one status. */
export const phaseTime = elementCodec('PhaseTime', {
  ...auditFields,
  start: required('Start', time),
  end: optional('End', time),
  status: required('Status', oneOf(phaseStatuses)),
  statusDetails: optional('StatusDetails', text),
  devices: children(device),
  activities: children(activity),
  modulePhases: children(modulePhase),
  misDetails: children(misDetails),
  /** Amounts of the phase. */
  links: resourceLinks,
  parts: children(part),
});
