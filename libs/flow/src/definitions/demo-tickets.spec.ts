import { readdirSync, readFileSync } from 'node:fs';
import { convertDocument, writeXml } from '#libs/jdf';
import { demoPlant } from '../../../../test/kit/demo-plant.js';
import { parsedXml, valueIn } from '../../../../test/kit/value-in.js';
import { readDocument } from '../index.js';

const plant = demoPlant();
const folder = (name: string): URL => new URL(`../../../../demo-data/${name}/`, import.meta.url);
const documents = ['orders', 'tickets'].flatMap((name) =>
  readdirSync(folder(name)).map((file) => ({ file, bytes: readFileSync(new URL(file, folder(name))) })),
);

describe('demo documents', () => {
  it('are orders and tickets, eight of the one at least and a pair of the other', () => {
    expect(documents.filter((d) => d.file.endsWith('.json')).length).toBeGreaterThanOrEqual(8);
    expect(documents.filter((d) => d.file.endsWith('.jdf'))).toHaveLength(2);
  });

  it.each(documents.map((d) => [d.file, d] as const))('can be read and planned: %s', (_file, { bytes }) => {
    const reading = readDocument(bytes, plant);
    expect(reading.problems.filter((p) => p.severity === 'error')).toEqual([]);
    expect(reading.plan?.sheets.length).toBeGreaterThan(0);
  });

  it('are planned alike in either generation of the standard', () => {
    for (const { bytes } of documents.filter((d) => d.file.endsWith('.jdf'))) {
      const converted = valueIn(convertDocument(parsedXml(bytes), 'xjdf'));
      const newer = new TextEncoder().encode(writeXml(converted.doc));
      const [first, second] = [readDocument(bytes, plant), readDocument(newer, plant)];
      expect([second.kind, { ...second.plan, problems: [] }]).toEqual([
        'xjdf',
        { ...first.plan, problems: [] },
      ]);
    }
  });

  it('hold a pair of 300 and 400 copies of the same make for the one-pass press', () => {
    const pair = documents
      .filter((d) => d.file.endsWith('.jdf'))
      .map((d) => readDocument(d.bytes, plant).plan!)
      .toSorted((a, b) => a.quantity - b.quantity);
    expect(pair.map((p) => [p.quantity, p.product.pages, p.sheets[0]?.press])).toEqual([
      [300, 16, 'press-full'],
      [400, 16, 'press-full'],
    ]);
  });
});
