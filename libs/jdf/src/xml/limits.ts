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
  references: 100_000,
  textLength: 1024 * 1024,
};
