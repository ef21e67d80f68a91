import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { demoPlant } from '../../../test/kit/demo-plant.js';
import { wireKg } from './binding/saddle.js';
import { shortestSchedule } from './changeover/shortest.js';
import { hourRate, priceJob } from './cost/price.js';
import { lifts } from './cutting/lifts.js';
import { cutProgramme } from './cutting/programme.js';
import { sectionScheme } from './imposition/catalogue.js';
import { inkMassG } from './ink/ink-mass.js';
import { flatForm } from './layouts/piece-form.js';
import { pieceLayouts } from './layouts/place-pieces.js';
import { printableArea } from './layouts/printable.js';
import { sectionForm } from './layouts/section-form.js';
import { caliperUm, grainAxis, paperKg, paperPrice } from './paper/paper.js';
import { devicesOf } from './plant.js';
import { oversChain } from './sheets/overs.js';

function values<T>(file: string): T[] {
  const root = process.env.SIDELAY_CHECKDATA_DIR;
  if (!root) throw new Error('SIDELAY_CHECKDATA_DIR is not set; this lane needs the check data.');
  const parsed: { values: T[] } = JSON.parse(readFileSync(join(root, file), 'utf8'));
  return parsed.values;
}

type Row = Record<string, number>;
const n = (row: Row, key: string): number => {
  const value = row[key];
  if (value === undefined) throw new Error(`the check data has no ${key}`);
  return value;
};

const plant = demoPlant();
const [stock] = plant.stocks;

