import ts from 'typescript';
import { lineOf, parse, product, walk } from './tree.js';

/** Product files outside the kernel that may ask the machine itself, each with its reason. */
const exempt: Readonly<Record<string, string>> = {
  'apps/console/src/time/browser-clock.ts':
    "The console takes types only from the kernel, so the browser's time source fills the kernel's port here.",
};

const MEMBERS = new Set([
  'Date.now',
  'Math.random',
  'performance.now',
  'crypto.randomUUID',
  'process.hrtime',
]);
const TIMERS = new Set(['setTimeout', 'setInterval', 'setImmediate', 'randomUUID']);
const MODULES = new Set(['node:timers', 'node:timers/promises', 'node:perf_hooks', 'timers', 'perf_hooks']);

/** Where a file reads time, waits or draws chance without a port. */
function direct(file: string, text?: string): string[] {
  const places: string[] = [];
  for (const node of walk(parse(file, text))) {
    const hit =
      (ts.isPropertyAccessExpression(node) && MEMBERS.has(node.getText().replace(/^globalThis\./, ''))) ||
      (ts.isCallExpression(node) && ts.isIdentifier(node.expression) && TIMERS.has(node.expression.text)) ||
      (ts.isCallExpression(node) &&
        /^(globalThis|window)\.set(Timeout|Interval)$/.test(node.expression.getText())) ||
      (ts.isNewExpression(node) && node.expression.getText() === 'Date' && !node.arguments?.length) ||
      (ts.isImportDeclaration(node) && MODULES.has((node.moduleSpecifier as ts.StringLiteral).text));
    if (hit) places.push(`${file}:${lineOf(node)} ${node.getText().slice(0, 60)}`);
  }
  return places;
}

describe('time, waiting and chance', () => {
  const watched = product.filter((file) => !file.startsWith('libs/kernel/'));

  it('come through the kernel ports in all product code', () => {
    expect(watched.filter((file) => !(file in exempt)).flatMap((file) => direct(file))).toEqual([]);
  });

  it('are exempt only where they are still used', () => {
    const needless = Object.keys(exempt).filter(
      (file) => !watched.includes(file) || direct(file).length === 0,
    );
    expect(needless).toEqual([]);
  });

  it('are noticed in a planted file, and an instant given by a port is not', () => {
    const planted = [
      "import { setTimeout as wait } from 'node:timers/promises';",
      'Date.now(); new Date(); Math.random();',
      'setTimeout(() => {}, 1); globalThis.setInterval(() => {}, 1); crypto.randomUUID();',
      'new Date(clock.now()); clock.after(1, () => {});',
    ].join('\n');
    const lines = direct('planted.ts', planted).map((place) => place.split(' ')[0]);
    expect(lines).toEqual([
      'planted.ts:1',
      ...Array(3).fill('planted.ts:2'),
      ...Array(3).fill('planted.ts:3'),
    ]);
  });
});
