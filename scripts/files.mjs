import { readdirSync } from 'node:fs';
import { join } from 'node:path';

// What .gitignore leaves out, and the history itself.
const SKIPPED = new Set(['node_modules', 'dist', 'coverage', '.git', '.sidelay', '.test-results']);

/** Every file of the source tree below `folder`, as sorted paths from `root` with forward slashes. */
export function listFiles(root, folder = '') {
  const files = [];
  for (const entry of readdirSync(join(root, folder), { withFileTypes: true })) {
    const path = folder === '' ? entry.name : `${folder}/${entry.name}`;
    if (SKIPPED.has(entry.name) || entry.name.endsWith('.log')) continue;
    if (entry.isDirectory()) files.push(...listFiles(root, path));
    else if (entry.isFile()) files.push(path);
  }
  return files.sort();
}
