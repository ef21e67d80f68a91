import { element, indented, type XmlElement, XSI_NAMESPACE } from '#libs/jdf';
import { shortText } from '../build/values.js';
import type { ResourceDraft } from '../process-type.js';
import type { NodeDraft } from './describe-node.js';
import { writeLink } from './write-link.js';

type IdOf = (key: string) => string;

/** A resource as an element of a pool. */
export function writeResource(draft: ResourceDraft, idOf: IdOf): XmlElement {
  return element(
    draft.name,
    { ID: idOf(draft.key), Class: draft.class, Status: draft.status ?? 'Available', ...draft.attributes },
    draft.children ?? [],
  );
}

/** All resources that a node links, and those they refer to, each once. */
export function resourcesOf(nodes: readonly NodeDraft[]): readonly ResourceDraft[] {
  const found = new Map<string, ResourceDraft>();
  const visit = (draft: ResourceDraft): void => {
    if (found.has(draft.key)) return;
    for (const ref of draft.refs ?? []) visit(ref);
    found.set(draft.key, draft);
  };
  for (const node of nodes) for (const link of node.links) visit(link.resource);
  return [...found.values()];
}

/** Key of a step's node. */
export const nodeKey = (stepId: string): string => `node-${stepId}`;

/** Attributes of a step's node; several types make it one Combined node. */
export function nodeAttributes(node: NodeDraft, idOf: IdOf): Record<string, string | undefined> {
  const { step, planStep } = node;
  const several = planStep.types.length > 1;
  const type = several ? 'Combined' : planStep.types[0]!;
  return {
    ID: idOf(nodeKey(step.id)),
    Type: type,
    Types: several ? planStep.types.join(' ') : undefined,
    JobPartID: step.id,
    Status: step.status,
    StatusDetails: step.statusDetails === null ? undefined : shortText(step.statusDetails),
    Activation: step.activation,
    'xsi:type': type,
  };
}

/** A step's node below its product, with the audits of the step. What it shares with its siblings lies in their parent. */
export function writeChildNode(
  node: NodeDraft,
  idOf: IdOf,
  audits: readonly XmlElement[],
  declareXsi: boolean,
): XmlElement {
  const own = resourcesOf([node]).filter((draft) => !draft.shared);
  return element(
    'JDF',
    { ...nodeAttributes(node, idOf), 'xmlns:xsi': declareXsi ? XSI_NAMESPACE : undefined },
    [
      element('AuditPool', {}, audits),
      element(
        'ResourcePool',
        {},
        own.map((draft) => writeResource(draft, idOf)),
      ),
      linkPool(node, idOf),
    ],
  );
}

/** All links of a node, in the order in which they were described. */
export function linkPool(node: NodeDraft, idOf: IdOf): XmlElement {
  return element(
    'ResourceLinkPool',
    {},
    node.links.map((link) => writeLink(link, idOf)),
  );
}

/** The element with the prefix that its new surroundings use, laid out with indents. */
export function settledIn(el: XmlElement, like: XmlElement, depth: number): XmlElement {
  return indented(like.prefix === '' ? el : prefixed(el, like.prefix), depth);
}

function prefixed(el: XmlElement, prefix: string): XmlElement {
  return {
    ...el,
    prefix,
    name: `${prefix}:${el.local}`,
    // The name of a type is read with the namespaces in force, so it needs the prefix too.
    attributes: el.attributes.map((a) =>
      a.name === 'xsi:type' ? { ...a, value: `${prefix}:${a.value}` } : a,
    ),
    children: el.children.map((child) => (child.kind === 'element' ? prefixed(child, prefix) : child)),
  };
}
