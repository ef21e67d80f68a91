export {
  type AddressGuard,
  type AddressGuardSettings,
  type CheckedAddress,
  makeAddressGuard,
} from './address-guard/address-guard.js';
export { locateYaml, readYaml } from './definitions/read-yaml.js';
export type {
  DeviceDriver,
  DriverAbilities,
  DriverKind,
  DriverPorts,
  QueueAnswer,
} from './drivers/device-driver.js';
export { type DriverLink, makeDeviceLink } from './drivers/device-link.js';
export { driverKinds } from './drivers/index.js';
export type { HotFolderAnswer, HotFolderFile, HotFolderSettings } from './hot-folder/settings.js';
export { type HotFolderWatch, watchHotFolder } from './hot-folder/watch-hot-folder.js';
export { closeConnections } from './http/agents.js';
export type { ExchangeLimits } from './http/exchange.js';
export { type Fetched, fetchGuarded } from './http/fetch-guarded.js';
export { type PostOptions, type PostOutcome, postXml } from './http/post-xml.js';
export { gathered, inStretches } from './packages/byte-source.js';
export {
  checkPartReferences,
  checkReferences,
  type PartDocument,
  type PartList,
  partReferences,
  type Reference,
} from './packages/check-references.js';
export { type MediaType, readMediaType } from './packages/media-type.js';
export {
  type Package,
  type PackageLimits,
  type PackagePart,
  type PartToSend,
  packageLimits,
} from './packages/package.js';
export type { PartHead } from './packages/part-head.js';
export { kindOfPart, mediaTypeByName, type PartKind } from './packages/part-kind.js';
export { type OpenSink, type PartSink, toMemory } from './packages/part-sink.js';
export { readMultipart, type StreamedPart, streamMultipart } from './packages/read-multipart.js';
export { packageKind, readPackage } from './packages/read-package.js';
export { readZip } from './packages/read-zip.js';
export { isInside, resolveCid, resolveReference } from './packages/resolve-reference.js';
export { type FoundTicket, ticketIn, withinPart } from './packages/ticket-in.js';
export { type MultipartToSend, type WrittenPackage, writeMultipart } from './packages/write-multipart.js';
export { writeZip } from './packages/write-zip.js';
