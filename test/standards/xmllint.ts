import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { standardsFolder } from './samples.js';

const SCHEMAS = { jdf: ['jdf', 'schema', 'JDF.xsd'], xjdf: ['xjdf', 'schema', 'xjdf.xsd'] } as const;
export type Generation = keyof typeof SCHEMAS;

export interface SchemaFault {
  readonly line: number;
  readonly what: string;
}

/**
 * Validates documents by name against the official schema of a generation with xmllint, in one run. Faults are listed by
 * the name of the document, with their lines; nothing is listed for a valid one.
 */
export function schemaVerdicts(
  documents: Readonly<Record<string, string | Uint8Array>>,
  generation: Generation,
): Record<string, SchemaFault[]> {
  const folder = mkdtempSync(join(tmpdir(), 'sidelay-schema-'));
  try {
    const names = Object.keys(documents);
    for (const name of names) writeFileSync(join(folder, name), documents[name]!);
    const schema = join(standardsFolder(), ...SCHEMAS[generation]);
    const run = spawnSync('xmllint', ['--noout', '--nonet', '--schema', schema, ...names], {
      cwd: folder,
      encoding: 'utf8',
      maxBuffer: 256 * 1024 * 1024,
    });
    if (run.error) throw run.error;
    const known = new Set(names);
    const faults: Record<string, SchemaFault[]> = {};
    const judged = new Set<string>();
    for (const text of run.stderr.split('\n')) {
      const verdict = /^(.+) (validates|fails to validate)$/.exec(text);
      if (verdict !== null) judged.add(verdict[1]!);
      const [, name, line, what] = /^([^:]+):(\d+): (.*)$/.exec(text) ?? [];
      if (name === undefined || !known.has(name)) continue;
      faults[name] = [...(faults[name] ?? []), { line: Number(line), what: String(what) }];
    }
    // A document that is not well-formed gets no verdict, only what the parser says of it.
    const silent = names.filter((name) => !judged.has(name) && faults[name] === undefined);
    if (silent.length > 0)
      throw new Error(`xmllint did not judge ${silent.length}: ${run.stderr.slice(0, 2000)}`);
    return faults;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** What the official schema of a generation says against documents by name; nothing is listed for a valid one. */
export function schemaFaults(
  documents: Readonly<Record<string, string>>,
  generation: Generation = 'jdf',
): Record<string, string[]> {
  const verdicts = Object.entries(schemaVerdicts(documents, generation));
  return Object.fromEntries(verdicts.map(([name, faults]) => [name, faults.map(({ what }) => what)]));
}
