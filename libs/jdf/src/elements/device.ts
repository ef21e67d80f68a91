import { children, elementCodec, number, type Of, optional, required, text, tokens } from '../codec/index.js';

/** Who works at a device. */
export const employee = elementCodec('Employee', {
  personalId: optional('PersonalID', text),
  roles: optional('Roles', tokens),
  shift: optional('Shift', text),
});
export type Employee = Of<typeof employee>;

/** A module of a device, such as one printing unit. */
export const deviceModule = elementCodec('Module', {
  moduleId: optional('ModuleID', text),
  moduleType: optional('ModuleType', text),
  descriptiveName: optional('DescriptiveName', text),
});

/** What a device says of itself. */
export const device = elementCodec('Device', {
  deviceId: optional('DeviceID', text),
  deviceClass: optional('DeviceClass', tokens),
  deviceType: optional('DeviceType', text),
  descriptiveName: optional('DescriptiveName', text),
  friendlyName: optional('FriendlyName', text),
  jmfUrl: optional('JMFURL', text),
  jmfSenderId: optional('JMFSenderID', text),
  jdfVersions: optional('JDFVersions', text),
  modelName: optional('ModelName', text),
  /** Pieces an hour. */
  maxRunSpeedPerHour: optional('MaxRunSpeed', number),
  modules: children(deviceModule),
});
export type Device = Of<typeof device>;

export const costCenter = elementCodec('CostCenter', {
  costCenterId: required('CostCenterID', text),
  name: optional('Name', text),
});

export const misDetails = elementCodec('MISDetails', {
  workType: optional('WorkType', text),
  workTypeDetails: optional('WorkTypeDetails', text),
  costType: optional('CostType', text),
});
