import { checkDocument, childElements, descendants, parseXml, type XmlDocument } from '#libs/jdf';
import { hasErrors, type Problem } from '#libs/kernel';
import { chanceOf, mutationsOf } from '../kit/mutate.js';
import { bytesOf, type Sample, samples, textOfSample } from './samples.js';
import { type Generation, type SchemaFault, schemaVerdicts } from './xmllint.js';

/**
 * Our verdict beside that of the official schemas (judge: xmllint) and of the table that comes with the samples
 * (samples.json), over every official sample and over damaged copies of each.
 */
const generations: readonly Generation[] = ['jdf', 'xjdf'];

function problemsOf(input: Uint8Array | string): readonly Problem[] {
  const doc = parseXml(input);
  return doc.ok ? checkDocument(doc.value).problems : doc.problems;
}

/** Samples that the schema refuses and we do not: types of another schema, which a JMF extension may use (xsi:type). */
const EXTENSIONS = [
  'jdf/samples/jmf/customQuery.jmf',
  'jdf/samples/jmf/customResponse.jmf',
  'jdf/samples/jmf/customResponseForIfraTrack.jmf',
];

describe.each(generations)('samples of %s', (generation) => {
  const all = samples(generation);
  // Of the same line as the schema's: what only our own checks find is in tickets.spec.ts and the like.
  const structural = new Set(['JDF_MISSING', 'JDF_VALUE', 'JDF_UNKNOWN', 'JDF_CHILDREN']);

  it('are judged as the schema judges them', () => {
    const differing = all.filter((sample) => {
      const found = problemsOf(bytesOf(sample)).filter(({ code }) => structural.has(code));
      return hasErrors(found) === sample.valid;
    });
    expect(differing.map(({ path }) => path)).toEqual(generation === 'jdf' ? EXTENSIONS : []);
    expect(all.length).toBeGreaterThan(150);
  });

  it('are not refused where neither the schema nor the table of samples has a finding', () => {
    const sound = all.filter(({ valid, semantic_issues }) => valid && semantic_issues.length === 0);
    expect(sound.length).toBeGreaterThan(100);
    const refused = sound.filter((sample) => hasErrors(problemsOf(bytesOf(sample))));
    expect(refused.map(({ path }) => path)).toEqual([]);
  });
});

/**
 * Refused by us though xmllint accepts it: a root without Version (the schema cannot tell the root from other nodes);
 * values that are pairs by the standard's text and lists of numbers in the schema (ap_encoding: transfer functions and
 * XYPair ranges); an index into Types that names no process (check 9); an empty list where XML Schema part 2, section 3.3.4, asks for at least one word.
 */
const STRICTER = [
  /JDF has no attribute Version/,
  /(Curve|PlatePosition)="1 2 3 4 5 6 7 8 9"/,
  /Types="" is not/,
  /CombinedProcessIndex="\d" is not/,
];

const PER_SAMPLE = 24;

interface Damaged {
  readonly name: string;
  readonly what: string;
  readonly text: string;
}

function damage(sample: Sample, index: number): Damaged[] {
  const text = textOfSample(sample);
  return mutationsOf(text, PER_SAMPLE, chanceOf(index + 1)).map((mutation, i) => ({
    ...mutation,
    name: `${index}-${i}.xml`,
  }));
}

/** Lines from the start to the end of each start tag that ends on the line that the judge names. */
function linesMeant(doc: XmlDocument | undefined, faults: readonly SchemaFault[]): Set<number> {
  const lines = new Set(faults.map(({ line }) => line));
  if (doc === undefined) return lines;
  const inText = faults.some(({ what }) => what.includes('Element content is not allowed'));
  for (const el of descendants(doc.root)) {
    const end = el.line + (el.source?.open.split('\n').length ?? 1) - 1;
    if (!lines.has(end)) continue;
    for (let line = el.line; line <= end; line++) lines.add(line);
    // The judge names the element that holds an element beside text, we name the one inside.
    if (inText) for (const child of childElements(el)) lines.add(child.line);
  }
  return lines;
}

describe.each(generations)('damaged samples of %s', (generation) => {
  const valid = samples(generation).filter((sample) => sample.valid);
  const damaged = valid.flatMap(damage);
  const verdicts = schemaVerdicts(
    Object.fromEntries(damaged.map(({ name, text }) => [name, text])),
    generation,
  );

  it('are refused on the right line where the schema refuses them', () => {
    const rejected = damaged.filter(({ name }) => verdicts[name] !== undefined);
    const missed = rejected.filter(({ name, text }) => {
      const parsed = parseXml(text);
      const lines = linesMeant(parsed.ok ? parsed.value : undefined, verdicts[name]!);
      return !problemsOf(text).some(
        ({ severity, line }) => severity === 'error' && line !== null && lines.has(line),
      );
    });
    const shown = missed.map(
      ({ name, what }) => `${name} ${what}: ${verdicts[name]![0]!.line} ${verdicts[name]![0]!.what}`,
    );
    expect(rejected.length).toBeGreaterThan(valid.length * 10);
    expect(shown.slice(0, 60)).toEqual([]);
  });

  it('are refused only for what no schema can find where the schema accepts them', () => {
    const structural = new Set([
      'JDF_MISSING',
      'JDF_VALUE',
      'JDF_UNKNOWN',
      'JDF_CHILDREN',
      'XML_NOT_WELL_FORMED',
    ]);
    const accepted = damaged.filter(({ name }) => verdicts[name] === undefined);
    expect(accepted.length).toBeGreaterThan(valid.length);
    const refused = accepted.flatMap(({ name, what, text }) =>
      problemsOf(text)
        .filter(({ severity, code }) => severity === 'error' && structural.has(code))
        .filter(({ message }) => !STRICTER.some((clause) => clause.test(message)))
        .map(({ line, message }) => `${name} ${what}: ${line} ${message}`),
    );
    expect(refused.slice(0, 60)).toEqual([]);
  });
});
