/**
 * `npm test [-- LANE…]`: lint, types, then the lanes of scripts/lanes.mjs. Ends with one line of totals.
 * A lane (or a part of one) that cannot run here is named with its reason; SIDELAY_REQUIRE_SERVICES=1 makes it a failure.
 */
import { spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { listFiles } from './files.mjs';
import { isSpec, lanes } from './lanes.mjs';
import { findService, services, stopServices } from './services.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
process.chdir(root);

const checks = [
  { name: 'lint', command: ['node_modules/@biomejs/biome/bin/biome', 'check', '.'] },
  { name: 'types', command: ['node_modules/ts7/bin/tsc', '-p', 'tsconfig.json', '--noEmit'] },
];
const strict = process.env.SIDELAY_REQUIRE_SERVICES === '1';
const specs = listFiles(root).filter(isSpec);
const total = { passed: 0, failed: 0, skipped: 0 };
const notes = [];
const say = (line) => process.stdout.write(`${line}\n`);

let stopping = false;
let child;
function run(args, env = {}) {
  return new Promise((done) => {
    child = spawn(process.execPath, args, {
      stdio: ['ignore', 'inherit', 'inherit'],
      env: { ...process.env, ...env },
    });
    child.once('close', (code) => done(code ?? 1));
  });
}

function leaveOut(what, why) {
  total[strict ? 'failed' : 'skipped'] += 1;
  notes.push(`${what}: ${why}`);
  say(`  ${strict ? 'FAIL' : 'left out'}: ${what}: ${why}`);
}

async function runCheck({ name, command }) {
  say(`\n${name}`);
  const ok = (await run(command)) === 0;
  if (!ok) total.failed += 1;
  say(`${name}: ${ok ? 'ok' : 'FAILED'}`);
}

let built;
const build = () => (built ??= run(['scripts/build.mjs']).then((code) => code === 0));

/** Looks for what the lane uses: the variables for its tests, or undefined when it cannot run. */
async function equip(lane) {
  const env = {};
  let able = true;
  for (const name of [...lane.needs, ...lane.wants]) {
    const { value, why } = await findService(name);
    const variable = services[name].env;
    // Only what was found is named to the tests, so that "set" means "there".
    if (variable) env[variable] = value ?? '';
    if (why === undefined) continue;
    const needed = lane.needs.includes(name);
    leaveOut(needed ? `lane ${lane.name}` : `lane ${lane.name}, its part on ${name}`, why);
    if (needed) able = false;
    if (!able) return undefined;
  }
  return env;
}

async function runLane(lane, folder) {
  say(`\n${lane.name}: ${lane.why}`);
  const files = specs.filter(lane.owns);
  if (files.length === 0) return leaveOut(`lane ${lane.name}`, 'it has no test yet');
  const env = await equip(lane);
  if (!env) return;
  if (lane.builds && !(await build())) {
    total.failed += 1;
    return say(`${lane.name}: FAILED, the build does not pass`);
  }
  const output = join(folder, `${lane.name}.json`);
  const code = await run(
    [
      ...[
        '--experimental-vm-modules',
        '--no-warnings',
        'node_modules/jest/bin/jest.js',
        '-c',
        'jest.config.mjs',
      ],
      ...[
        '--ci',
        '--forceExit',
        '--json',
        `--outputFile=${output}`,
        '--reporters=<rootDir>/scripts/lane-reporter.cjs',
      ],
      ...[
        `--maxWorkers=${lane.workers}`,
        `--testTimeout=${lane.timeoutS * 1000}`,
        '--runTestsByPath',
        ...files,
      ],
    ],
    env,
  );
  const { passed, failed, skipped, seconds } = readResult(output, code);
  total.passed += passed;
  total.failed += failed;
  total.skipped += skipped;
  say(`${lane.name}: ${passed} passed, ${failed} failed, ${skipped} skipped (${seconds.toFixed(1)} s)`);
}

/** A file that does not load has no tests to fail, and a runner that dies has no result: each counts as one failure. */
function readResult(output, code) {
  try {
    const result = JSON.parse(readFileSync(output, 'utf8'));
    const failed = result.numFailedTests + result.numRuntimeErrorTestSuites;
    return {
      passed: result.numPassedTests,
      failed: failed === 0 && code !== 0 ? 1 : failed,
      skipped: result.numPendingTests + result.numTodoTests,
      seconds: (Math.max(...result.testResults.map((file) => file.endTime)) - result.startTime) / 1000,
    };
  } catch {
    return { passed: 0, failed: 1, skipped: 0, seconds: 0 };
  }
}

async function main(args) {
  const known = [...checks, ...lanes].map(({ name }) => name);
  const unknown = args.filter((name) => !known.includes(name));
  if (unknown.length > 0) {
    say(`No lane is called ${unknown.join(', ')}. There are: ${known.join(', ')}`);
    return 2;
  }
  const chosen = ({ name }) => args.length === 0 || args.includes(name);
  const folder = mkdtempSync(join(tmpdir(), 'sidelay-test-'));
  process.on('exit', () => rmSync(folder, { recursive: true, force: true }));
  for (const check of checks.filter(chosen)) if (!stopping) await runCheck(check);
  for (const lane of lanes.filter(chosen)) if (!stopping) await runLane(lane, folder);
  await stopServices();

  if (notes.length > 0)
    say(`\n${strict ? 'Could not run' : 'Left out'}:\n${notes.map((note) => `  ${note}`).join('\n')}`);
  say(`\nTests: ${total.passed} passed, ${total.failed} failed, ${total.skipped} skipped`);
  return total.failed > 0 ? 1 : 0;
}

for (const signal of ['SIGINT', 'SIGTERM']) {
  process.once(signal, () => {
    stopping = true;
    child?.kill(signal);
  });
}
const code = await main(process.argv.slice(2));
process.exit(stopping ? 1 : code);
