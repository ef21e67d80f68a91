import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'yaml';
import type { Order, Plant } from '#libs/craft';
import { readOrder, readPlantDefinition } from '#libs/flow';

const folder = new URL('../../demo-data/', import.meta.url);

/** The demo's plant definition, read as the server reads it. */
export function demoPlant(): Plant {
  const read = readPlantDefinition(parse(readFileSync(new URL('plant.yaml', folder), 'utf8')));
  if (!read.ok) throw new Error(read.problems.map((p) => p.message).join('\n'));
  return read.value;
}

/** One of the demo's orders by the name of its file. */
export function demoOrder(file: string, plant: Plant): Order {
  const read = readOrder(JSON.parse(readFileSync(new URL(join('orders', file), folder), 'utf8')), plant);
  if (!read.ok) throw new Error(read.problems.map((p) => p.message).join('\n'));
  return read.value;
}
