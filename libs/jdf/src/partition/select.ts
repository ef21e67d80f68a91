import { oncePer } from '#libs/kernel';
import type { PartKeys } from '../elements/part.js';
import type { XmlElement } from '../xml/index.js';
import { physicalPart } from './identical.js';
import { canonical } from './key-value.js';
import { freeKeys, isKey } from './keys.js';
import { keysBelow, partsMeant, partsWith } from './part-index.js';
import { type PartNode, type PartTree, partTreeOf } from './part-tree.js';
import { type Partition, resolveParts } from './resolve.js';

/** All leaves of a resource, each once; one that is not partitioned is its own leaf. */
export const partitionLeaves = oncePer(
  (resource: XmlElement): readonly Partition[] => resolveParts(resource, []).found,
);

/**
 * The one leaf that a selection means where only one can be meant, as by a reference. Of several that share a member of
 * a list, the one whose values are those asked for. Undefined where there is none or where it is not clear which.
 */
export function resolveOne(resource: XmlElement, selection: PartKeys): Partition | undefined {
  const { found } = resolveParts(resource, [selection]);
  if (found.length <= 1) return found[0];
  const same = found.filter(({ keys }) =>
    Object.entries(selection).every(
      ([key, value]) => keys[key] === undefined || canonical(key, keys[key]) === canonical(key, value),
    ),
  );
  return same.length === 1 ? same[0] : undefined;
}

/**
 * The deepest single part that a selection names, following the keys inwards; a key that it leaves open ends the walk.
 * Undefined when it names what is not there, unless PartUsage lets the nearest part stand in (see resolveParts).
 */
export function selectPart(resource: XmlElement, selection: PartKeys): Partition | undefined {
  const tree = partTreeOf(resource);
  const explicit = tree.usage === 'Explicit';
  if (explicit && namesUnknown(tree, selection)) return undefined;
  let at = tree.root;
  let keys: PartKeys = {};
  for (;;) {
    const key = keysBelow(at).find((name) => Object.hasOwn(selection, name));
    const next = key === undefined ? undefined : singlePart(at, key, selection);
    if (next === undefined) {
      const left = tree.keys.some((name) => Object.hasOwn(selection, name) && !Object.hasOwn(keys, name));
      const ends = explicit && left && at.parts.length === 0;
      const absent = key === undefined ? ends : tree.usage !== 'Implicit';
      return absent ? undefined : { chain: at.chain, keys };
    }
    keys = { ...next.keys, ...keys };
    at = physicalPart(tree, next);
  }
}

/** The part with the value asked for, else the only one that shares a member with it. */
function singlePart(at: PartNode, key: string, selection: PartKeys): PartNode | undefined {
  const [same] = partsWith(at, key, selection[key]!);
  if (same !== undefined) return same;
  const found = partsMeant(at, { [key]: selection[key]! });
  return found.length === 1 ? found[0] : undefined;
}

/** Whether an explicit selection names a key that the resource does not have. */
function namesUnknown(tree: PartTree, selection: PartKeys): boolean {
  const free = freeKeys(tree.root.element.local);
  return Object.keys(selection).some((key) => isKey(key) && !tree.keys.includes(key) && !free.has(key));
}
