/** Values for the attribute types of the standard: some that are right, and what becomes of them by small changes. */
import fc from 'fast-check';
import type { Generation } from './simple-types.js';

/** What a type's values look like, and the characters that make a difference in them. */
interface Look {
  readonly good: readonly string[];
  readonly characters: string;
}

const NUMERIC = '0123456789+-.eE ~INFa';
const numbersOf = (count: number): Look => ({
  good: [
    Array.from({ length: count }, (_, i) => `${i}`).join(' '),
    Array.from({ length: count }, (_, i) => `-${i}.5`).join('  '),
    ` ${Array.from({ length: count }, () => '0.25').join(' \t')}\n`,
  ],
  characters: NUMERIC,
});
const rangesOf = (count: number, list: boolean): Look => {
  const one = Array.from({ length: count }, (_, i) => `${i + 1}`).join(' ');
  const two = Array.from({ length: count }, (_, i) => `-${i}.5`).join(' ');
  return {
    good: list
      ? [`${one} ~ ${two}`, one, `${one} ${two} ~ ${one} ${two}`, '', 'INF '.repeat(count)]
      : [`${one} ~ ${two}`, `${'~ '.repeat(2 * count)}1`],
    characters: NUMERIC,
  };
};
const texts: Look = {
  good: ['', 'a', 'plain words', ' two  blanks ', 'tab\tline\nend', 'é€中😀'],
  characters: 'ab \t\n\ré😀&<"',
};
const long = (length: number): string[] => [
  'x'.repeat(length),
  'x'.repeat(length + 1),
  '😀'.repeat(length),
  '😀'.repeat(length + 1),
];
const names: Look = {
  good: ['a', 'Name_1', 'a.b-c', 'Ärger', 'Жук', '中', '_x', ' a ', 'n'.repeat(63)],
  characters: 'aZ_09.-: \té×€½~·',
};
const times: Look = {
  good: [
    '2024-08-09T11:35:41+02:00',
    '2024-02-29T24:00:00Z',
    '2023-02-28T23:59:59.999',
    '1900-02-28T00:00:00-14:00',
    '12024-12-31T00:00:00.5Z',
    '-0044-03-15T12:00:00',
  ],
  characters: '0123456789-:TZ+. ',
};
const durations: Look = {
  good: ['P1Y2M3DT4H5M6.7S', '-P1D', 'PT36H', 'PT0.5S', 'P0Y', 'PT130S', 'P1M'],
  characters: '0123456789PTYMDHS.- ',
};
const integers: Look = {
  good: ['0', '-1', '+12', '007', ' 5 ', '123456789012345678'],
  characters: '0123456789+-.eINF ',
};
const integerRanges: Look = {
  good: ['0', '0~3', '0 ~ -1', '-5 ~ 5', 'INF', '+1 ~ INF', '0\t~ 3'],
  characters: '0123456789+-~INF  ',
};
const uris: Look = {
  good: [
    'cid:page1@example.test',
    'http://example.test:8080/a/b.pdf?x=1&y=2#part',
    'file:///C:/jobs/%C3%A4.pdf',
    'a/b c/é.pdf',
    '../x',
    '//host/share',
    'http://[::1]/x',
    'mailto:a@example.test',
    'data:,abc',
    '#x',
    '?q',
  ],
  characters: 'ab:/?#[]@%20é\\{}|^`"<> ',
};
const pdfPaths: Look = {
  good: ['0 0 m 10 -0.5 l h', '1 2 3 4 re', '1 2 3 4 5 6 c 1 2 3 4 v 1 2 3 4 y', 'h'],
  characters: '01.+- mlcvyreh\t',
};
const hex: Look = { good: ['00ff', 'ABCDEF', ' 0a0B '], characters: '0aFg ' };
const languages: Look = { good: ['en', 'de-AT', 'zh-Hant-TW', 'en-US'], characters: 'ab-Z1_ ' };
const booleans: Look = { good: ['true', 'false', '1', '0', ' true '], characters: 'truefals10TF ' };
const colours: Look = {
  good: ['Blue', 'ClearDarkBlue', 'LightGoldenrod', 'NoColor', 'skyblue', 'AliceBlue', 'MultiColor'],
  characters: 'CDLblue kK',
};
const codes: Look = {
  good: ['F16-6', 'F4-X', 'DE', 'FoldCatalog', 'XyZ', 'zxy', 'all', 'en all'],
  characters: 'FXxyzDE0-9 l',
};

