import type { Plant } from '#libs/craft';
import { checkProfile, readOrder } from '#libs/flow';
import { checkDocument, parseXml, type XmlDocument, xmlLimitsFrom } from '#libs/jdf';
import type { Problem, Result } from '#libs/kernel';
import { checkReferences, kindOfPart, packageKind, readPackage, withinPart } from '#libs/wire';
import { looksLikeJson } from './files.js';
import { readJson } from './read-json.js';

/** What a document is and what is wrong with it. An order in JSON is none of the standard's kinds: `unknown`. */
export interface Judged {
  readonly kind: 'jdf' | 'jmf' | 'xjdf' | 'xjmf' | 'package' | 'unknown';
  /** As the root states it; of a package, that of its first message or ticket. */
  readonly version: string | null;
  readonly problems: readonly Problem[];
}

/**
 * Judges a file by its bytes alone. `plant` is asked for only where an order names what a plant must have; `executing` is
 * the plant that is to execute a ticket, null where nobody asked.
 */
export async function judge(bytes: Uint8Array, plant: () => Plant, executing: Plant | null): Promise<Judged> {
  if (packageKind(bytes, null) !== null) return judgePackage(bytes, executing);
  return looksLikeJson(bytes) ? judgeOrder(bytes, plant) : judgeXml(bytes, executing);
}

function judgeXml(bytes: Uint8Array, executing: Plant | null): Judged {
  return judgeParsed(parseXml(bytes, xmlLimitsFrom(process.env)), executing);
}

function judgeParsed(parsed: Result<XmlDocument>, executing: Plant | null): Judged {
  if (!parsed.ok) return { kind: 'unknown', version: null, problems: parsed.problems };
  const verdict = checkDocument(parsed.value);
  if (executing === null) return verdict;
  return { ...verdict, problems: [...verdict.problems, ...checkProfile(parsed.value, executing)] };
}

function judgeOrder(bytes: Uint8Array, plant: () => Plant): Judged {
  const json = readJson(bytes);
  const problems = json.ok ? readOrder(json.value, plant()).problems : json.problems;
  return { kind: 'unknown', version: null, problems };
}

/** Each message and ticket of a package; their places begin with the name of the part: `part!path`. */
async function judgePackage(bytes: Uint8Array, executing: Plant | null): Promise<Judged> {
  const pack = await readPackage(bytes, null);
  if (!pack.ok) return { kind: 'package', version: null, problems: pack.problems.map(beforePath) };
  const parts = pack.value.parts.filter((part) => kindOfPart(part) !== 'content');
  const read = parts.map((part) => ({ part, parsed: parseXml(part.bytes, xmlLimitsFrom(process.env)) }));
  const judged = read.map(({ part, parsed }) => ({ part, found: judgeParsed(parsed, executing) }));
  const documents = read.map(({ part, parsed }) => ({ part, document: parsed.ok ? parsed.value : null }));
  return {
    kind: 'package',
    version: judged[0]!.found.version,
    problems: [
      ...pack.problems.map(beforePath),
      ...judged.flatMap(({ part, found }) => found.problems.map((problem) => withinPart(part, problem))),
      ...checkReferences(pack.value, documents),
    ],
  };
}

/** The package reader names the part alone; a place within it is asked for everywhere. */
const beforePath = (problem: Problem): Problem =>
  problem.path === null ? problem : { ...problem, path: `${problem.path}!` };
