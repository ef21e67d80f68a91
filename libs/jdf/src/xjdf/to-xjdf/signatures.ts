import { attributeOf, type XmlElement, type XmlNode } from '../../xml/index.js';
import { Draft, finish } from '../translate.js';
import { asToken } from '../values.js';
import { attribute, inOrder } from '../write.js';
import type { Job, SignatureUse } from './job.js';
import { type Resources, shapeOf } from './resources.js';

/** Gives binding signatures the names by which positions call them, and their cells what stripping said of them. */
export function finishSignatures(job: Job, resources: Resources): void {
  for (const set of job.sets.filter(({ name }) => name === 'BinderySignature')) {
    set.resources.forEach((resource, i) => {
      const id = attributeOf(resource, 'ID') ?? '';
      const use = job.signatures.get(id);
      if (use !== undefined)
        set.resources[i] = { ...resource, children: childrenOf(resources, resource, asToken(id), use) };
    });
  }
}

function childrenOf(
  resources: Resources,
  resource: XmlElement,
  own: string,
  use: SignatureUse,
): XmlElement['children'] {
  return resource.children.flatMap((child): readonly XmlNode[] => {
    if (child.kind !== 'element') return [child];
    if (child.local === 'BinderySignature') return [withCells(resources, child, use.cells)];
    const isOwn = child.local === 'Part' && attributeOf(child, 'BinderySignatureID') === own;
    if (!isOwn || use.names.size === 0) return [child];
    return [...use.names].map((name) => ({
      ...child,
      attributes: child.attributes.map((one) =>
        one.local === 'BinderySignatureID' ? { ...one, value: name } : one,
      ),
    }));
  });
}

function withCells(
  resources: Resources,
  signature: XmlElement,
  cells: ReadonlyMap<string, string>,
): XmlElement {
  if (cells.size === 0) return signature;
  const there = signature.children.filter((child) => child.kind === 'element');
  const bare = finish(resources.direction, new Draft('SignatureCell', shapeOf('SignatureCell')));
  const all = there.some(({ local }) => local === 'SignatureCell') ? there : [...there, bare];
  const children = all.map((child) => {
    if (child.local !== 'SignatureCell') return child;
    const more = [...cells].filter(([name]) => attributeOf(child, name) === undefined);
    return {
      ...child,
      attributes: [...child.attributes, ...more.map(([name, value]) => attribute(name, value))],
    };
  });
  return { ...signature, children: inOrder(children, shapeOf('BinderySignature')) };
}
