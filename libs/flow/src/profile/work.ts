import {
  attributeOf,
  childElements,
  effectivePart,
  linksOf,
  resolveParts,
  subElements,
  XJDF_NAMESPACE,
  type XmlDocument,
  type XmlElement,
} from '#libs/jdf';
import { mmFromPoints, roundTo } from '#libs/kernel';

/** What a node takes and makes, the same for both generations: there are no links in the newer one. */
export interface Work {
  readonly node: XmlElement;
  readonly processes: readonly string[];
  /** The resources of a name that go into one of its processes, or come out; each part by itself. */
  taken(process: string, name: string): readonly Given[];
  made(process: string, name: string): readonly Given[];
  /** The Media that a resource is made of, inline or by reference. */
  mediaOf(given: Given): readonly XmlElement[];
}

/** A resource, or a part of one. */
export interface Given {
  /** Where it stands. */
  readonly at: XmlElement;
  /** It, with all that it inherits. */
  readonly el: XmlElement;
  /** ProcessUsage; '' for none. */
  readonly role: string;
  /** Partition keys that set it apart. */
  readonly keys: Readonly<Record<string, string>>;
}

interface Found extends Given {
  readonly name: string;
  readonly usage: string;
  /** Positions in Types of the processes it is for; empty for all. */
  readonly steps: readonly number[];
}

/** Of a node of a JDF, or of the root of an XJDF. */
export function workOf(doc: XmlDocument, node: XmlElement, processes: readonly string[]): Work {
  const newer = node.uri === XJDF_NAMESPACE;
  const found = newer ? inSets(node) : inLinks(doc, node);
  const used = (usage: string, process: string, name: string) =>
    found.filter(
      (one) =>
        one.usage === usage &&
        one.name === name &&
        (one.steps.length === 0 || one.steps.some((step) => processes[step] === process)),
    );
  return {
    node,
    processes,
    taken: (process, name) => used('Input', process, name),
    made: (process, name) => used('Output', process, name),
    mediaOf: ({ el }) =>
      newer ? referredTo(doc, attributeOf(el, 'MediaRef')) : subElements(doc, el, 'Media'),
  };
}

function inLinks(doc: XmlDocument, node: XmlElement): Found[] {
  return linksOf(doc, node).flatMap(({ link, name, usage, processUsage, resource, parts }) =>
    resolveParts(resource, parts).found.map((leaf) => ({
      name,
      usage: usage.trim(),
      role: processUsage?.trim() ?? '',
      steps: numbersOf(link, 'CombinedProcessIndex'),
      keys: leaf.keys,
      at: leaf.chain.at(-1)!,
      el: effectivePart(leaf),
    })),
  );
}

function inSets(root: XmlElement): Found[] {
  return childElements(root, 'ResourceSet').flatMap((set) => {
    const name = attributeOf(set, 'Name')?.trim() ?? '';
    return childElements(set, 'Resource').flatMap((resource) =>
      childElements(resource, name).map((el) => ({
        name,
        usage: attributeOf(set, 'Usage')?.trim() ?? '',
        role: attributeOf(set, 'ProcessUsage')?.trim() ?? '',
        steps: numbersOf(set, 'CombinedProcessIndex'),
        keys: Object.fromEntries(
          childElements(resource, 'Part').flatMap(({ attributes }) =>
            attributes.map(({ local, value }) => [local, value]),
          ),
        ),
        at: el,
        el,
      })),
    );
  });
}

function referredTo({ root }: XmlDocument, id: string | undefined): XmlElement[] {
  if (id === undefined) return [];
  const resource = childElements(root, 'ResourceSet')
    .flatMap((set) => childElements(set, 'Resource'))
    .find((one) => attributeOf(one, 'ID') === id.trim());
  return resource === undefined ? [] : childElements(resource, 'Media');
}

/** The numbers that an attribute lists; empty where it is not there. */
export function numbersOf(el: XmlElement, name: string): number[] {
  return (attributeOf(el, name) ?? '').split(/\s+/).filter(Boolean).map(Number);
}

/** A length of an attribute in points, in millimetres; 0 where it states none, or none yet. */
export function lengthMm(el: XmlElement, name: string, at = 0): number {
  const points = numbersOf(el, name)[at] ?? 0;
  return points > 0 ? mmFromPoints(points) : 0;
}

export const inMm = (...lengths: number[]): string =>
  `${lengths.map((one) => roundTo(one, 1)).join(' × ')} mm`;

// Points are rounded when a ticket is written.
export const TOLERANCE_MM = 0.5;
export const THICKNESS_TOLERANCE_MM = 0.01;
