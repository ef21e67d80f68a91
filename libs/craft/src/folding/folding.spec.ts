import { demoPlant } from '../../../../test/kit/demo-plant.js';
import { saddleBinding, saddleThicknessMm, wireKg } from '../binding/saddle.js';
import { devicesOf } from '../plant.js';
import { setFolder } from './folder-choice.js';
import type { FoldMove } from './instructions.js';

const plant = demoPlant();
const [large, small] = devicesOf(plant, 'folder');
const [stitcher] = devicesOf(plant, 'stitcher');

const move = (axis: 'x' | 'y', travelMm: number, acrossMm: number, alongMm: number): FoldMove => ({
  axis,
  positionMm: travelMm,
  moves: axis === 'y' ? 'left' : 'lower',
  direction: 'over',
  travelMm,
  pieceAcrossMm: acrossMm,
  pieceAlongMm: alongMm,
});
const sixteen = [move('y', 450, 640, 900), move('x', 313, 450, 640), move('y', 213, 327, 450)];

function set(folder: typeof large, moves: FoldMove[], gsm: number) {
  return folder === undefined ? 'no folder' : setFolder(folder, moves, gsm);
}

describe('setting a folder', () => {
  it('makes the first fold in a plate and each fold at right angles by the next knife', () => {
    const setting = set(large, sixteen, 115);
    expect(typeof setting === 'string' ? setting : setting.folds.map((f) => [f.unit, f.stopMm])).toEqual([
      ['plate 1', 450],
      ['knife 1', 313],
      ['knife 2', 213],
    ]);
    // 130 m/min × 0.7 over 900 mm and a gap of 60 mm: plant figures from memory of common practice.
    expect(typeof setting === 'string' ? 0 : Math.round(setting.sheetsPerHour)).toBe(5688);
  });

  it('says which limit of the machine stands in the way', () => {
    expect(set(small, sixteen, 115)).toContain('560 × 900 mm at most');
    expect(set(large, sixteen, 150)).toContain('up to 135 g/m² 3 times');
    expect(set(large, [move('y', 700, 640, 900)], 115)).toContain('650 mm inside its first plate');
    expect(set(large, [move('y', 50, 100, 120)], 115)).toContain('200 × 250 mm at least');
  });

  it('has no unit for more parallel folds than a group has', () => {
    const folds = [1, 2, 3, 4, 5].map((i) => move('y', 100 * i, 500, 700));
    expect(set(large, folds, 80)).toContain('no units');
  });
});

describe('saddle stitching', () => {
  // Source: handbook t07-wire: 0.6 mm, two stitches of 13 + 2 × 6 mm, 10,000 copies = 1.1098 kg.
  it('uses the wire that its stitches are long', () => {
    const wire = { diameterMm: 0.6, stitches: 2, crownMm: 13, legMm: 6 };
    expect(wireKg(wire, 10000)).toBeCloseTo(1.1098, 4);
  });

  it('collects from the outside in and hangs the innermost section first', () => {
    if (stitcher === undefined) throw new Error('the demo plant has no stitcher');
    const sections = [
      { name: 'outer', firstPage: 1 },
      { name: 'inner', firstPage: 9 },
    ];
    const binding = saddleBinding(stitcher, 297, sections, false);
    expect(binding.signatureOrder).toEqual(['outer', 'inner']);
    expect(binding.stations).toEqual([
      { n: 1, signature: 'inner', firstPage: 9 },
      { n: 2, signature: 'outer', firstPage: 1 },
    ]);
    expect(binding.stitchPositionsMm).toEqual([74.25, 222.75]);
  });

  it('is as thick as half the pages', () => {
    expect(saddleThicknessMm(64, 100)).toBeCloseTo(3.2, 9);
  });
});
