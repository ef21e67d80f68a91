/** Our table of what processes take and make against the notes in the official schema. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { attributeOf, childElements, descendants, processRules, type XmlElement } from '#libs/jdf';
import { XS } from '../kit/read-schema.js';
import { parsedXml } from '../kit/value-in.js';
import { standardsFolder } from './samples.js';

const schema = parsedXml(readFileSync(join(standardsFolder(), 'jdf/schema/JDFProcess.xsd')));
const types = childElements(schema.root, 'complexType', XS);
const nodes = types.filter((type) => !attributeOf(type, 'name')!.endsWith('_'));
const own = nodes.filter((type) => !['ProcessGroup', 'Combined'].includes(attributeOf(type, 'name')!));

const notes = (type: XmlElement, name: string): XmlElement[] =>
  [...descendants(type)].filter((el) => el.local === name && el.uri === '');

/** The schema's own slips in names, seen against the elements that it declares. */
const slips: Readonly<Record<string, string>> = {
  SizeIntentIntent: 'SizeIntent',
  VariableIntentIntent: 'VariableIntent',
};
const nameIn = (path: string): string => {
  const name = path.slice(path.indexOf('/') + 1).replace(/Link$/, '');
  return name === '*' ? 'any' : (slips[name] ?? name);
};

/** One line a link, as the schema's Constraint notes have it. */
function constrained(type: XmlElement): string[] {
  return notes(type, 'Constraint')
    .filter((note) => attributeOf(note, 'Path')!.startsWith('ResourceLinkPool/'))
    .map((note) => {
      const of = (name: string): string => attributeOf(note, name) ?? '';
      return `${of('Usage')} ${nameIn(of('Path'))}(${of('ProcessUsage')}) ${of('minOccurs')}..${of('maxOccurs')}`;
    });
}

const tabled = (process: string): string[] =>
  processRules
    .get(process)!
    .links.map(
      ({ usage, name, role, least, most }) =>
        `${usage} ${name}(${role}) ${least}..${most === Number.POSITIVE_INFINITY ? 'unbounded' : most}`,
    );

/**
 * Where the notes contradict the pool that the same schema declares: Bending and CylinderLayoutPreparation carry those
 * of another process, PageAssigning names no resource that there is, PDLCreation lacks one of its pool, DieDesign has
 * its output as a second input; QualityControl has its result as an input.
 */
const corrected = [
  'Bending',
  'CylinderLayoutPreparation',
  'DieDesign',
  'PageAssigning',
  'PDLCreation',
  'QualityControl',
];
/** The pool of ConventionalPrinting has no place for the list of pages that a note demands, and the sample tickets have none. */
const optional = (process: string, line: string): string =>
  process === 'ConventionalPrinting' && line.startsWith('Input RunList') ? line.replace('1..', '0..') : line;
/** Product repeats some of those that every process takes. */
const generic =
  /^Input (ApprovalSuccess|CustomerInfo|Device|Employee|NodeInfo|PreflightReport|Preview)\(\) 0/;

describe('the table of processes', () => {
  const names = own.map((type) => attributeOf(type, 'name')!);

  it('has every process of the schema, and no other', () => {
    expect([...processRules.keys()].sort()).toEqual([...names].sort());
  });

  it.each(
    own
      .filter((type) => !corrected.includes(attributeOf(type, 'name')!))
      .map((t) => [attributeOf(t, 'name')!, t] as const),
  )('says of %s what the Constraint notes say', (name, type) => {
    const stated = constrained(type).map((line) => optional(name, line));
    const expected = stated.filter((line) => name !== 'Product' || !generic.test(line));
    expect(tabled(name).sort()).toEqual(expected.sort());
  });

  // The general processes take any link and have no pool of their own.
  const pools = names.flatMap((name) => {
    const pool = types.find((type) => attributeOf(type, 'name') === `${name}ResLinkPool_`);
    return pool === undefined || name === 'Product' ? [] : [[name, pool] as const];
  });

  it.each(pools)('lets stand in the pool of %s what the schema lets', (name, pool) => {
    const stated = [...descendants(pool)]
      .filter((el) => el.local === 'element')
      .map((el) => attributeOf(el, 'ref')!);
    const known = new Set(
      [...tabled(name)].map((line) => line.slice(line.indexOf(' ') + 1, line.indexOf('('))),
    );
    const missing = stated.map((ref) => ref.replace(/^jdf:|Link$/g, '')).filter((ref) => !known.has(ref));
    expect(missing).toEqual([]);
  });

  it('knows since when and until when each process is part of the standard', () => {
    const dated = own.flatMap((type) =>
      notes(type, 'Version')
        .filter((note) => attributeOf(note, 'Path') === '.')
        .map((note) => [attributeOf(type, 'name'), attributeOf(note, 'First'), attributeOf(note, 'Last')]),
    );
    const ours = [...processRules.values()]
      .filter(({ versions }) => versions !== null)
      .map(({ process, versions }) => [process, versions!.since ?? undefined, versions!.until ?? undefined]);
    expect(ours.sort()).toEqual(dated.sort());
  });

  it('dates links as the Version notes do', () => {
    const dated = own.flatMap((type) =>
      notes(type, 'Version')
        .filter((note) => /^Reso?urces?LinkPool\/\w+$/.test(attributeOf(note, 'Path')!))
        .map((note) => ({
          name: nameIn(attributeOf(note, 'Path')!).replace('Previewl', 'Preview'),
          type,
          note,
        })),
    );
    const wrong = dated.flatMap(({ name, type, note }) => {
      const process = attributeOf(type, 'name')!;
      const first = attributeOf(note, 'First');
      const last = attributeOf(note, 'Last');
      const usage = attributeOf(note, 'Usage');
      const role = attributeOf(note, 'ProcessUsage');
      const links = processRules
        .get(process)!
        .links.filter((l) => l.name === name && (!usage || l.usage === usage) && (!role || l.role === role));
      const right = links.every(
        ({ versions }) => (versions?.since ?? undefined) === first && (versions?.until ?? undefined) === last,
      );
      return right ? [] : [`${process} ${name} ${first}-${last}`];
    });
    expect(dated.length).toBeGreaterThan(40);
    expect(wrong).toEqual([]);
  });
});
