import { spawnSync } from 'node:child_process';
import { rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { plantTree, violations } from './planted-tree.js';
import { read, root, sources } from './tree.js';

interface Cruise {
  readonly modules: readonly { source: string }[];
  readonly summary: { violations: readonly { rule: { name: string }; from: string; to: string }[] };
}

const config = join(root, '.dependency-cruiser.cjs');

// As a process: the tool reads its tree from the working folder, and jest has only one.
function cruise(folder: string): Cruise {
  const tool = join(root, 'node_modules/dependency-cruiser/bin/dependency-cruise.mjs');
  const { stdout, stderr } = spawnSync(
    process.execPath,
    [tool, '--config', config, '--output-type', 'json', 'libs', 'apps'],
    { cwd: folder, encoding: 'utf8', maxBuffer: 256 * 1024 * 1024 },
  );
  if (!stdout.startsWith('{')) throw new Error(`the layer tool failed: ${stderr}`);
  return JSON.parse(stdout) as Cruise;
}

const told = ({ summary }: Cruise): string[] =>
  summary.violations.map(({ rule, from, to }) => `${rule.name}: ${from} -> ${to}`);

function cruisePlanted(withViolations: boolean): Cruise {
  const folder = plantTree(withViolations);
  try {
    return cruise(folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

describe('layers', () => {
  it('hold in every source file, and every source file is read', () => {
    const result = cruise(root);
    // With a TypeScript it cannot use, the tool finds no module and calls that a success.
    expect(sources.length).toBeGreaterThan(0);
    const read = new Set(result.modules.map(({ source }) => source));
    expect(sources.filter((file) => !read.has(file))).toEqual([]);
    expect(told(result)).toEqual([]);
  });

  it('accept a small tree that keeps to them', () => {
    expect(told(cruisePlanted(false))).toEqual([]);
  });

  it('catch one planted violation of each kind, under the name of its rule', () => {
    const found = cruisePlanted(true).summary.violations.map(({ rule, from }) => `${rule.name} ${from}`);
    const missed = violations
      .map(({ rule, file }) => `${rule} ${file}`)
      .filter((line) => !found.includes(line));
    expect(missed).toEqual([]);
  });

  it('have a planted violation for every rule but the rows of single packages', () => {
    const { forbidden } = createRequire(import.meta.url)(config) as { forbidden: { name: string }[] };
    const planted = new Set(violations.map(({ rule }) => rule));
    const bare = forbidden
      .map(({ name }) => name)
      .filter((name) => !name.startsWith('owner-') && !planted.has(name));
    expect(bare).toEqual([]);
  });

  it('know an owner for every package that the product depends on, and no package beside', () => {
    const { forbidden } = createRequire(import.meta.url)(config) as { forbidden: { name: string }[] };
    const owned = forbidden.flatMap(({ name }) =>
      name.startsWith('owner-') ? [name.slice('owner-'.length)] : [],
    );
    const { dependencies } = JSON.parse(read('package.json')) as { dependencies: Record<string, string> };
    expect(owned.sort()).toEqual(Object.keys(dependencies).sort());
  });
});
