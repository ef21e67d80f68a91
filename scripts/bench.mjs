/**
 * `npm run bench [-- NAME…] [--json FILE]`: runs test/bench/*.bench.mjs one after another on a fresh build.
 *
 * A bench exports `name`, `unit`, `better` ('higher' | 'lower'), `target` (of the ratio, or null), `note` and
 * `run()`, which answers `{ ours, peer }` measured in the same run. Printed: a table, then one JSON line a bench;
 * `--json FILE` writes the lines to a file too. Exit 1 when a bench breaks, 2 on wrong use;
 * a missed target is shown and is no failure, since it may be the machine's.
 */
import { spawnSync } from 'node:child_process';
import { readdirSync, writeFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));
const folder = fileURLToPath(new URL('../test/bench/', import.meta.url));
const SUFFIX = '.bench.mjs';
const say = (line) => process.stdout.write(`${line}\n`);

/** Wrong use, told in one line. */
class Misuse extends Error {}

function readArguments(args, known) {
  const names = [];
  let json;
  for (let at = 0; at < args.length; at++) {
    if (args[at] === '--json') {
      json = args[++at];
      if (!json) throw new Misuse('--json needs a file');
    } else if (known.includes(args[at])) names.push(args[at]);
    else throw new Misuse(`No bench is called ${args[at]}. There are: ${known.join(', ')}`);
  }
  // npm runs scripts in the project; relative files count from the caller's folder.
  return {
    names: names.length > 0 ? names : known,
    json: json && resolve(process.env.INIT_CWD ?? '.', json),
  };
}

async function measure(file) {
  const { name, unit, better, target, note, run } = await import(pathToFileURL(folder + file + SUFFIX).href);
  if (name !== file) throw new Error(`${file}${SUFFIX} calls itself ${name}`);
  if (better !== 'higher' && better !== 'lower') throw new Error(`${name}: better is ${better}`);
  const { ours, peer } = await run();
  for (const figure of [ours, peer]) {
    if (!(Number.isFinite(figure) && figure > 0)) throw new Error(`${name}: measured ${figure}`);
  }
  return { name, ours, peer, unit, ratio: ours / peer, better, target, note };
}

const figure = (value) => Number(value.toPrecision(4)).toLocaleString('en-GB', { maximumFractionDigits: 6 });

function verdict({ ratio, better, target }) {
  if (target === null || target === undefined) return '-';
  const met = better === 'higher' ? ratio >= target : ratio <= target;
  return `${met ? 'met' : 'MISSED'} (${better === 'higher' ? '≥' : '≤'} ${target})`;
}

function showTable(lines) {
  const head = ['bench', 'ours', 'peer', 'unit', 'ratio', 'target'];
  const rows = lines.map((line) => [
    ...[line.name, figure(line.ours), figure(line.peer)],
    ...[line.unit, line.ratio.toFixed(3), verdict(line)],
  ]);
  const widths = head.map((_, column) => Math.max(...[head, ...rows].map((row) => row[column].length)));
  for (const row of [head, ...rows]) {
    say(
      row
        .map((cell, column) => cell.padEnd(widths[column]))
        .join('  ')
        .trimEnd(),
    );
  }
}

async function main(args) {
  const known = readdirSync(folder)
    .filter((file) => file.endsWith(SUFFIX))
    .map((file) => file.slice(0, -SUFFIX.length))
    .sort();
  const { names, json } = readArguments(args, known);
  // The calibration loop is no product code; everything else measures what is built now.
  if (names.some((name) => name !== 'calibration')) {
    const build = spawnSync(process.execPath, ['scripts/build.mjs'], { cwd: root, stdio: 'inherit' });
    if (build.status !== 0) throw new Error('the build does not pass');
  }
  const lines = [];
  let broken = 0;
  for (const name of names) {
    try {
      lines.push(await measure(name));
    } catch (cause) {
      broken += 1;
      process.stderr.write(`${name}: ${cause?.stack ?? cause}\n`);
    }
  }
  showTable(lines);
  const text = lines.map((line) => `${JSON.stringify(line)}\n`).join('');
  process.stdout.write(`\n${text}`);
  if (json) writeFileSync(json, text);
  return broken > 0 ? 1 : 0;
}

try {
  process.exitCode = await main(process.argv.slice(2));
} catch (cause) {
  process.stderr.write(`${cause instanceof Misuse ? cause.message : cause.stack}\n`);
  process.exitCode = cause instanceof Misuse ? 2 : 1;
}
