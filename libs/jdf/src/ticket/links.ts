import type { PartKeys } from '../elements/part.js';
import { partsNamed, targetOf } from '../partition/index.js';
import {
  attributeOf,
  childElements,
  firstChild,
  parentOf,
  type XmlDocument,
  type XmlElement,
} from '../xml/index.js';

/** A resource link of a node with the resource that it leads to. */
export interface ResourceLink {
  readonly link: XmlElement;
  /** Name of the resource: that of the link without "Link". */
  readonly name: string;
  readonly usage: string;
  readonly processUsage: string | undefined;
  readonly resource: XmlElement;
  /** The parts that the link selects; empty for the whole. */
  readonly parts: readonly PartKeys[];
}

/** The links of a node whose resources are there, in document order. */
export function linksOf(doc: XmlDocument, node: XmlElement): ResourceLink[] {
  const pool = firstChild(node, 'ResourceLinkPool');
  return (pool === undefined ? [] : childElements(pool)).flatMap((link) => {
    const resource = targetOf(doc, link);
    if (resource === undefined || !link.local.endsWith('Link')) return [];
    return [
      {
        link,
        name: link.local.slice(0, -'Link'.length),
        usage: attributeOf(link, 'Usage') ?? '',
        processUsage: attributeOf(link, 'ProcessUsage'),
        resource,
        parts: partsNamed(link),
      },
    ];
  });
}

/** The root of the resource that an element is or lies in: a child of a ResourcePool. */
export function resourceAround(doc: XmlDocument, el: XmlElement): XmlElement | undefined {
  let at: XmlElement | undefined = el;
  while (at !== undefined) {
    const parent: XmlElement | undefined = parentOf(doc, at);
    if (parent?.local === 'ResourcePool') return at;
    at = parent;
  }
  return undefined;
}
