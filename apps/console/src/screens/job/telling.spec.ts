import type { Sentence } from '../../server/shapes.js';
import { amountWords, differenceWords } from './amounts.js';
import { storyDays } from './story-days.js';

const told = (id: number, type: string, step: string | null, time = '2026-03-12T10:00:00Z'): Sentence => ({
  id: String(id),
  time,
  type,
  step,
  device: null,
  sentence: `${type} ${id}`,
});
const idsOf = (days: ReturnType<typeof storyDays>): string[] =>
  days.flatMap(({ sentences }) => sentences.map(({ id }) => id));

describe('story', () => {
  const story = [
    told(1, 'ticket.accepted', null),
    told(2, 'stock.moved', 'print'),
    told(3, 'step.counted', 'print'),
    told(4, 'step.counted', 'cut'),
    told(5, 'step.counted', 'print'),
    told(6, 'step.statusChanged', 'print', '2026-03-13T00:00:01Z'),
  ];

  it('tells of a run of counts the last only, step by step, and leaves stock to the table', () => {
    expect(idsOf(storyDays(story, false, 'UTC'))).toEqual(['1', '4', '5', '6']);
  });

  it('tells everything when all is wanted', () => {
    expect(idsOf(storyDays(story, true, 'UTC'))).toEqual(['1', '2', '3', '4', '5', '6']);
  });

  it('begins a new day at midnight', () => {
    expect(storyDays(story, true, 'UTC').map(({ day, sentences }) => [day, sentences.length])).toEqual([
      ['Thu 12 Mar', 5],
      ['Fri 13 Mar', 1],
    ]);
    expect(storyDays(story, true, 'UTC').at(-1)?.sentences[0]?.clock).toBe('00:00:01');
  });
});

describe('amounts', () => {
  it('are whole pieces, and kilograms to the gram', () => {
    expect(amountWords(12_436, 'sheets')).toBe('12,436 sheets');
    expect(amountWords(0.0826, 'kg')).toBe('0.083 kg');
  });

  it('show what was used beyond the plan with its sign, and nothing before anything is used', () => {
    expect(differenceWords({ planned: 436, actual: 441, unit: 'sheets' })).toBe('+5 sheets');
    expect(differenceWords({ planned: 436, actual: 430, unit: 'sheets' })).toBe('−6 sheets');
    expect(differenceWords({ planned: 8, actual: 8, unit: 'plates' })).toBe('±0 plates');
    expect(differenceWords({ planned: 8, actual: 0, unit: 'plates' })).toBe('–');
  });
});
