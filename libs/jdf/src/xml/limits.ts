/** What a document may cost. Counts are the danger, not bytes: each of these has stalled a parser that did not look. */
export interface XmlLimits {
  /** Length of the input in bytes (of a string: in UTF-16 units). */
  readonly bytes: number;
  /** Elements open at once. */
  readonly depth: number;
  readonly elements: number;
  /** Nodes of any kind. */
  readonly nodes: number;
  readonly attributesPerElement: number;
  /** Characters in one attribute value. */
  readonly attributeLength: number;
  /** Characters in the name of an element or attribute, prefix included. */
  readonly nameLength: number;
  /** Character and entity references (`&…;`) in the whole document. */
  readonly references: number;
  /** Characters in one text, CDATA section, comment or processing instruction. */
  readonly textLength: number;
}

export const defaultXmlLimits: XmlLimits = {
  bytes: 16 * 1024 * 1024,
  depth: 64,
  elements: 200_000,
  nodes: 1_000_000,
  attributesPerElement: 256,
  attributeLength: 64 * 1024,
  nameLength: 1024,
  references: 100_000,
  textLength: 1024 * 1024,
};

/**
 * No document is read that is deeper, whatever the limits say: what goes through a tree goes down it by calls, which must
 * not fill the stack. The documents of the standard are some twenty elements deep.
 */
export const greatestDepth = 512;

/** For a document that was within the limits when it was taken in. */
export const noXmlLimits: XmlLimits = {
  bytes: Infinity,
  depth: Infinity,
  elements: Infinity,
  nodes: Infinity,
  attributesPerElement: Infinity,
  attributeLength: Infinity,
  nameLength: Infinity,
  references: Infinity,
  textLength: Infinity,
};

/** The setting that raises each limit. Server and command line read them; a refusal names the one that it is about. */
export const xmlLimitSettings: Readonly<Record<keyof XmlLimits, string>> = {
  bytes: 'SIDELAY_BODY_LIMIT_MB',
  depth: 'SIDELAY_XML_DEPTH',
  elements: 'SIDELAY_XML_ELEMENTS',
  nodes: 'SIDELAY_XML_NODES',
  attributesPerElement: 'SIDELAY_XML_ATTRIBUTES',
  attributeLength: 'SIDELAY_XML_ATTRIBUTE_LENGTH',
  nameLength: 'SIDELAY_XML_NAME_LENGTH',
  references: 'SIDELAY_XML_REFERENCES',
  textLength: 'SIDELAY_XML_TEXT_LENGTH',
};

/** What a refusal for one limit says: what there is too much of, and how to go on. */
export function overLimit(limits: XmlLimits, name: keyof XmlLimits, what: string): [string, string] {
  const limit = limits[name];
  if (name === 'depth' && limit >= greatestDepth)
    return [
      `The document has ${what}.`,
      `Split the document: nothing deeper than ${limit} elements is read.`,
    ];
  return [
    `The document has ${what}.`,
    `Split the document, or raise ${xmlLimitSettings[name]} (the limit is ${limit} here).`,
  ];
}

/** The limits that an environment sets; a setting that is no positive number is left to who judges settings. */
export function xmlLimitsFrom(env: Readonly<Record<string, string | undefined>>): Partial<XmlLimits> {
  const limits: Partial<Record<keyof XmlLimits, number>> = {};
  for (const [name, setting] of Object.entries(xmlLimitSettings) as [keyof XmlLimits, string][]) {
    const value = Number(env[setting]);
    if (value > 0) limits[name] = name === 'bytes' ? value * 1024 * 1024 : value;
  }
  return limits;
}
