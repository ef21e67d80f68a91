import { spawnSync } from 'node:child_process';
import { type CodeRow, codes } from '#libs/kernel';
import { read, root } from './tree.js';

const page = read('docs/errors.md');
const sections = new Map(
  page
    .split(/^## /m)
    .slice(1)
    .map((section) => [section.slice(0, section.indexOf('\n')).trim(), section]),
);

describe('the page of codes', () => {
  it('has a section for every code of the table and none beside', () => {
    expect([...sections.keys()].sort()).toEqual(Object.keys(codes).sort());
  });

  it('gives the HTTP status, the ReturnCode and the log level of every code', () => {
    const rows: [string, CodeRow][] = Object.entries(codes);
    const wrong = rows.filter(
      ([code, { http, jmf, level }]) => !sections.get(code)?.includes(`| ${http} | ${jmf} | ${level} |`),
    );
    expect(wrong.map(([code]) => code)).toEqual([]);
  });

  it('is word for word what its generator writes now', () => {
    const check = spawnSync(process.execPath, ['scripts/errors.mjs', '--check'], {
      cwd: root,
      encoding: 'utf8',
    });
    expect(check).toMatchObject({ status: 0, stderr: '' });
  });
});
