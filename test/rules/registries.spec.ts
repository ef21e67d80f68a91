import ts from 'typescript';
import { files, parse, read, walk } from './tree.js';

/** A folder with one entry a kind, and the index that names each (design, section 4). */
interface Registry {
  readonly folder: string;
  /** What the index imports for one entry, or undefined for a file that is none. */
  entry(path: string): string | undefined;
}

const fileEntry = (suffix: string) => (path: string) =>
  !path.includes('/') && path.endsWith(`${suffix}.ts`) ? path.slice(0, -'.ts'.length) : undefined;
const plainFile = (path: string) =>
  /^[a-z0-9-]+\.ts$/.test(path) && path !== 'index.ts' ? path.slice(0, -'.ts'.length) : undefined;
// Beside the checks lie what they look at and where a ticket ends.
const checkFile = (path: string) =>
  path === 'scope.ts' || path === 'ticket-check.ts' ? undefined : plainFile(path);
const folderEntry = (path: string) => (path.includes('/') ? path.slice(0, path.indexOf('/')) : undefined);

const registries: readonly Registry[] = [
  { folder: 'libs/flow/src/process', entry: fileEntry('.process') },
  { folder: 'libs/flow/src/on-message', entry: plainFile },
  { folder: 'libs/jdf/src/ticket/checks', entry: checkFile },
  { folder: 'libs/jdf/src/messages', entry: fileEntry('.message') },
  { folder: 'libs/wire/src/drivers', entry: folderEntry },
  { folder: 'apps/console/src/screens', entry: folderEntry },
];

/** Entries of a folder that its index does not import or export from. */
function unnamed(
  { folder, entry }: Registry,
  tree: readonly string[],
  text: (file: string) => string,
): string[] {
  const inside = tree
    .filter((file) => file.startsWith(`${folder}/`))
    .map((file) => file.slice(folder.length + 1));
  const entries = new Set(inside.flatMap((path) => (/\.spec\.tsx?$/.test(path) ? [] : (entry(path) ?? []))));
  if (entries.size === 0) return [];
  const index = inside.find((path) => /^index\.tsx?$/.test(path));
  if (!index) return [`${folder}/index.ts is missing`];
  const named = new Set<string>();
  for (const node of walk(parse(`${folder}/${index}`, text(`${folder}/${index}`)))) {
    if (!ts.isImportDeclaration(node) && !ts.isExportDeclaration(node)) continue;
    const target = node.moduleSpecifier;
    if (target && ts.isStringLiteral(target)) named.add(target.text);
  }
  const names = (name: string) =>
    [...named].some((path) => path === `./${name}.js` || path.startsWith(`./${name}/`));
  return [...entries].filter((name) => !names(name)).map((name) => `${folder}/${name}`);
}

describe('registries', () => {
  it.each(registries.map((registry) => [registry.folder, registry] as const))(
    'names every entry of %s in its index',
    (_folder, registry) => {
      expect(unnamed(registry, files, read)).toEqual([]);
    },
  );

  it('keeps processes and messages in their folders', () => {
    const astray = files.filter(
      (file) =>
        (/\.process\.ts$/.test(file) && !file.startsWith('libs/flow/src/process/')) ||
        (/\.message\.ts$/.test(file) && !file.startsWith('libs/jdf/src/messages/')),
    );
    expect(astray).toEqual([]);
  });

  it('notices an entry that its index forgot', () => {
    const folder = 'libs/wire/src/drivers';
    const tree = [`${folder}/index.ts`, `${folder}/bench/bench.ts`, `${folder}/hot-folder/index.ts`];
    const index = "export { bench } from './bench/bench.js';";
    expect(unnamed({ folder, entry: folderEntry }, tree, () => index)).toEqual([`${folder}/hot-folder`]);
    expect(unnamed({ folder, entry: folderEntry }, tree.slice(1), () => index)).toEqual([
      `${folder}/index.ts is missing`,
    ]);
  });
});
