import {
  child,
  children,
  type ElementCodec,
  integer,
  kept,
  keptOne,
  named,
  number,
  type Of,
  optional,
  readFields,
  text,
  tokens,
  type ValueOf,
  writeFields,
} from '../codec/index.js';
import { element } from '../xml/index.js';
import { base, fullElement } from './base.js';
import { resourceElement } from './resource-element.js';
import { costCenter } from './work.js';

export { costCenter, misDetails } from './work.js';

/** Who works at a device. */
export const employee = fullElement('Employee', {
  ...resourceElement,
  personalId: optional('PersonalID', text),
  roles: optional('Roles', tokens),
  shift: optional('Shift', text),
  costCenter: child(costCenter),
  person: keptOne(named('Person')),
});
export type Employee = Of<typeof employee>;

const moduleFields = {
  ...base,
  moduleId: optional('ModuleID', text),
  moduleType: optional('ModuleType', text),
  /** From 0. */
  moduleIndex: optional('ModuleIndex', integer),
  subModuleIndex: optional('SubModuleIndex', integer),
  deviceType: optional('DeviceType', text),
  manufacturer: optional('Manufacturer', text),
  manufacturerUrl: optional('ManufacturerURL', text),
  modelName: optional('ModelName', text),
  modelDescription: optional('ModelDescription', text),
  modelNumber: optional('ModelNumber', text),
  modelUrl: optional('ModelURL', text),
  revision: optional('Revision', text),
  serialNumber: optional('SerialNumber', text),
};

/** A module of a device, such as one printing unit; it may have modules of its own. */
export type DeviceModule = ValueOf<typeof moduleFields> & { readonly modules?: readonly DeviceModule[] };

/** A part of a machine as audits and signals name it: by its type and index, or by an ID. */
export const deviceModule: ElementCodec<DeviceModule> = {
  name: 'Module',
  get fields() {
    return withModules;
  },
  read: (el, findings) => readFields(withModules, el, findings),
  write(value) {
    const { attributes, children: made } = writeFields(withModules, value);
    return element('Module', attributes, made);
  },
};

const withModules = { ...moduleFields, modules: children(deviceModule) };

/** What a device says of itself. */
export const device = fullElement('Device', {
  ...resourceElement,
  deviceId: optional('DeviceID', text),
  deviceClass: optional('DeviceClass', tokens),
  deviceFamily: optional('DeviceFamily', text),
  deviceType: optional('DeviceType', text),
  friendlyName: optional('FriendlyName', text),
  jmfUrl: optional('JMFURL', text),
  secureJmfUrl: optional('SecureJMFURL', text),
  jmfSenderId: optional('JMFSenderID', text),
  jdfVersions: optional('JDFVersions', text),
  icsVersions: optional('ICSVersions', tokens),
  /** Folders that the device watches, fills, and puts what it refuses into. */
  jdfInputUrl: optional('JDFInputURL', text),
  jdfOutputUrl: optional('JDFOutputURL', text),
  jdfErrorUrl: optional('JDFErrorURL', text),
  /** What relative URLs are relative to. */
  directory: optional('Directory', text),
  knownLocalizations: optional('KnownLocalizations', tokens),
  manufacturer: optional('Manufacturer', text),
  manufacturerUrl: optional('ManufacturerURL', text),
  modelName: optional('ModelName', text),
  modelDescription: optional('ModelDescription', text),
  modelNumber: optional('ModelNumber', text),
  modelUrl: optional('ModelURL', text),
  presentationUrl: optional('PresentationURL', text),
  revision: optional('Revision', text),
  serialNumber: optional('SerialNumber', text),
  upc: optional('UPC', text),
  /** Pieces an hour. */
  maxRunSpeedPerHour: optional('MaxRunSpeed', number),
  costCenter: child(costCenter),
  modules: children(deviceModule),
  /** What the device can do, and pictures of it, as they stand in the message. */
  capabilities: kept(named('DeviceCap')),
  icons: kept(named('IconList')),
});
export type Device = Of<typeof device>;
