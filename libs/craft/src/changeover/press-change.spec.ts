import { demoPlant } from '../../../../test/kit/demo-plant.js';
import { devicesOf, type PressState } from '../plant.js';
import type { NextOnPress } from './due.js';
import { makereadyCapacity, type PressChange, pressChange } from './press-change.js';

const plant = demoPlant();
const half = devicesOf(plant, 'press').find((p) => p.id === 'press-half')!;
const full = devicesOf(plant, 'press').find((p) => p.id === 'press-full')!;
const coated = plant.stocks.find((s) => s.id === 'silk-135-half-lg')!;
const uncoated = plant.stocks.find((s) => s.id === 'offset-240-half-sg')!;

function next(over: Partial<NextOnPress> = {}): NextOnPress {
  return {
    jobId: 'B',
    stock: coated,
    sheetWidthMm: 640,
    sheetHeightMm: 450,
    units: ['Black', 'Cyan', 'Magenta', 'Yellow'].map((ink, i) => ({ unit: i + 1, side: 'front', ink })),
    plates: ['B1', 'B2', 'B3', 'B4'],
    ...over,
  };
}

function change(press: typeof half, before: PressState | null, want: NextOnPress, sheets = 100): PressChange {
  const made = pressChange(press, before, want, sheets, 'print-1');
  if ('severity' in made) throw new Error(made.message);
  return made;
}

describe('change-over of a press with one drive', () => {
  // Plant figures from memory of common practice: 10 + 150 wash + 4 × 50 plates + 20 + 180 + 60 = 620 s.
  it('takes wash and plates one after the other: 620 s from a clean press with four plates', () => {
    expect(change(half, null, next()).changeover.durationS).toBe(620);
  });

  it('lets the helper wash and ink the extra unit meanwhile, and waits for it when it takes longer', () => {
    const green = { unit: 5, side: 'front' as const, ink: 'Festival Green' };
    const gold = { unit: 5, side: 'front' as const, ink: 'Festival Gold' };
    const first = change(half, null, next({ units: [green], plates: ['A1'] }));
    expect(first.changeover.tasks.map((t) => t.name)).not.toContain('wash-up of the fifth unit');
    const second = change(half, first.state, next({ units: [gold] }));
    // 10 + 480 wash-up + 90 ink, then 20 + 180 + 60.
    expect(second.changeover.durationS).toBe(840);
    expect(second.changeover.criticalPath).toContain('wash-up of the fifth unit');
    const dark = change(half, first.state, next({ units: [gold], washesDark: true }));
    expect(dark.changeover.durationS).toBe(840 + 840 - 480);
  });
});

describe('what a change-over has to do', () => {
  it('is only what differs', () => {
    const first = change(full, null, next({ jobId: 'A' }));
    const { changeover } = change(full, first.state, next({ stock: uncoated, plates: ['C1'] }));
    expect(changeover.differs.map((d) => d.what)).toEqual(['plates', 'stock']);
    expect(changeover.tasks.map((t) => t.name)).toEqual(
      expect.arrayContaining(['blanket wash', 'feeder side lay and delivery', 'pile in']),
    );
  });

  it('washes blankets at the third change and cylinders at the sixth', () => {
    let state: PressState | null = null;
    const washes: string[] = [];
    for (let i = 0; i < 8; i++) {
      const made = change(full, state, next({ jobId: `J${i}`, plates: [`P${i}`] }));
      const names = made.changeover.tasks.map((t) => t.name);
      washes.push(
        `${names.includes('blanket wash') ? 'b' : ''}${names.includes('impression cylinder wash') ? 'c' : ''}`,
      );
      state = made.state;
    }
    expect(washes).toEqual(['bc', '', '', 'b', '', '', 'bc', '']);
  });

  it('runs no more set-up sheets than its running tasks have time for', () => {
    // 10 s and 45 s at 8,000 an hour are 22 and 100 sheets.
    expect(makereadyCapacity(full)).toBe(122);
    const refused = pressChange(full, null, next(), 123, 'print-1');
    expect('severity' in refused && refused.code).toBe('PLANT_DEFINITION');
  });
});
