export * from './build.js';
export {
  defaultXmlLimits,
  greatestDepth,
  noXmlLimits,
  type XmlLimits,
  xmlLimitSettings,
  xmlLimitsFrom,
} from './limits.js';
export {
  JDF_NAMESPACE,
  XJDF_NAMESPACE,
  XML_NAMESPACE,
  XMLNS_NAMESPACE,
  XSI_NAMESPACE,
} from './namespaces.js';
export type * from './node.js';
export { parseXml, parseXmlStream } from './parse-xml.js';
export * from './query.js';
export { encodeXml, writeElement, writeXml } from './write-xml.js';
export { XmlReader } from './xml-reader.js';
