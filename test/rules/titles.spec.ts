import ts from 'typescript';
import { lineOf, parse, specs, walk } from './tree.js';

const TESTS = new Set(['it', 'test']);
const NEVER = new Set(['fit', 'xit', 'xtest', 'fdescribe', 'xdescribe']);
const MODIFIERS = new Set(['only', 'skip', 'todo', 'failing']);

/** `it`, `it.each(…)` and the like: the words before the title, outermost last. */
function calledWords(callee: ts.Expression): string[] {
  if (ts.isIdentifier(callee)) return [callee.text];
  if (ts.isPropertyAccessExpression(callee)) return [...calledWords(callee.expression), callee.name.text];
  if (ts.isCallExpression(callee)) return calledWords(callee.expression);
  if (ts.isTaggedTemplateExpression(callee)) return calledWords(callee.tag);
  return [];
}

interface Found {
  readonly titles: readonly string[];
  readonly switched: readonly string[];
}

/** The titles of the tests in a file, and what is skipped, focused or only announced. */
function inspect(file: string, text?: string): Found {
  const titles: string[] = [];
  const switched: string[] = [];
  for (const node of walk(parse(file, text))) {
    if (!ts.isCallExpression(node)) continue;
    const words = calledWords(node.expression);
    const [first = ''] = words;
    const tests = TESTS.has(first);
    if (NEVER.has(first) || ((tests || first === 'describe') && words.some((word) => MODIFIERS.has(word)))) {
      switched.push(`${file}:${lineOf(node)}`);
    }
    const title = node.arguments[0];
    if (tests && node.arguments.length > 1 && title && ts.isStringLiteralLike(title)) titles.push(title.text);
  }
  return { titles, switched };
}

const doubled = (titles: readonly string[]): string[] =>
  titles.filter((title, at) => titles.indexOf(title) !== at);

describe('test titles', () => {
  const found = specs.map((file) => ({ file, ...inspect(file) }));

  it('finds tests in every spec file', () => {
    const without = found.filter(({ titles }) => titles.length === 0).map(({ file }) => file);
    expect(without).toEqual([]);
  });

  it('gives no two tests of one file the same title', () => {
    const clashes = found
      .map(({ file, titles }) => ({ file, titles: doubled(titles) }))
      .filter(({ titles }) => titles.length > 0);
    expect(clashes).toEqual([]);
  });

  it('skips, focuses and announces no test', () => {
    expect(found.flatMap(({ switched }) => switched)).toEqual([]);
  });

  it('notices a doubled title and a switched test in a planted file', () => {
    const planted = `
      it('adds', () => {});
      describe('again', () => { it.each([1])('adds', () => {}); });
      it.skip('waits', () => {});
      describe.only('alone', () => {});`;
    const { titles, switched } = inspect('planted.spec.ts', planted);
    expect(doubled(titles)).toEqual(['adds']);
    expect(switched).toEqual(['planted.spec.ts:4', 'planted.spec.ts:5']);
  });
});
