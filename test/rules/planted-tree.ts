import { mkdirSync, mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { read } from './tree.js';

/** Files of a small tree with the product's layout, each import allowed unless `violations` says otherwise. */
const sound: Readonly<Record<string, string>> = {
  'libs/kernel/src/index.ts': "export { a } from './a.js'; export type K = number;",
  'libs/kernel/src/a.ts': 'export const a = 1;',
  'libs/jdf/src/index.ts': "import { a } from '#libs/kernel'; import 'saxes'; export const j = a;",
  'libs/craft/src/index.ts': 'export type C = number; export const c = 1;',
  'libs/scheduling/src/index.ts': 'export const s = 1;',
  'libs/flow/src/index.ts':
    "import { j } from '#libs/jdf'; import { c } from '#libs/craft'; import 'zod'; export const f = j + c;",
  'libs/flow/src/f.spec.ts': "import 'node:fs'; import 'fast-check'; import { f } from './index.js'; f;",
  'libs/flow/src/process/one.process.ts': 'export const one = 1;',
  'libs/store/src/index.ts':
    "import { f } from '#libs/flow'; import 'pg'; import 'node:fs'; export const st = f;",
  'libs/wire/src/index.ts': "import { f } from '#libs/flow'; import 'yauzl'; export const w = f;",
  'libs/wire/src/drivers/bench/index.ts': 'export const bench = 1;',
  'libs/paper/src/index.ts': "import { c } from '#libs/craft'; export const p = c;",
  'apps/server/src/index.ts':
    "import { st } from '#libs/store'; import '@nestjs/common'; export const sv = st;",
  'apps/plant/src/index.ts': "import { j } from '#libs/jdf'; export const pl = j;",
  'apps/cli/src/index.ts': "import { sv } from '#apps/server'; import { pl } from '#apps/plant'; sv; pl;",
  'apps/console/src/index.ts': "import type { C } from '#libs/craft'; import 'preact'; export type X = C;",
  'apps/console/src/screens/board/index.ts': 'export const board = 1;',
  'test/kit/kit.ts': 'export const kit = 1;',
};

interface Violation {
  readonly rule: string;
  readonly file: string;
  readonly text: string;
  /** Other files that the fault is made of. */
  readonly more?: Readonly<Record<string, string>>;
}

/** One planted fault for every kind of rule. */
export const violations: readonly Violation[] = [
  { rule: 'layer-kernel', file: 'libs/kernel/src/v1.ts', text: "import '#libs/craft';" },
  { rule: 'layer-jdf', file: 'libs/jdf/src/v1.ts', text: "import '#libs/craft';" },
  { rule: 'layer-craft', file: 'libs/craft/src/v1.ts', text: "import '#libs/jdf';" },
  { rule: 'layer-scheduling', file: 'libs/scheduling/src/v1.ts', text: "import '#libs/craft';" },
  { rule: 'layer-flow', file: 'libs/flow/src/v1.ts', text: "import '#libs/store';" },
  { rule: 'layer-store', file: 'libs/store/src/v1.ts', text: "import '#libs/wire';" },
  { rule: 'layer-wire', file: 'libs/wire/src/v1.ts', text: "import '#apps/server';" },
  { rule: 'layer-paper', file: 'libs/paper/src/v1.ts', text: "import '#libs/flow';" },
  { rule: 'layer-server', file: 'apps/server/src/v1.ts', text: "import '#apps/plant';" },
  { rule: 'layer-cli', file: 'apps/cli/src/v1.ts', text: "import '#apps/console';" },
  { rule: 'layer-plant', file: 'apps/plant/src/v1.ts', text: "import '#libs/flow';" },
  { rule: 'layer-console', file: 'apps/console/src/v1.ts', text: "import type { f } from '#libs/flow';" },
  {
    rule: 'types-only-console',
    file: 'apps/console/src/v2.ts',
    text: "import { c } from '#libs/craft'; export const d = c;",
  },
  {
    rule: 'past-the-index',
    file: 'libs/jdf/src/v2.ts',
    text: "import { a } from '../../kernel/src/a.js'; export const b = a;",
  },
  {
    rule: 'relative-across',
    file: 'libs/jdf/src/v3.ts',
    text: "import { a } from '../../kernel/src/index.js'; export const b = a;",
  },
  {
    rule: 'own-index',
    file: 'libs/craft/src/v2.ts',
    text: "import { c } from '#libs/craft'; export const d = c;",
  },
  {
    rule: 'no-cycle',
    file: 'libs/craft/src/v3.ts',
    text: "import { d } from './v4.js'; export const c3 = d;",
    more: { 'libs/craft/src/v4.ts': "import { c3 } from './v3.js'; export const d = c3;" },
  },
  { rule: 'unresolved', file: 'libs/store/src/v2.ts', text: "import './nowhere.js';" },
  {
    rule: 'no-test-in-product',
    file: 'libs/store/src/v3.ts',
    text: "import { kit } from '../../../test/kit/kit.js'; export const k = kit;",
  },
  {
    rule: 'process-apart',
    file: 'libs/flow/src/process/two.process.ts',
    text: "import { one } from './one.process.js'; export const two = one;",
  },
  {
    rule: 'driver-apart',
    file: 'libs/wire/src/drivers/other/index.ts',
    text: "import { bench } from '../bench/index.js'; export const other = bench;",
  },
  {
    rule: 'screen-apart',
    file: 'apps/console/src/screens/desk/index.ts',
    text: "import { board } from '../board/index.js'; export const desk = board;",
  },
  { rule: 'pure-no-node', file: 'libs/scheduling/src/v2.ts', text: "import 'node:fs';" },
  { rule: 'console-no-node', file: 'apps/console/src/v3.ts', text: "import 'node:fs';" },
  { rule: 'owner-pg', file: 'libs/wire/src/v2.ts', text: "import 'pg';" },
  { rule: 'owner-zod', file: 'libs/craft/src/v5.ts', text: "import 'zod';" },
  { rule: 'owner-@nestjs/common', file: 'libs/flow/src/v2.ts', text: "import '@nestjs/common';" },
  { rule: 'package-without-owner', file: 'libs/paper/src/v2.ts', text: "import 'stray';" },
];

const standIns = ['saxes', 'zod', 'pg', 'yauzl', 'preact', '@nestjs/common', 'fast-check', 'stray'];

/** Writes the tree under the system's temporary folder; the caller removes it. */
export function plantTree(withViolations: boolean): string {
  const folder = mkdtempSync(join(tmpdir(), 'sidelay-layers-'));
  const put = (file: string, text: string): void => {
    mkdirSync(dirname(join(folder, file)), { recursive: true });
    writeFileSync(join(folder, file), `${text}\n`);
  };
  const { imports } = JSON.parse(read('package.json')) as { imports: unknown };
  put(
    'package.json',
    JSON.stringify({
      name: 'planted',
      type: 'module',
      imports,
      dependencies: Object.fromEntries(standIns.map((name) => [name, '1.0.0'])),
    }),
  );
  put('tsconfig.json', read('tsconfig.json'));
  for (const name of standIns) {
    put(`node_modules/${name}/package.json`, JSON.stringify({ name, version: '1.0.0', main: 'index.js' }));
    put(`node_modules/${name}/index.js`, 'module.exports = {};');
  }
  for (const [file, text] of Object.entries(sound)) put(file, text);
  if (withViolations) {
    for (const { file, text, more } of violations) {
      for (const [path, content] of Object.entries({ [file]: text, ...more })) put(path, content);
    }
  }
  return folder;
}
