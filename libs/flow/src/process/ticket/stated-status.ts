import {
  attributeOf,
  descendants,
  linksOf,
  partsOf,
  withAttributes,
  withChildren,
  type XmlDocument,
  type XmlElement,
} from '#libs/jdf';

/**
 * What a document says of the status of a node elsewhere than in its Status, with the status that it has now: NodeInfo of
 * its own that state a NodeStatus. What was said of parts of the node is left out: how far each is nobody knows here.
 */
export function restated(doc: XmlDocument, node: XmlElement, status: string): Map<XmlElement, XmlElement> {
  const found = new Map<XmlElement, XmlElement>();
  for (const { name, resource } of linksOf(doc, node)) {
    if (name !== 'NodeInfo' || !statesStatus(resource) || isShared(doc, resource)) continue;
    found.set(resource, withAttributes(withoutInParts(resource), { NodeStatus: status }));
  }
  return found;
}

const statesStatus = (info: XmlElement): boolean =>
  attributeOf(info, 'NodeStatus') !== undefined || partsOf(info).some(statesStatus);

/** Another node has it too, of whose status nothing is said here. */
function isShared({ root }: XmlDocument, resource: XmlElement): boolean {
  const id = attributeOf(resource, 'ID');
  const links = [...descendants(root)].filter(
    (el) => el.local === 'NodeInfoLink' && attributeOf(el, 'rRef') === id,
  );
  return links.length > 1;
}

function withoutInParts(info: XmlElement): XmlElement {
  const parts = new Set<unknown>(partsOf(info));
  return withChildren(
    info,
    info.children.map((child) =>
      child.kind === 'element' && parts.has(child)
        ? withAttributes(withoutInParts(child), { NodeStatus: undefined })
        : child,
    ),
  );
}
