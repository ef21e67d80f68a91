/**
 * A lossless XML tree. Nodes never change: whoever wants another document builds new nodes and shares the rest.
 * Where a node was read from text it remembers that text, so that what nobody touched is written back byte for byte.
 */
export interface XmlAttribute {
  /** As written, with its prefix. */
  readonly name: string;
  readonly prefix: string;
  readonly local: string;
  /** Namespace; '' for an attribute without prefix. */
  readonly uri: string;
  readonly value: string;
}

/** The text of a start and an end tag as read, and the attributes that it was read with, in the same order. */
export interface TagSource {
  readonly open: string;
  /** '' for an empty-element tag. */
  readonly close: string;
  readonly attributes: readonly XmlAttribute[];
}

export interface XmlElement {
  readonly kind: 'element';
  /** As written, with its prefix. */
  readonly name: string;
  readonly prefix: string;
  readonly local: string;
  readonly uri: string;
  readonly attributes: readonly XmlAttribute[];
  readonly children: readonly XmlNode[];
  /** Line of the start tag in the text it was read from, from 1; 0 for an element made here. */
  readonly line: number;
  readonly source?: TagSource;
}

/**
 * Text of a leaf node as read; good only for the value it was read with. A leaf read without it was written just as it
 * would be written here.
 */
export interface LeafSource {
  readonly raw: string;
  readonly value: string;
}

export interface XmlText {
  readonly kind: 'text';
  readonly value: string;
  readonly source?: LeafSource;
}

export interface XmlCdata {
  readonly kind: 'cdata';
  readonly value: string;
  readonly source?: LeafSource;
}

export interface XmlComment {
  readonly kind: 'comment';
  readonly value: string;
  readonly source?: LeafSource;
}

export interface XmlInstruction {
  readonly kind: 'instruction';
  readonly target: string;
  readonly value: string;
  readonly source?: LeafSource;
}

export type XmlNode = XmlElement | XmlText | XmlCdata | XmlComment | XmlInstruction;

export type XmlEncoding = 'utf-8' | 'utf-16le' | 'utf-16be' | 'iso-8859-1' | 'us-ascii';

export interface XmlDocument {
  /** The XML declaration as written, or '' if there is none. */
  readonly declaration: string;
  readonly before: readonly XmlNode[];
  readonly root: XmlElement;
  readonly after: readonly XmlNode[];
  /** How the bytes were encoded that it was read from. */
  readonly encoding: XmlEncoding;
  /** Whether those bytes began with a byte order mark. */
  readonly bom: boolean;
}
