import type { Findings } from '../../codec/index.js';
import { familyOf } from '../../xjdf/message-names.js';
import {
  attributeOf,
  childElements,
  descendants,
  firstChild,
  XJDF_NAMESPACE,
  type XmlDocument,
  type XmlElement,
} from '../../xml/index.js';
import { type Family, families } from '../family.js';

/** One check of the messages of a document. Adding one is a file with one of these and a line in the index. */
export interface MessageCheck {
  /** Its number in our list of what no schema can find. */
  readonly number: number;
  readonly name: string;
  run(sent: Sent, findings: Findings): void;
}

/** What all checks look at, found once. */
export interface Sent {
  readonly root: XmlElement;
  readonly messages: readonly SentMessage[];
}

/** A message as it stands, whether or not all of it could be read. */
export interface SentMessage {
  readonly element: XmlElement;
  readonly family: Family;
  /** Only the newer generation may leave it out. */
  readonly id: string | undefined;
  /** What it answers. */
  readonly refId: string | undefined;
  /** Time, as stated. */
  readonly time: string | undefined;
  readonly type: string;
  /** What is inside, of the standard's namespace, in document order. */
  readonly inside: readonly XmlElement[];
}

/** The messages of a document of either generation. */
export function sentIn({ root }: XmlDocument): Sent {
  const newer = root.uri === XJDF_NAMESPACE;
  const messages = childElements(root).flatMap((element): SentMessage[] => {
    const named = newer
      ? familyOf(element.local)
      : { family: element.local, type: attributeOf(element, 'Type') };
    const family = families.find((one) => one === named?.family);
    if (family === undefined) return [];
    const head = newer ? firstChild(element, 'Header') : element;
    const said = (name: string) => (head === undefined ? undefined : attributeOf(head, name)?.trim());
    const inside = [...descendants(element)].filter(({ uri }) => uri === root.uri);
    const [id, refId, time] = [said('ID'), said('refID'), said('Time')];
    return [{ element, family, id, refId, time, type: named?.type ?? '', inside }];
  });
  return { root, messages };
}

/** All elements of a name inside a message. */
export function within({ inside }: SentMessage, local: string): XmlElement[] {
  return inside.filter((el) => el.local === local);
}

/** A number that an attribute states; undefined where it states none, or what is no number. */
export function numberOf(el: XmlElement, name: string): number | undefined {
  const value = Number(attributeOf(el, name)?.trim() || Number.NaN);
  return Number.isNaN(value) ? undefined : value;
}
