import type { PartKeys } from '../elements/part.js';

/** What stands in a Resource of the newer generation beside the specific resource. Source: the official XJDF 2.3 schema. */
export const BESIDE_SPECIFIC: ReadonlySet<string> = new Set(['AmountPool', 'Comment', 'GeneralID', 'Part']);

/** Partition keys as one text, the same in whatever order they are given. */
export function spelledKeys(keys: PartKeys): string {
  return JSON.stringify(Object.entries(keys).sort(([a], [b]) => (a < b ? -1 : 1)));
}

/** Attributes of a link of the older generation that the newer says of the resource: how it lies and when it is needed. */
export const OF_LINK = ['Orientation', 'Transformation', 'Start', 'StartOffset', 'Duration'] as const;
