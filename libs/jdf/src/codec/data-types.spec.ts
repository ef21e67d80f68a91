import { dataTypes } from './data-types.js';
import { boxMm, lengthMm, shapeMm, sizeMm, transformMm } from './lengths.js';

const never = { at: Number.POSITIVE_INFINITY, offsetMin: undefined };

// Forms of the values: the standard, data types; XML Schema part 2 for dates, times and durations.
describe('attribute values', () => {
  const read: readonly (readonly [keyof typeof dataTypes, string, unknown])[] = [
    [
      'IntegerRangeList',
      '0~3 5 -1',
      [
        { from: 0, to: 3 },
        { from: 5, to: 5 },
        { from: -1, to: -1 },
      ],
    ],
    ['DoubleRange', '0.5 ~ INF', { from: 0.5, to: Number.POSITIVE_INFINITY }],
    [
      'XYPairRangeList',
      '1 2 ~ 3 4 5 6',
      [
        { from: { x: 1, y: 2 }, to: { x: 3, y: 4 } },
        { from: { x: 5, y: 6 }, to: { x: 5, y: 6 } },
      ],
    ],
    [
      'NameRangeList',
      'a ~ c x',
      [
        { from: 'a', to: 'c' },
        { from: 'x', to: 'x' },
      ],
    ],
    ['matrix', '1 0 0 1 10 20', { a: 1, b: 0, c: 0, d: 1, e: 10, f: 20 }],
    ['rectangle', '0 0 595 842', { llx: 0, lly: 0, urx: 595, ury: 842 }],
    ['CMYKColor', '1 0 .5 0', { c: 1, m: 0, y: 0.5, k: 0 }],
    [
      'TransferFunction',
      '0 0 0.5 0.6 1 1',
      [
        { x: 0, y: 0 },
        { x: 0.5, y: 0.6 },
        { x: 1, y: 1 },
      ],
    ],
    ['NamedColor', 'ClearDarkBlue', 'ClearDarkBlue'],
    ['duration', 'P1Y2M3DT4H', { months: 14, seconds: 273_600 }],
    ['duration', 'INF', { months: 0, seconds: Number.POSITIVE_INFINITY }],
    ['dateTime', '2024-08-09T11:35:41+02:00', { at: Date.UTC(2024, 7, 9, 9, 35, 41), offsetMin: 120 }],
    ['dateTime', '2024-08-09T11:35:41', { at: Date.UTC(2024, 7, 9, 11, 35, 41), offsetMin: undefined }],
    [
      'DateTimeRange',
      '2024-08-09T00:00:00Z ~ INF',
      { from: { at: Date.UTC(2024, 7, 9), offsetMin: 0 }, to: never },
    ],
    [
      'PDFPath',
      '0 0 m 10 0 l h',
      [
        { operator: 'm', operands: [0, 0] },
        { operator: 'l', operands: [10, 0] },
        { operator: 'h', operands: [] },
      ],
    ],
    ['hexBinary', '00fF', Uint8Array.of(0, 255)],
    ['NMTOKENS', '', []],
    ['languages', 'en de-AT', ['en', 'de-AT']],
  ];
  it.each(read)('%s "%s"', (type, text, value) => {
    expect(dataTypes[type].read(text)).toEqual(value);
  });

  const refused: readonly (readonly [keyof typeof dataTypes, string])[] = [
    ['IntegerRangeList', '3-5'],
    ['DoubleRange', '~ 1 2'],
    ['XYPair', '1 2 3'],
    ['CMYKColor', '0 0 0 1.1'],
    ['TransferFunction', '0 0 1'],
    ['NamedColor', ' Blue'],
    ['boolean', '1'],
    ['double', 'NaN'],
    ['date', '2023-02-29'],
    ['duration', '-INF'],
    ['hexBinary', '00'],
    ['PDFPath', '0 0 m  h'],
    ['URL', 'a%zz'],
    ['ID', '1a'],
  ];
  it.each(refused)('%s is not "%s"', (type, text) => {
    expect(dataTypes[type].read(text)).toBeUndefined();
  });
});

describe('lengths', () => {
  // A point is 1/72 inch, an inch 25.4 mm; A4 is 210 by 297 mm (ISO 216).
  it('are points in the document and millimetres here', () => {
    expect(lengthMm.read('72')).toBeCloseTo(25.4, 9);
    expect(sizeMm.write({ widthMm: 210, heightMm: 297 })).toBe('595.276 841.89');
    expect(shapeMm.read('72 144 36')).toEqual({
      widthMm: 25.4,
      heightMm: 50.8,
      depthMm: expect.closeTo(12.7, 9),
    });
    expect(boxMm.read('0 0 72 72')).toEqual({ leftMm: 0, bottomMm: 0, rightMm: 25.4, topMm: 25.4 });
  });

  it('of a matrix are its shift only', () => {
    expect(transformMm.read('0 1 -1 0 72 0')).toEqual({
      a: 0,
      b: 1,
      c: -1,
      d: 0,
      shiftXMm: 25.4,
      shiftYMm: 0,
    });
    expect(transformMm.write({ a: 0, b: 1, c: -1, d: 0, shiftXMm: 25.4, shiftYMm: 0 })).toBe('0 1 -1 0 72 0');
  });

  it('are not infinite where a size is meant', () => {
    expect(sizeMm.read('INF 100')).toBeUndefined();
  });
});
