import { JDF_NAMESPACE, type XmlElement } from '../../xml/index.js';
import { type ChildShape, jdfVocabulary } from '../facts.js';
import type { Overflow } from '../source.js';
import { type Direction, Draft, finish, original } from '../translate.js';
import type { Target } from './ticket.js';

/** A list of separations: elements in the older generation. */
export function separations(
  direction: Direction,
  child: ChildShape,
  names: readonly string[],
  attribute: string,
  overflow: Overflow,
): XmlElement {
  const list = new Draft(child.name, direction.to.shape(child.shape)!);
  for (const name of names) {
    const spec = new Draft('SeparationSpec', direction.to.shape('SeparationSpec')!);
    spec.attributes.set('Name', original(direction, overflow, attribute, name));
    list.children.push(finish(direction, spec));
  }
  return finish(direction, list);
}

/** A reference to a resource or a part of it, where the element may have it. */
export function refElement(target: Target, out: Draft): XmlElement | undefined {
  const name = `${target.name}Ref`;
  const place = out.shape.byName.get(name);
  if (place === undefined) return undefined;
  const draft = new Draft(name, jdfVocabulary.shape(place.shape)!);
  draft.attributes.set('rRef', target.id);
  if (Object.keys(target.keys).length > 0) draft.children.push(partOf(target.keys));
  return finish({ uri: JDF_NAMESPACE }, draft);
}

/** The Part element of a partition. */
export function partOf(keys: Readonly<Record<string, string>>): XmlElement {
  const part = new Draft('Part', jdfVocabulary.shape('Part')!);
  for (const [name, value] of Object.entries(keys)) part.attributes.set(name, value);
  return finish({ uri: JDF_NAMESPACE }, part);
}
