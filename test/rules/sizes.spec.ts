import { isSpec } from '../../scripts/lanes.mjs';
import { files, read } from './tree.js';

const SOURCE_LIMIT = 400;
const TEST_LIMIT = 800;

/** Files that may be longer, each with its reason: tables of facts and what a tool wrote. */
const exempt: Readonly<Record<string, string>> = {
  'libs/kernel/src/codes.ts': 'one table, a row for every code; scripts/errors.mjs reads it as one file',
};

const isCode = (file: string): boolean =>
  /^(libs|apps|scripts|test|docker|\.ci)\//.test(file) &&
  /\.(tsx?|mjs|cjs|js|css|html)$|^\.ci\/run$/.test(file) &&
  !file.startsWith('test/fixtures/');

const lineCount = (file: string): number => read(file).trimEnd().split('\n').length;

describe('sizes and names', () => {
  const code = files.filter(isCode);

  it('keeps every source file within 400 lines and every test within 800', () => {
    expect(code.length).toBeGreaterThan(0);
    const tooLong = code
      .filter((file) => !(file in exempt))
      .map((file) => ({ file, lines: lineCount(file), limit: isSpec(file) ? TEST_LIMIT : SOURCE_LIMIT }))
      .filter(({ lines, limit }) => lines > limit);
    expect(tooLong).toEqual([]);
  });

  it('exempts no file that is gone or has become short', () => {
    const needless = Object.keys(exempt).filter(
      (file) => !code.includes(file) || lineCount(file) <= (isSpec(file) ? TEST_LIMIT : SOURCE_LIMIT),
    );
    expect(needless).toEqual([]);
  });

  it('names files and folders in kebab-case', () => {
    const kebab = /^[a-z0-9]+(-[a-z0-9]+)*(\.[a-z0-9]+(-[a-z0-9]+)*)*$/;
    const odd = code
      .filter((file) => !file.startsWith('.ci/'))
      .filter((file) => file.split('/').some((part) => !kebab.test(part)));
    expect(odd).toEqual([]);
  });

  it('has no file or folder called by a word that says nothing', () => {
    const empty = new Set(['util', 'utils', 'common', 'helper', 'helpers', 'manager', 'misc']);
    const vague = code.filter((file) => file.split(/[/.-]/).some((word) => empty.has(word)));
    expect(vague).toEqual([]);
  });
});
