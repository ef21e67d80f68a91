/** The standard's own sample files and what is known of each (samples.json beside them). Not part of the project. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';

/** The folder of the standard's files; this lane cannot run without it. */
export function standardsFolder(): string {
  const folder = process.env.SIDELAY_STANDARDS_DIR;
  if (!folder)
    throw new Error('SIDELAY_STANDARDS_DIR is not set: the standards lane needs the official files.');
  return folder;
}

export interface Sample {
  readonly path: string;
  readonly root: string;
  /** Verdict of the schema. */
  readonly valid: boolean;
  readonly semantic_issues: readonly string[];
  readonly version: string;
}

/** All samples of both generations. */
export function allSamples(): readonly Sample[] {
  return JSON.parse(readFileSync(join(standardsFolder(), 'samples.json'), 'utf8')) as Sample[];
}

/** All samples of a generation: JDF and JMF, or XJDF and XJMF. */
export function samples(generation: 'jdf' | 'xjdf' = 'jdf'): readonly Sample[] {
  return allSamples().filter(({ path }) => path.startsWith(`${generation}/`));
}

export function bytesOf(sample: Sample): Uint8Array {
  return new Uint8Array(readFileSync(join(standardsFolder(), sample.path)));
}

export function textOfSample(sample: Sample): string {
  return readFileSync(join(standardsFolder(), sample.path), 'utf8');
}
