import { readFileSync } from 'node:fs';
import { parse } from 'yaml';
import type { Plant } from '#libs/craft';
import { valueIn } from '../../../../test/kit/value-in.js';
import { orderSchema, plantJsonSchema, readOrder, readPlantDefinition } from './index.js';

const file = (name: string): string =>
  readFileSync(new URL(`../../../../demo-data/${name}`, import.meta.url), 'utf8');
const value = (): Record<string, unknown> => parse(file('plant.yaml'));

function demoPlant(): Plant {
  return valueIn(readPlantDefinition(value()));
}

const order = {
  jobId: 'A1',
  name: 'Programme',
  quantity: 300,
  trimWidthMm: 210,
  trimHeightMm: 297,
  pages: 16,
  binding: 'SaddleStitch',
  stock: 'silk-115-full-sg',
  inksFront: ['Black'],
  inksBack: ['Black'],
};

function faults(json: unknown): { path: string | null; hint: string | null }[] {
  const read = readOrder(json, demoPlant());
  return read.ok ? [] : read.problems.map(({ path, hint }) => ({ path, hint }));
}

describe('plant definition', () => {
  it('of the demo is sound and names every device with its kind', () => {
    const plant = demoPlant();
    expect(plant.devices.map((d) => d.kind)).toEqual(
      expect.arrayContaining(['press', 'platesetter', 'prepress', 'guillotine', 'folder', 'stitcher']),
    );
  });

  it('has a JSON Schema beside it that is current', () => {
    expect(JSON.parse(file('plant.schema.json'))).toEqual(JSON.parse(JSON.stringify(plantJsonSchema())));
  });

  it('refuses an unknown field by its name and place', () => {
    const read = readPlantDefinition({ ...value(), colour: 'blue' });
    expect(read.ok ? [] : read.problems.map((p) => [p.code, p.path])).toEqual([
      ['PLANT_DEFINITION', '/colour'],
    ]);
  });

  it('refuses names that lead nowhere', () => {
    const plant = value();
    const read = readPlantDefinition({
      ...plant,
      defaults: { ...(plant.defaults as object), stock: 'none' },
    });
    expect(read.ok ? [] : read.problems.map((p) => p.path)).toEqual(['/defaults/stock']);
  });

  it('refuses set-up sheets that the running set-up tasks cannot hold', () => {
    const text = file('plant.yaml').replace(
      'setupSheets: 120, runningPct: 1.5',
      'setupSheets: 300, runningPct: 1.5',
    );
    const read = readPlantDefinition(parse(text));
    expect(read.ok ? [] : read.problems.map((p) => p.path)).toEqual(['/presses/1/overs/2/setupSheets']);
  });
});

describe('JSON order', () => {
  it('is read as it stands', () => {
    const read = readOrder(order, demoPlant());
    expect(read.ok && read.value).toEqual(order);
  });

  it('refuses an unknown field by its name', () => {
    expect(faults({ ...order, colour: 'blue' })).toEqual([
      { path: '/colour', hint: expect.stringContaining('Fields of an order: jobId') },
    ]);
  });

  it('refuses a missing field and says what would be possible', () => {
    const { stock: _stock, ...rest } = order;
    expect(faults(rest)).toEqual([{ path: '/stock', hint: expect.stringContaining('silk-115-full-sg') }]);
  });

  it('refuses what is not an order at all', () => {
    expect(faults([1])).toHaveLength(1);
    expect(faults(null)).toHaveLength(1);
  });

  it('refuses unknown stocks and inks with a pointer', () => {
    const cover = { stock: 'x', pages: 4, inksFront: ['Pink'], inksBack: [] };
    expect(faults({ ...order, cover }).map((f) => f.path)).toEqual(['/cover/stock', '/cover/inksFront/0']);
  });

  it('refuses deliveries that do not come to the quantity', () => {
    const deliveries = [{ quantity: 299, due: '2026-01-08T16:30:00Z', place: 'Box office' }];
    expect(faults({ ...order, deliveries }).map((f) => f.path)).toEqual(['/deliveries']);
  });

  it('refuses a number that is none and a date that is none', () => {
    expect(faults({ ...order, quantity: 1.5, due: 'tomorrow' }).map((f) => f.path)).toEqual([
      '/quantity',
      '/due',
    ]);
  });

  // An order is an outside interface: a field that is dropped or renamed breaks who sends it.
  it('knows every field that was ever promised', () => {
    expect(Object.keys(orderSchema.shape).toSorted()).toEqual([
      'binding',
      'bleedMm',
      'cover',
      'customer',
      'deliveries',
      'due',
      'files',
      'foldCatalog',
      'folds',
      'inksBack',
      'inksFront',
      'jobId',
      'name',
      'overDeliveryPct',
      'pages',
      'priority',
      'quantity',
      'runs',
      'stock',
      'trimHeightMm',
      'trimWidthMm',
      'underDeliveryPct',
      'versions',
    ]);
  });
});
