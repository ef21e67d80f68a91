import { parseXml, type XmlDocument } from '#libs/jdf';
import type { Result } from '#libs/kernel';

/** The value, where a test goes on only if there is one; else it fails with the problems. */
export function valueIn<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
}

/** A document that a test knows to be well-formed. */
export function parsedXml(input: string | Uint8Array): XmlDocument {
  return valueIn(parseXml(input));
}