// Sources stand in the files themselves (`source`, `sourceKind`); each test names the file.
describe('handbook check data', () => {
  it('t01-mass: paper weighs what ISO 536 grammage says', () => {
    for (const v of values<Row>('t01-mass.json')) {
      expect(paperKg(n(v, 'L_mm'), n(v, 'W_mm'), n(v, 'gsm'), n(v, 'sheets'))).toBeCloseTo(
        n(v, 'mass_kg'),
        3,
      );
    }
  });

  it('t01-caliper: a sheet is as thick as grammage times bulk', () => {
    for (const v of values<Row>('t01-caliper.json')) {
      expect(caliperUm(n(v, 'gsm'), n(v, 'bulk_cm3_per_g'))).toBeCloseTo(n(v, 'caliper_um'), 6);
    }
  });

  it('t01-price: paper costs its mass at the price per 100 kg', () => {
    for (const v of values<Row>('t01-price.json')) {
      const paper = {
        ...stock!,
        sheetWidthMm: n(v, 'L_mm'),
        sheetHeightMm: n(v, 'W_mm'),
        gsm: n(v, 'gsm'),
        price: n(v, 'pricePer100kg'),
        priceBasis: 'per100kg' as const,
      };
      expect(Math.abs(paperPrice(paper, n(v, 'sheets')) - n(v, 'cost'))).toBeLessThanOrEqual(0.0051);
    }
  });

  it('t01-grain: a sheet with upright pages needs its fibres along the rows', () => {
    for (const v of values<{ sheet_mm?: [number, number]; grain?: 'long' | 'short' }>('t01-grain.json')) {
      if (v.sheet_mm === undefined || v.grain === undefined) continue;
      expect(grainAxis(v.sheet_mm[0], v.sheet_mm[1], v.grain)).toBe('y');
    }
  });

  it('t02-imposed-size: pages, trims and lip add up to the imposed size', () => {
    for (const v of values<Row & { page: [number, number] }>('t02-imposed-size.json')) {
      const scheme = sectionScheme(2 * n(v, 'columns') * n(v, 'rows'));
      const trim = n(v, 'trim_mm');
      const form = sectionForm(scheme!, v.page[0], v.page[1], {
        headMm: trim,
        footMm: trim,
        faceMm: trim,
        spineMm: 0,
      });
      const { left, right, lower, upper } = form!.outerTrimMm;
      expect(form!.widthMm + left + right + n(v, 'lip_mm')).toBeCloseTo(n(v, 'imposedW_mm'), 6);
      const extraHeadGap = n(v, 'headGap_mm') - 2 * trim;
      expect(form!.heightMm + lower + upper + extraHeadGap).toBeCloseTo(n(v, 'imposedH_mm'), 6);
    }
  });

  it('t02-nup: a grid holds as many pieces upright and turned as the check data counts', () => {
    const press = devicesOf(plant, 'press')[1]!;
    for (const v of values<Row>('t02-nup.json')) {
      const free = {
        ...press,
        gripperMm: 0,
        freeEdgeMm: 0,
        colourBarMm: 0,
        maxImageWidthMm: 5000,
        maxImageHeightMm: 5000,
      };
      const gutter = n(v, 'gutter_mm');
      // The check data's area holds the trimmed pieces only: the sheet is larger by the outer bleed.
      const area = printableArea(free, n(v, 'printableW_mm') + gutter, n(v, 'printableH_mm') + gutter, false);
      const [upright, turned] = pieceLayouts({
        form: flatForm(n(v, 'itemW_mm'), n(v, 'itemH_mm'), 1),
        area,
        bleedMm: gutter / 2,
        minBleedMm: gutter / 2,
      });
      expect([upright?.pieces.length, turned?.pieces.length]).toEqual([
        n(v, 'gridUpright'),
        n(v, 'gridRotated'),
      ]);
    }
  });

  it('t03-chain: sheets to press follow from finishing, rounded up after every step', () => {
    interface Chain {
      good: number;
      steps: { name: string; setup: number; pct: number; unitsPerUnitOut: number | string }[];
      onInput: { in: number }[];
      sheetsToPress_onInput: number;
    }
    for (const v of values<Chain>('t03-chain.json')) {
      const steps = v.steps.map((s) => {
        const perOut = typeof s.unitsPerUnitOut === 'number' ? s.unitsPerUnitOut : 1 / 24;
        return { step: s.name, setupSheets: s.setup, runningPct: s.pct, outPerIn: Math.round(1 / perOut) };
      });
      const chain = oversChain(v.good, steps);
      expect(chain.map((c) => c.in)).toEqual(v.onInput.map((c) => c.in));
      expect(chain.at(-1)?.in).toBe(v.sheetsToPress_onInput);
    }
  });

  it('t04-ink-mass: ink weighs area times coverage times film', () => {
    for (const v of values<Row>('t04-ink-mass.json')) {
      const area = n(v, 'sheetW_mm') * n(v, 'sheetH_mm');
      const film = n(v, 'solidInk_g_per_m2');
      const grams = inkMassG(area, 100 * n(v, 'meanCoverage'), film, n(v, 'impressions'));
      expect(grams / 1000).toBeCloseTo(n(v, 'ink_kg'), 4);
    }
  });

  it('t06-changeover: the longest way is the shortest change-over with hands for everything', () => {
    interface Network {
      tasks: Record<string, { duration_s: number; after: string[] }>;
      makespan_s: number;
      criticalPath: string[];
    }
    for (const v of values<Network>('t06-changeover.json')) {
      const tasks = Object.entries(v.tasks).map(([name, t]) => ({
        name,
        durationS: t.duration_s,
        after: t.after,
        needs: [],
      }));
      const found = shortestSchedule(tasks);
      expect(found.durationS).toBe(v.makespan_s);
      expect(found.criticalPath).toEqual(v.criticalPath);
    }
  });

  it('t07-cutcount: one row or one column is cut strip by strip with the cuts of the check data', () => {
    for (const v of values<Row & { doubleCutGutter: boolean }>('t07-cutcount.json')) {
      const [columns, rows] = [n(v, 'columns'), n(v, 'rows')];
      if (columns > 1 && rows > 1) continue;
      const gap = v.doubleCutGutter ? 6 : 0;
      const pieces = Array.from({ length: columns * rows }, (_, i) => ({
        name: `P${i}`,
        column: i % columns,
        row: Math.floor(i / columns),
        xMm: 20 + (i % columns) * (100 + gap),
        yMm: 20 + Math.floor(i / columns) * (100 + gap),
        widthMm: 100,
        heightMm: 100,
      }));
      const programme = cutProgramme({
        sheet: 'S1',
        sheetWidthMm: 40 + columns * (100 + gap),
        sheetHeightMm: 40 + rows * (100 + gap),
        pieces,
        trimmed: true,
        minGaugeMm: 30,
        perCutS: 9,
        perTurnS: 6,
      });
      expect(typeof programme === 'string' ? programme : programme.cuts.length).toBe(n(v, 'cutsBlockTurned'));
    }
  });

  it('t07-lift: lifts follow from the opening and the caliper', () => {
    for (const v of values<Row>('t07-lift.json')) {
      const found = lifts(n(v, 'clampOpening_mm'), caliperUm(n(v, 'gsm'), n(v, 'bulk')), n(v, 'sheets'));
      expect(found.count).toBe(n(v, 'lifts'));
      expect(Math.min(n(v, 'sheetsPerLift'), n(v, 'sheets'))).toBe(found.sheets);
    }
  });

  it('t07-wire: wire weighs its length', () => {
    for (const v of values<Row>('t07-wire.json')) {
      const wire = {
        diameterMm: n(v, 'wireDiameter_mm'),
        stitches: n(v, 'stitches'),
        crownMm: n(v, 'crown_mm'),
        legMm: n(v, 'leg_mm'),
      };
      expect(wireKg(wire, n(v, 'copies'))).toBeCloseTo(n(v, 'wireTotal_kg'), 4);
    }
  });

  it('t08-hourrate: an hour costs the yearly cost over the hours sold', () => {
    for (const v of values<Row>('t08-hourrate.json')) {
      const rate = hourRate(n(v, 'annualCost'), n(v, 'paidHours'), n(v, 'utilisation'));
      expect(rate).toBeCloseTo(n(v, 'hourRate'), 2);
    }
  });

  it('t08-jobcost: a job costs its hours, material, handling, overhead and margin', () => {
    for (const v of values<Row & { operations: Row[] }>('t08-jobcost.json')) {
      const { operations } = v;
      const price = priceJob(
        operations.map((o) => ({
          name: 'step',
          seconds: 3600 * (n(o, 'setup_h') + n(o, 'run_h')),
          hourRate: n(o, 'rate'),
        })),
        [
          { name: 'plates', price: n(v, 'plates') * n(v, 'platePrice') },
          { name: 'paper', price: n(v, 'paperCost') },
          { name: 'ink', price: n(v, 'ink_kg') * n(v, 'inkPrice') },
        ],
        {
          materialHandlingPct: n(v, 'materialHandlingPct'),
          overheadPct: n(v, 'overheadPct'),
          marginPct: 10,
          minimumOrder: 0,
        },
      );
      expect(price.amount).toBe(n(v, 'priceAt10PctMarginOnPrice'));
    }
  });
});