const floats: Look = {
  good: ['0', '-1.5', '1e3', '1E-2', '.5', '5.', '+7', 'INF', '-INF', 'NaN', ' 0.25 ', '1', '100', '100.01'],
  characters: NUMERIC,
};

function joined(look: Look, least = 0): Look {
  const [first = '', second = '', third = ''] = look.good;
  return {
    ...look,
    good: [`${first} ${second}`, `${first}\n${second}  ${third}`, ...(least === 0 ? [''] : []), ' '],
  };
}

const sized = (look: Look, length: number): Look => ({ ...look, good: [...look.good, ...long(length)] });

const looks: Readonly<Record<string, Look>> = {
  boolean: booleans,
  'xs:boolean': booleans,
  pSortAmount: booleans,
  booleanList: joined(booleans),
  eBooleanStateList_: joined(booleans),
  ePresentValueList: joined(booleans),
  DoubleList: joined(floats),
  FloatList: joined(floats),
  ColorValueList: numbersOf(5),
  TransferFunction: numbersOf(4),
  XYPair: numbersOf(2),
  pTileID: numbersOf(2),
  shape: numbersOf(3),
  rectangle: numbersOf(4),
  matrix: numbersOf(6),
  MatrixShift_: numbersOf(4),
  CMYKColor: { ...numbersOf(4), good: ['0 0.5 1 .25', '0 0 0 1', '1 2 3 4'] },
  sRGBColor: { ...numbersOf(3), good: ['0 0.5 1', '0 0 0', '1 2 3'] },
  LabColor: numbersOf(3),
  StepRepeat: { ...integers, good: ['1 2 3', ' 1  INF -1', '1 2'] },
  IntegerList: joined(integers),
  Integer0To100: { ...integers, good: ['0', '100', '101', '-1', '050'] },
  Score: { ...integers, good: ['0', '100', '101', '-1', '050'] },
  CommonFolds: { ...integers, good: ['1', '2', '3'] },
  LongInteger: {
    ...integers,
    good: ['9223372036854775807', '9223372036854775808', '-9223372036854775808', 'INF'],
  },
  'xs:long': {
    ...integers,
    good: ['9223372036854775807', '9223372036854775808', '-9223372036854775808', 'INF'],
  },
  'xs:int': { ...integers, good: ['2147483647', '2147483648', '-2147483648', '0'] },
  IntegerRange: integerRanges,
  DoubleRange: rangesOf(1, false),
  DoubleRangeList: rangesOf(1, true),
  XYPairRange: rangesOf(2, false),
  XYPairRangeList: rangesOf(2, true),
  ShapeRange: rangesOf(3, false),
  ShapeRangeList: rangesOf(3, true),
  RectangleRange: rangesOf(4, false),
  RectangleRangeList: rangesOf(4, true),
  PDFPath: pdfPaths,
  NamedColor: colours,
  FoldCatalog: codes,
  CountryCode: codes,
  ePresentationDirection1_: codes,
  dateTime: { ...times, good: [...times.good, 'INF', '-INF'] },
  'xs:dateTime': times,
  DateTimeRange: {
    ...times,
    good: [
      '2024-08-09T11:35:41+02:00 ~ 2024-08-10T00:00:00Z',
      '2024-08-09T11:35:41+02:00 ~ INF',
      '~ INF INF',
    ],
    characters: '0123-:TZ ~INF',
  },
  DateTimeRangeList: {
    ...times,
    good: ['2024-08-09T11:35:41+02:00 ~ INF -INF ~ 2024-08-09T11:35:41', '2024-08-09T11:35:41', ''],
    characters: '0123-:TZ ~INF',
  },
  date: {
    ...times,
    good: ['2024-02-29', '2023-02-29', '2024-08-09Z', '2024-12-31-05:00', '-0001-01-01', '0000-01-01'],
  },
  gYearMonth: { ...times, good: ['2024-08', '2024-13', '2024-08+02:00', '12024-01Z'] },
  Time: { ...times, good: ['11:35:41', '24:00:00', '23:59:59.9Z', '00:00:00+14:00'] },
  TimeRange: { ...times, good: ['11:35:41 ~ 12:00:00Z', '~ ~ 12:00:00Z'], characters: '0123:Z ~' },
  duration: { ...durations, good: [...durations.good, 'INF', '-INF'] },
  'xs:duration': durations,
  DurationRange: {
    ...durations,
    good: ['PT1H ~ PT2H', 'PT1H ~ INF', 'P1D P1M INF'],
    characters: '01PTYMDH ~INF',
  },
  DurationRangeList: { ...durations, good: ['PT1H ~ INF P1D', 'P1M', ''], characters: '01PTYMDH ~INF' },
  shortString: sized(texts, 63),
  longString: sized(texts, 255),
  Text: sized(texts, 20480),
  regExp: sized(texts, 20480),
  XPath: sized(texts, 20480),
  URL: { ...uris, good: [...uris.good, '', ' ', ...long(4095)] },
  URI: uris,
  'xs:anyURI': { ...uris, good: [...uris.good, '', ' '] },
  NMTOKENS: {
    ...names,
    good: ['', ' ', 'a b', 'a/b', ' a\tb ', `${'n '.repeat(2048)}`, `${'n '.repeat(2049)}`, 'n'.repeat(64)],
  },
  _NMTOKENS: {
    ...names,
    good: ['', ' ', 'a b', 'a/b', ' a\tb ', `${'n '.repeat(2048)}`, `${'n '.repeat(2049)}`],
  },
  'xs:NMTOKENS': joined(names, 0),
  pItemNames: joined(names, 0),
  NameRange: { ...names, good: ['a ~ b', '~ a ~'] },
  NameRangeList: { ...names, good: ['a ~ b', 'a b ~ c', '', 'a'] },
  QName: { ...names, good: ['a', 'xs:string', 'xs:a:b'], characters: 'axs:' },
  ID: { ...names, good: [...names.good, 'i'.repeat(64)] },
  IDREFS: joined(names, 0),
  'xs:IDREFS': joined(names, 0),
  ChildRefs: joined(names, 0),
  hexBinary: hex,
  'xs:hexBinary': { ...hex, good: [...hex.good, ''] },
  hexBinaryList: joined(hex),
  language: languages,
  languages: joined(languages),
  LanguagesOrAll: codes,
  double: floats,
  'xs:float': floats,
  ColorValue: floats,
  RelativeTravel: floats,
  Percentage: floats,
  Use: floats,
};

