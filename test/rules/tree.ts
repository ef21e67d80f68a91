import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { listFiles } from '../../scripts/files.mjs';
import { isSpec } from '../../scripts/lanes.mjs';

/** The repository as the rules see it: paths from the root with forward slashes. */
export const root = fileURLToPath(new URL('../..', import.meta.url));
export const files: readonly string[] = listFiles(root);

export const isTypeScript = (file: string): boolean => /\.tsx?$/.test(file) && !file.endsWith('.d.ts');
export const sources = files.filter((file) => /^(libs|apps)\//.test(file) && isTypeScript(file));
export const product = sources.filter((file) => !isSpec(file));
export const specs = files.filter(isSpec);

export const read = (file: string): string => readFileSync(join(root, file), 'utf8');

export const parse = (file: string, text: string = read(file)): ts.SourceFile =>
  ts.createSourceFile(
    file,
    text,
    ts.ScriptTarget.ES2023,
    true,
    file.endsWith('x') ? ts.ScriptKind.TSX : ts.ScriptKind.TS,
  );

/** Every node below `node`, itself first. */
export function* walk(node: ts.Node): Generator<ts.Node> {
  yield node;
  const children: ts.Node[] = [];
  ts.forEachChild(node, (child) => void children.push(child));
  for (const child of children) yield* walk(child);
}

export const lineOf = (node: ts.Node): number =>
  node.getSourceFile().getLineAndCharacterOfPosition(node.getStart()).line + 1;
