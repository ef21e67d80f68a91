/** Namespace names: the standard's (constant over all minor versions) and the W3C's. Source: the official schema sets. */
export const JDF_NAMESPACE = 'http://www.CIP4.org/JDFSchema_1_1';
export const XJDF_NAMESPACE = 'http://www.CIP4.org/JDFSchema_2_0';
export const XSI_NAMESPACE = 'http://www.w3.org/2001/XMLSchema-instance';
export const XMLNS_NAMESPACE = 'http://www.w3.org/2000/xmlns/';
export const XINCLUDE_NAMESPACE = 'http://www.w3.org/2001/XInclude';
export const XML_NAMESPACE = 'http://www.w3.org/XML/1998/namespace';
