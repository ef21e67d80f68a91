import type { Problem } from '#libs/kernel';
import type { XmlDocument } from '../xml/index.js';
import { changedReadOnly } from './overwritten.js';
import { returnOf } from './returned.js';

/**
 * What stands against merging a returned ticket, without merging it: where it does not fit, and each copy that was only
 * to be read and has been changed (JDF SpawnStatus SpawnedRO, Locked). Merging drops such changes with a warning.
 */
export function checkReturned(parent: XmlDocument, child: XmlDocument): readonly Problem[] {
  const back = returnOf(parent, child);
  if (!back.ok) return back.problems;
  const { record, records } = back.value;
  return changedReadOnly(parent, child, record, records).map(({ problem }) => ({
    ...problem,
    severity: 'error',
  }));
}
