import type { XmlElement } from '../../xml/index.js';
import type { Overflow } from '../source.js';

/** How a reference or inline resource gets its IDs in the newer generation; filled in by the placing of resources. */
export interface Placer {
  /** Sees to it that a resource of a pool is written, and gives the IDs for it. */
  refer(resource: XmlElement, overflow: Overflow, ref: XmlElement): readonly string[];
  /** Writes an inline resource as one of its own. */
  inline(child: XmlElement, overflow: Overflow): readonly string[];
  /** Writes an inline resource as a Resource element, for a set that is not the ticket's. */
  inlineElement(child: XmlElement, overflow: Overflow): XmlElement | undefined;
  /** Writes each colour of a pool as a resource of its own. */
  colours(pool: XmlElement): void;
}
