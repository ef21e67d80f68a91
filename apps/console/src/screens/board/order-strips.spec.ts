import type { Strip } from '../../strip/lay-strips.js';
import { dueWords } from './current-work.js';
import { orderStrips } from './order-strips.js';

const NOW = Date.UTC(2026, 2, 12, 10, 0);
const MINUTE = 60_000;

const strip = (id: string, more: Partial<Strip>, status = 'InProgress', working = false): Strip => ({
  ticket: { id, status, steps: working ? [{ status: 'InProgress' }] : [] } as unknown as Strip['ticket'],
  segments: [],
  gaps: [],
  rows: 1,
  cameMs: NOW,
  endMs: NOW + 60 * MINUTE,
  dueMs: null,
  lateS: 0,
  ...more,
});

describe('order of strips', () => {
  it('is late, the latest first; at work; waiting, by due time; over', () => {
    const strips = [
      strip('over', {}, 'Completed'),
      strip('waits long', { dueMs: NOW + 90 * MINUTE }),
      strip('waits', { dueMs: NOW + 80 * MINUTE }),
      strip('works', {}, 'InProgress', true),
      strip('late', { lateS: 600 }),
      strip('later', { lateS: 1200 }),
    ];
    expect(orderStrips(strips).map(({ ticket }) => ticket.id)).toEqual([
      'later',
      'late',
      'works',
      'waits',
      'waits long',
      'over',
    ]);
  });

  it('does not turn two late rows round for a few seconds', () => {
    const strips = [strip('a', { lateS: 600, cameMs: NOW - 1 }), strip('b', { lateS: 605 })];
    expect(orderStrips(strips).map(({ ticket }) => ticket.id)).toEqual(['a', 'b']);
  });
});

describe('due in words', () => {
  it('says how much time is left behind the expected end, or by how much it is late', () => {
    expect(dueWords(strip('a', { dueMs: NOW + 100 * MINUTE }), NOW, 'UTC')).toBe(
      'due 11:40, 40 min to spare',
    );
    expect(dueWords(strip('a', { dueMs: NOW + 30 * MINUTE, lateS: 1800 }), NOW, 'UTC')).toBe(
      'due 10:30, late by 30 min',
    );
    expect(dueWords(strip('a', {}), NOW, 'UTC')).toBe('no due time');
    expect(dueWords(strip('a', { dueMs: NOW }, 'Completed'), NOW, 'UTC')).toBe('was due 10:00');
  });
});
