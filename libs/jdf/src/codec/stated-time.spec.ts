import { formatDuration, parseDuration } from './durations.js';
import { parseDateTime } from './stated-time.js';

// Values of XML Schema part 2 (W3C Recommendation), sections 3.2.6 and 3.2.7, and of the standard's samples.
describe('durations', () => {
  it.each([
    ['PT1H30M', 5400],
    ['P1DT12H', 129_600],
    ['PT36H', 129_600],
    ['PT1004199059S', 1_004_199_059],
    ['PT130S', 130],
    ['PT2M10S', 130],
    ['-PT2M', -120],
    ['PT0.5S', 0.5],
    ['P0Y0M3D', 259_200],
  ])('reads %s as %d seconds', (text, seconds) => {
    expect(parseDuration(text)).toBe(seconds);
  });

  it.each(['', 'P', 'PT', 'P1DT', 'P-1D', '1H', 'PT1.5H', 'PT1M1H', 'P1S', 'INF'])(
    'does not read "%s"',
    (text) => {
      expect(parseDuration(text)).toBeUndefined();
    },
  );

  it('does not guess how long a year or a month is', () => {
    expect([parseDuration('P1Y'), parseDuration('P2M')]).toEqual([undefined, undefined]);
  });

  it('writes seconds so that they read the same', () => {
    for (const seconds of [0, 1, 59.999, 60, 3600, 5400, 86_400, 90_061.25, -120]) {
      expect(parseDuration(formatDuration(seconds))).toBe(seconds);
    }
    expect([formatDuration(5400), formatDuration(0), formatDuration(93_784.5)]).toEqual([
      'PT1H30M',
      'PT0S',
      'P1DT2H3M4.5S',
    ]);
  });
});

describe('dates with times', () => {
  it.each([
    ['2000-01-20T12:00:00-13:00', '2000-01-21T01:00:00.000Z'],
    ['2024-08-09T11:35:41+02:00', '2024-08-09T09:35:41.000Z'],
    ['2024-09-23T17:47:18-05:00', '2024-09-23T22:47:18.000Z'],
    ['2024-02-29T24:00:00Z', '2024-03-01T00:00:00.000Z'],
    ['2024-07-25T12:32:48.1239Z', '2024-07-25T12:32:48.123Z'],
    ['0099-01-01T00:00:00Z', '0099-01-01T00:00:00.000Z'],
  ])('reads %s as %s', (text, iso) => {
    expect(new Date(parseDateTime(text)!).toISOString()).toBe(iso);
  });

  it.each([
    '2024-02-30T00:00:00Z',
    '2023-02-29T00:00:00Z',
    '2024-13-01T00:00:00Z',
    '2024-01-01T24:00:01Z',
    '2024-01-01T00:60:00Z',
    '2024-01-01T00:00:00+15:00',
    '2024-01-01',
    'INF',
  ])('does not read %s', (text) => {
    expect(parseDateTime(text)).toBeUndefined();
  });

  it('does not read a time without a zone', () => {
    expect(parseDateTime('2024-01-01T00:00:00')).toBeUndefined();
  });
});
