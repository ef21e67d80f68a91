import { element, type XmlElement } from '#libs/jdf';
import type { WorkInput } from '../ticket/work.js';

/** The resource itself for a message: its name and plain attributes, without what lies in it. */
export function resourceElement(input: WorkInput): XmlElement {
  return element(input.name, input.attributes);
}
