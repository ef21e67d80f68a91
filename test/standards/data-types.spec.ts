/** The attribute types that the library reads, against the official schemas: none is missing, and xmllint agrees. */
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { isDeepStrictEqual } from 'node:util';
import fc from 'fast-check';
import { dataTypes, enumerationTypes, stricterThanSchema, type ValueType, xjdfDataTypes } from '#libs/jdf';
import { standardsFolder } from './samples.js';
import {
  attributeTypesOf,
  type Case,
  type Generation,
  schemaVerdicts,
  simpleTypesOf,
} from './simple-types.js';
import { nearValid, valid } from './type-values.js';

const filesOf = (generation: Generation): string[] =>
  readdirSync(join(standardsFolder(), generation, 'schema')).filter((file) => file.endsWith('.xsd'));

const generations: readonly (readonly [Generation, Readonly<Record<string, ValueType<unknown>>>])[] = [
  ['jdf', dataTypes],
  ['xjdf', xjdfDataTypes],
];

/** Types from which the schema builds its ranges: words and separators in any order. No attribute has one of them. */
const isBuildingBlock = (name: string): boolean => /AndSeparators?_?$/.test(name);

/**
 * Where xmllint (2.9.14) does not follow XML Schema part 2: it takes empty lists of names and IDs (3.3.4, 3.3.10) and
 * exponents without digits (3.2.5), and leaves blanks around some numbers, dates and durations (4.3.6). An unbound
 * prefix is no matter of the value alone.
 */
function isFaultOfXmllint({ type, value }: Case, verdict: boolean): boolean {
  if (/^(xs:NMTOKENS|(xs:)?IDREFS)$/.test(type)) return verdict && value.trim() === '';
  if (type === 'QName') return !verdict && /^[^:]+:[^:]+$/.test(value) && !value.startsWith('xs:');
  if (/^(xs:(int|long|dateTime|duration)|date|Score|CommonFolds)$/.test(type))
    return !verdict && value !== value.trim();
  return verdict && /\d\.?[eE](\s|$)/.test(value);
}

/** Numbers that make one value of a range. */
const widths: Readonly<Record<string, number>> = { XYPair: 2, Shape: 3, Rectangle: 4 };

/** What `stricterThanSchema` speaks of, found in another way than the library reads. */
function isNonsense({ type, value }: Case): boolean {
  if (type === 'TransferFunction') return value.split(/\s+/).filter(Boolean).length % 2 === 1;
  if (dataTypes.IntegerRangeList === (dataTypes as Readonly<Record<string, unknown>>)[type])
    return /[^\s~][-+]|F[\dI]|\dI|~[^~]*\d[^~\s]*\s*~/.test(value);
  const kind = /^(.*?)Range(List)?$/.exec(type.replace(/^p\w+Tags$/, 'NameRangeList'));
  if (kind === null) return false;
  const width = widths[kind[1]!] ?? 1;
  const shown = value
    .trim()
    .split(/\s+/)
    .filter(Boolean)
    .map((word) => (word === '~' ? '~' : 'v'))
    .join('');
  const one = `v{${width}}`;
  const form = kind[2] === undefined ? `^${one}~${one}$` : `^(${one}(~${one})?)*$`;
  return !new RegExp(form).test(shown);
}

describe.each(generations)('attribute types of %s', (generation, table) => {
  const types = simpleTypesOf(generation, filesOf(generation));
  const readable = types.filter(({ enumeration }) => !enumeration);

  it('are read, every one that the schema names and that is no list of names', () => {
    const enumerations = new Set(types.filter(({ enumeration }) => enumeration).map(({ name }) => name));
    const isNames = (name: string): boolean => enumerations.has(enumerationTypes[name]?.of ?? '');
    const stated = attributeTypesOf(generation, filesOf(generation));
    expect(stated.filter(isBuildingBlock)).toEqual([]);
    const wanted = [
      ...readable
        .filter(({ name, named, item = '' }) => !isBuildingBlock(name) && (named || !enumerations.has(item)))
        .map(({ name }) => name),
      ...stated.filter((name) => name.startsWith('xs:')),
    ];
    expect(wanted.length).toBeGreaterThan(25);
    expect(wanted.filter((name) => !Object.hasOwn(table, name) && !isNames(name))).toEqual([]);
    const invented = Object.keys(table).filter((name) => !wanted.includes(name));
    expect(invented).toEqual(generation === 'xjdf' ? ['xs:anyURI'] : []);
  });

  it('say the same as xmllint of valid and nearly valid values', () => {
    const seenIds = new Set<string>();
    const isNew = ({ type, value }: Case): boolean => {
      // An ID may be there only once in the document that holds all values.
      if (!type.endsWith('ID')) return true;
      const known = seenIds.has(value.trim());
      seenIds.add(value.trim());
      return !known;
    };
    const readers = Object.values(table);
    const cases = Object.keys(table).flatMap((type, i) => {
      // Some names stand for one type; libxml2 takes long over the pattern of integer ranges.
      const numRuns = readers.indexOf(readers[i]!) === i ? 150 : 15;
      const near = fc.sample(nearValid(type, generation), { seed: 20261125, numRuns });
      return [...valid(type, generation), ...near].map((value): Case => ({ type, value })).filter(isNew);
    });
    const verdicts = schemaVerdicts(
      generation,
      cases,
      readable.filter(({ named }) => !named),
    );
    const differing = cases.flatMap((one, i) => {
      const verdict = verdicts[i]!;
      const read = table[one.type]!.read(one.value) !== undefined;
      return read === verdict || isFaultOfXmllint(one, verdict) ? [] : [{ ...one, verdict }];
    });
    const explained = differing.filter(
      (one) => one.verdict && Object.hasOwn(stricterThanSchema, one.type) && isNonsense(one),
    );
    expect(differing.filter((one) => !explained.includes(one))).toEqual([]);
    // Every exception is one, and both verdicts are given for every type that can be wrong at all.
    const stricter = Object.keys(stricterThanSchema).filter(
      (type) => generation === 'jdf' || type === 'TransferFunction',
    );
    expect(stricter.filter((type) => !explained.some((one) => one.type === type))).toEqual([]);
    const tried = (type: string, verdict: boolean): boolean =>
      cases.some((one, i) => one.type === type && verdicts[i] === verdict);
    expect(Object.keys(table).filter((type) => !tried(type, true))).toEqual([]);
    const anyText = [
      'CommentString_',
      'xs:string',
      'language',
      'languages',
      'PDFPath',
      'regExp',
      'XPath',
      'textElement',
    ];
    expect(Object.keys(table).filter((type) => !tried(type, false) && !anyText.includes(type))).toEqual([]);
  });
});

describe('values', () => {
  it.each(generations)('of %s are written so that they read the same', (generation, table) => {
    const differing = Object.entries(table).flatMap(([name, type]) =>
      [
        ...valid(name, generation),
        ...fc.sample(nearValid(name, generation), { seed: 7, numRuns: 60 }),
      ].flatMap((text) => {
        const value = type.read(text);
        if (value === undefined) return [];
        const again = type.read(type.write(value));
        return isDeepStrictEqual(again, value) ? [] : [{ name, text, written: type.write(value) }];
      }),
    );
    expect(differing).toEqual([]);
  });
});
