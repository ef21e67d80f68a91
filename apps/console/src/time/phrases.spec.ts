import { agoWords, dayWords, secondWords, spanWords, timeWords, withTimes } from './phrases.js';
import { plantMsAt } from './plant-time.js';

const NOW = Date.UTC(2026, 2, 12, 10, 42);
const MINUTE = 60_000;

describe('times in words', () => {
  it('are told in sentences of the server as the clock here shows them', () => {
    expect(withTimes('dries until 2026-03-13T10:42:22.990Z', NOW, 'UTC')).toBe('dries until Fri 10:42');
    expect(withTimes('waits for print-1', NOW, 'UTC')).toBe('waits for print-1');
  });

  it('are as short as they can be without being mistaken', () => {
    expect(timeWords(NOW, NOW, 'UTC')).toBe('10:42');
    expect(timeWords(NOW + 24 * 60 * MINUTE, NOW, 'UTC')).toBe('Fri 10:42');
    expect(timeWords(NOW + 8 * 24 * 60 * MINUTE, NOW, 'UTC')).toBe('20 Mar 10:42');
  });

  it('follow the zone they are asked for', () => {
    expect(timeWords(NOW, NOW, 'Asia/Tokyo')).toBe('19:42');
    expect(dayWords(NOW, 'UTC')).toBe('Thu 12 Mar');
    expect(secondWords(NOW + 7000, 'UTC')).toBe('10:42:07');
  });

  it('write midnight as 00:00 and not as 24:00', () => {
    const midnight = Date.UTC(2026, 2, 12);
    expect(timeWords(midnight, midnight, 'UTC')).toBe('00:00');
  });

  it('tell a span in its two largest units', () => {
    expect([0, 59, 60, 3599, 3600, 7500, 90_000].map(spanWords)).toEqual([
      '0 s',
      '59 s',
      '1 min',
      '1 h',
      '1 h',
      '2 h 05 min',
      '1 d 1 h',
    ]);
  });

  it('call what lies less than five seconds back just now', () => {
    expect(agoWords(NOW - 4000, NOW)).toBe('just now');
    expect(agoWords(NOW - 12 * MINUTE, NOW)).toBe('12 min ago');
    expect(agoWords(NOW + 4000, NOW)).toBe('just now');
  });
});

describe('plant time', () => {
  it('goes on from what the server said, at the speed it said, whatever the browser thinks the time is', () => {
    const fix = { plantMs: NOW, heardMs: 500, factor: 60 };
    expect(plantMsAt(fix, 500)).toBe(NOW);
    expect(plantMsAt(fix, 2500)).toBe(NOW + 2 * MINUTE);
  });
});
