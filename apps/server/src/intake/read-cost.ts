import type { XmlLimits } from '#libs/jdf';
import type { Settings } from '../settings.js';

/** What reading one document may cost, here and in the thread that reads. */
export interface ReadCost {
  readonly limits: Partial<XmlLimits>;
  /** Real milliseconds for any document, and more for each megabyte of it. */
  readonly baseMs: number;
  readonly msPerMb: number;
  /** Memory of the thread that reads, in megabytes. */
  readonly memoryMb: number;
}

/** What reading may cost where no setting says otherwise. */
export const usualReadCost: ReadCost = { limits: {}, baseMs: 5000, msPerMb: 1000, memoryMb: 512 };

/** What reading may cost by the settings, in milliseconds, megabytes and the limits of the reader. */
export function readCostOf(settings: Settings): ReadCost {
  return {
    limits: {
      bytes: settings.BODY_LIMIT_MB * 1024 * 1024,
      depth: settings.XML_DEPTH,
      elements: settings.XML_ELEMENTS,
      nodes: settings.XML_NODES,
      attributesPerElement: settings.XML_ATTRIBUTES,
      attributeLength: settings.XML_ATTRIBUTE_LENGTH,
      nameLength: settings.XML_NAME_LENGTH,
      references: settings.XML_REFERENCES,
      textLength: settings.XML_TEXT_LENGTH,
    },
    baseMs: settings.READ_SECONDS * 1000,
    msPerMb: settings.READ_SECONDS_PER_MB * 1000,
    memoryMb: settings.READ_MEMORY_MB,
  };
}

/**
 * Limits of a message. It is parsed in turns, but understood at one go on the thread that serves: so many elements hold
 * that thread for a moment only, and no message of the standard needs more.
 */
export function messageLimits(settings: Settings): Partial<XmlLimits> {
  const { limits } = readCostOf(settings);
  return { ...limits, elements: Math.min(settings.XML_ELEMENTS, settings.MESSAGE_ELEMENTS) };
}

/** Real milliseconds that a document of this many bytes may take. */
export function budgetMs({ baseMs, msPerMb }: ReadCost, bytes: number): number {
  return baseMs + (msPerMb * bytes) / (1024 * 1024);
}
