import { join } from 'node:path';
import { attributeOf, convertSteps, type Lost, writeXml } from '#libs/jdf';
import { done, type Result } from '#libs/kernel';
import { writeTo } from '../write-to.js';
import { readXml } from './convert-bytes.js';

export interface WrittenSteps {
  readonly documents: readonly { readonly file: string; readonly node: string }[];
  readonly lost: readonly Lost[];
}

/**
 * Writes one XJDF for each step of a JDF ticket into a folder, numbered in their order and named by JobPartID or ID.
 * Errors: those of reading, and KIND_UNKNOWN where there are no steps.
 */
export function convertToFolder(bytes: Uint8Array, folder: string): Result<WrittenSteps> {
  const parsed = readXml(bytes);
  if (!parsed.ok) return parsed;
  const made = convertSteps(parsed.value);
  if (!made.ok) return made;
  const { steps, lost } = made.value;
  const width = String(steps.length).length;
  const documents = steps.map(({ node, doc }, i) => {
    const id = attributeOf(node, 'ID') ?? '';
    const name = (attributeOf(node, 'JobPartID') ?? id).replaceAll(/[^\p{L}\p{N}._-]/gu, '_').slice(0, 80);
    const file = `${String(i + 1).padStart(width, '0')}-${name}.xjdf`;
    writeTo(join(folder, file), writeXml(doc));
    return { file, node: id };
  });
  return done({ documents, lost });
}
