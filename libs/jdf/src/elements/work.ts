import {
  elementCodec,
  integerOrInfinity,
  nmtoken,
  number,
  type Of,
  oneOf,
  optional,
  required,
  string,
  text,
  time,
} from '../codec/index.js';
import { baseAttributes, fullElement } from './base.js';

/** Whether a machine works for jobs, for itself, or is being maintained. */
export const deviceOperationModes = ['Productive', 'NonProductive', 'Maintenance'] as const;

/** To whom the cost goes. */
export const costCenter = fullElement('CostCenter', {
  costCenterId: required('CostCenterID', text),
  name: optional('Name', text),
});

/** How the work is to be accounted for. */
export const misDetails = fullElement('MISDetails', {
  workType: optional('WorkType', oneOf(['Original', 'Alteration', 'Rework'])),
  workTypeDetails: optional('WorkTypeDetails', text),
  costType: optional('CostType', oneOf(['Chargeable', 'NonChargeable'])),
  complexity: optional('Complexity', number),
  deviceOperationMode: optional('DeviceOperationMode', oneOf(deviceOperationModes)),
});

/** Work that a person does at a device, such as changing a roller. */
export const activity = elementCodec('Activity', {
  ...baseAttributes,
  activityId: optional('ActivityID', text),
  activityName: optional('ActivityName', text),
  personalId: optional('PersonalID', text),
  startTime: optional('StartTime', time),
  endTime: optional('EndTime', time),
});
export type Activity = Of<typeof activity>;

/** Something that happened at a device, by a code of its maker. */
export const event = fullElement('Event', {
  eventId: required('EventID', text),
  eventValue: optional('EventValue', text),
});
export type DeviceEvent = Of<typeof event>;

/** A job that shares a sheet with others, with its copies on it. */
export const gangSource = fullElement('GangSource', {
  copies: required('Copies', integerOrInfinity),
  jobId: required('JobID', string),
  assemblyId: optional('AssemblyID', nmtoken),
});
export type GangSource = Of<typeof gangSource>;
