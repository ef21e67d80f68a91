import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { standardsFolder } from './samples.js';

const SCHEMAS = { jdf: ['jdf', 'schema', 'JDF.xsd'], xjdf: ['xjdf', 'schema', 'xjdf.xsd'] } as const;

/**
 * Validates documents by name against the official schema of a generation with xmllint, in one run. What is wrong is listed by
 * the name of the document; nothing is listed for a valid one.
 */
export function schemaFaults(
  documents: Readonly<Record<string, string>>,
  generation: keyof typeof SCHEMAS = 'jdf',
): Record<string, string[]> {
  const folder = mkdtempSync(join(tmpdir(), 'sidelay-schema-'));
  try {
    const names = Object.keys(documents);
    for (const name of names) writeFileSync(join(folder, name), documents[name]!);
    const schema = join(standardsFolder(), ...SCHEMAS[generation]);
    const run = spawnSync('xmllint', ['--noout', '--nonet', '--schema', schema, ...names], {
      cwd: folder,
      encoding: 'utf8',
      maxBuffer: 64 * 1024 * 1024,
    });
    if (run.error) throw run.error;
    const faults: Record<string, string[]> = {};
    for (const line of run.stderr.split('\n')) {
      const [, name, what] = /^([^:]+):\d+: (.*)$/.exec(line) ?? [];
      if (name !== undefined && names.includes(name)) faults[name] = [...(faults[name] ?? []), String(what)];
    }
    const judged = run.stderr.split('\n').filter((line) => / (validates|fails to validate)$/.test(line));
    if (judged.length !== names.length)
      throw new Error(`xmllint judged ${judged.length} of ${names.length}: ${run.stderr.slice(0, 2000)}`);
    return faults;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
