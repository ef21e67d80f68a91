import { type Problem, warning } from '#libs/kernel';
import { attributeOf, withAttributes, type XmlDocument, type XmlElement } from '../xml/index.js';
import { bindingsAround, bindingsIn, settled } from './bindings.js';
import { type Inventory, inventoryOf, type Pooled } from './inventory.js';
import { placesMarked, withoutToken } from './marks.js';
import { where } from './places.js';
import { modesOf, type SpawnRecord } from './records.js';
import type { Return } from './returned.js';
import { sameContent } from './same-content.js';
import { keysTo, placeAt, withPlaces } from './scope.js';

/** A place of a resource and what came back for it. */
export interface Overwrite {
  readonly pooled: Pooled;
  /** In the parent ticket, and in the returned one. */
  readonly places: readonly { readonly before: XmlElement; readonly after: XmlElement }[];
}

/** What came back for each resource that could be changed; it is told where one did not come back. */
export function overwritesOf(
  parent: XmlDocument,
  child: XmlDocument,
  { record }: Return,
): { readonly overwrites: readonly Overwrite[]; readonly problems: readonly Problem[] } {
  const here = inventoryOf(parent.root);
  const there = inventoryOf(child.root);
  const problems: Problem[] = [];
  const overwrites = record.readWrite.flatMap((id): Overwrite[] => {
    const pooled = here.resources.get(id);
    if (pooled === undefined) return [];
    const copy = there.resources.get(id)?.root;
    const places = placesMarked(pooled.root, record.token).flatMap((before) => {
      const after = copy && placeAt(copy, keysTo(pooled.root, before));
      return after === undefined ? [] : [{ before, after }];
    });
    if (places.length === 0) {
      const hint = 'It stays as it was.';
      const message = `${pooled.root.name} "${id}" was to be changed and did not come back.`;
      problems.push(warning('JDF_MERGE', message, { ...where(parent, pooled.root), hint }));
    }
    return places.length === 0 ? [] : [{ pooled, places }];
  });
  return { overwrites, problems };
}

/** The resource of the parent ticket with what came back, without the mark that it was out. */
export function broughtBack(
  parent: XmlDocument,
  child: XmlDocument,
  { pooled, places }: Overwrite,
  { record, records }: Return,
): XmlElement {
  const after = new Map(
    places.map((one) => {
      const around = bindingsAround(parent, one.before);
      const moved = settled(one.after, bindingsIn(child, one.after), around, one.before);
      const marks = {
        SpawnStatus: attributeOf(one.before, 'SpawnStatus'),
        SpawnIDs: attributeOf(one.before, 'SpawnIDs'),
      };
      return [one.before, withAttributes(moved, marks)] as const;
    }),
  );
  const whole = withPlaces(pooled.root, (place) => after.get(place));
  return withoutToken(whole, record.token, modesOf(records, pooled.id));
}

/**
 * Copies that were only to be read and came back changed: what was changed is not taken over. Silent where the original
 * may have been changed by another ticket merged since, for then nobody can tell.
 */
export function changedReadOnly(
  parent: XmlDocument,
  child: XmlDocument,
  record: SpawnRecord,
  records: readonly SpawnRecord[],
): { readonly copy: XmlElement; readonly problem: Problem }[] {
  const here: Inventory = inventoryOf(parent.root);
  const there = inventoryOf(child.root);
  return record.readOnly.flatMap((id) => {
    const original = here.resources.get(id)?.root;
    const copy = there.resources.get(id)?.root;
    if (original === undefined || copy === undefined) return [];
    const since = records.some(
      (one) =>
        one.kind === 'Merged' && one.overwritten.includes(id) && !((one.at ?? Infinity) < (record.at ?? 0)),
    );
    if (since || sameContent(original, copy, ['Locked', 'SpawnStatus', 'SpawnIDs'])) return [];
    const hint = `Spawn ${id} to be changed, if it is to be changed out there.`;
    const message = `${copy.name} "${id}" was only to be read, and has been changed.`;
    return [{ copy, problem: warning('JDF_SPAWN', message, { ...where(child, copy), hint }) }];
  });
}
