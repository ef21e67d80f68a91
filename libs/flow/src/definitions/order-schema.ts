import { z } from 'zod';
import { bindings, type Order, type Plant } from '#libs/craft';
import { done, error, type Problem, type Result, refuse } from '#libs/kernel';
import { schemaProblems } from './schema-problems.js';

const text = z.string().min(1).max(255);
const count = z.int().min(1).max(100_000_000);
const lengthMm = z.number().positive().max(5000);
const inks = z.array(text).max(16);
const time = z.iso.datetime({ offset: true });
const sharePct = z.number().min(0).max(100);

const foldStep = z.strictObject({
  from: z.enum(['Front', 'Left']),
  to: z.enum(['Up', 'Down']),
  travelMm: lengthMm,
});

/** The JSON order. Strict: a field that is not known is refused by its name. */
export const orderSchema = z.strictObject({
  jobId: text,
  name: text,
  quantity: count,
  trimWidthMm: lengthMm,
  trimHeightMm: lengthMm,
  pages: z.int().min(1).max(10_000),
  binding: z.enum(bindings),
  foldCatalog: z
    .string()
    .regex(/^F[0-9]+-([0-9]+|X)$/, 'a code of the fold catalogue looks like F8-7')
    .optional(),
  folds: z.array(foldStep).min(1).max(16).optional(),
  stock: text,
  inksFront: inks,
  inksBack: inks,
  bleedMm: z.number().min(0).max(20).optional(),
  cover: z.strictObject({ stock: text, pages: z.literal(4), inksFront: inks, inksBack: inks }).optional(),
  versions: z
    .array(z.strictObject({ name: text, quantity: count, changes: inks }))
    .max(200)
    .optional(),
  runs: z.array(count).max(20).optional(),
  deliveries: z
    .array(z.strictObject({ quantity: count, due: time, place: text, packing: text.optional() }))
    .max(200)
    .optional(),
  overDeliveryPct: sharePct.optional(),
  underDeliveryPct: sharePct.optional(),
  due: time.optional(),
  priority: z.int().min(0).max(100).optional(),
  customer: text.optional(),
  files: z.array(z.string().min(1).max(2000)).max(100).optional(),
});

function hints(plant: Plant): Record<string, string> {
  const known = [...new Set(plant.inks.flatMap((set) => set.names))].join(', ');
  const fields = Object.keys(orderSchema.shape).join(', ');
  return {
    '': `Fields of an order: ${fields}.`,
    '/binding': `Possible: ${bindings.join(', ')}.`,
    '/stock': `Stocks of this plant: ${plant.stocks.map((s) => s.id).join(', ')}.`,
    '/inksFront': `A list of inks, known: ${known}.`,
    '/inksBack': `A list of inks, empty where the back is not printed; known: ${known}.`,
    '/pages': 'Pages of the body; both sides of a leaf count.',
    '/quantity': 'A whole number from 1.',
    '/trimWidthMm': 'Finished size in mm, up to 5000.',
    '/trimHeightMm': 'Finished size in mm, up to 5000.',
    '/bleedMm': '0 to 20 mm.',
    '/due': 'RFC 3339, e.g. 2027-05-06T16:30:00Z.',
    '/priority': '0 to 100; 50 is usual.',
  };
}

/**
 * Reads a JSON order: its shape, that its stocks and inks are the plant's, that its parts add up. Whether it can be made is for planning to
 * say. Errors: ORDER_FIELD with a JSON Pointer and what would be possible.
 */
export function readOrder(json: unknown, plant: Plant): Result<Order> {
  const byPath = hints(plant);
  const read = orderSchema.safeParse(json);
  if (!read.success) {
    return refuse(...schemaProblems('ORDER_FIELD', read.error, json, (path) => byPath[path] ?? null));
  }
  const order = read.data;
  const problems = [...unknownNames(order, plant), ...sums(order)];
  return problems.length > 0 ? refuse(...problems) : done(order);
}

function unknownNames(order: Order, plant: Plant): Problem[] {
  const stocks = plant.stocks.map((s) => s.id);
  const known = [...new Set(plant.inks.flatMap((set) => set.names))];
  const parts = [
    { path: '', ...order },
    ...(order.cover === undefined ? [] : [{ path: '/cover', ...order.cover }]),
  ];
  return parts.flatMap(({ path, stock, inksFront, inksBack }) => {
    const unknown = (field: string, names: readonly string[]): Problem[] =>
      names.flatMap((name, i) =>
        known.includes(name)
          ? []
          : [
              error('ORDER_FIELD', `There is no ink ${name}.`, {
                path: `${path}/${field}/${i}`,
                hint: `Known: ${known.join(', ')}.`,
              }),
            ],
      );
    const paper = stocks.includes(stock)
      ? []
      : [
          error('ORDER_FIELD', `There is no stock ${stock}.`, {
            path: `${path}/stock`,
            hint: `Stocks of this plant: ${stocks.join(', ')}.`,
          }),
        ];
    return [...paper, ...unknown('inksFront', inksFront), ...unknown('inksBack', inksBack)];
  });
}

/** Deliveries must come to the quantity; of versions planning says so. */
function sums({ deliveries = [], quantity }: Order): Problem[] {
  const sum = deliveries.reduce((total, row) => total + row.quantity, 0);
  if (deliveries.length === 0 || sum === quantity) return [];
  return [
    error('ORDER_FIELD', `The deliveries come to ${sum} copies, the quantity is ${quantity}.`, {
      path: '/deliveries',
      hint: `Together they must come to ${quantity}.`,
    }),
  ];
}