const XJDF_ONLY: Readonly<Record<string, Look>> = {
  IntegerRange: { ...integers, good: ['0 5', '-1 -1', '1', '1 2 3'] },
  PDFPath: texts,
  XPath: texts,
  regExp: texts,
  language: texts,
};

function lookOf(type: string, generation: Generation): Look {
  const look = (generation === 'xjdf' ? XJDF_ONLY[type] : undefined) ?? looks[type];
  if (look !== undefined) return look;
  if (/RangeList$|Index$|Copies$|LayerIDs$|PageNumber$|RunPageRange$|Sorting$/.test(type))
    return { ...integerRanges, good: [...integerRanges.good, '0 1~2 5', '0 ~ 3 ', ' 0', '', '3-5'] };
  if (/Tags$/.test(type)) return looks.NameRangeList!;
  if (/Integer$|Number$|RunPage$/.test(type)) return { ...integers, good: [...integers.good, 'INF', '-INF'] };
  if (/[sS]tring|textElement|pSeparation|pSheetName|pSignatureName|pStationName/.test(type))
    return sized(texts, 1023);
  return names;
}

/** Values to try as they are; most of them are of the type. */
export const valid = (type: string, generation: Generation): readonly string[] =>
  lookOf(type, generation).good;

/** Values with up to three characters put in, taken out or exchanged, or two of them put together. */
export function nearValid(type: string, generation: Generation): fc.Arbitrary<string> {
  const { good, characters } = lookOf(type, generation);
  const short = good.filter(({ length }) => length < 100);
  const base = fc.constantFrom(...(short.length === 0 ? good : short));
  const edit = fc.record({
    at: fc.nat(60),
    put: fc.constantFrom('', '', ...characters),
    remove: fc.constantFrom(0, 0, 1, 1, 2),
  });
  const edited = fc.tuple(base, fc.array(edit, { maxLength: 3 })).map(([value, edits]) => {
    const characters = [...value];
    for (const { at, put, remove } of edits) characters.splice(at % (characters.length + 1), remove, put);
    return characters.join('');
  });
  const pair = fc
    .tuple(base, fc.constantFrom(' ', '', '~', ' ~ ', '  '), base)
    .map((parts) => parts.join(''));
  return fc.oneof({ weight: 4, arbitrary: edited }, { weight: 1, arbitrary: pair });
}
