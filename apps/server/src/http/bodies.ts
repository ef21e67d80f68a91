import { z } from 'zod';
import { HttpProblem } from './problem.js';

/** Bodies of the small requests. Unknown fields are refused by name. */
export const benchCountsSchema = z.strictObject({
  good: z.int().min(0).default(0),
  waste: z.int().min(0).default(0),
});

/** A device as it is registered. */
export const deviceSchema = z.strictObject({
  id: z.string().regex(/^[A-Za-z0-9._-]{1,100}$/, 'letters, digits, dot, dash and underscore only'),
  kind: z.enum(['prepress', 'platesetter', 'press', 'guillotine', 'folder', 'stitcher', 'binder', 'bench']),
  name: z.string().min(1).max(200).optional(),
  driver: z.enum(['jmf', 'hotFolder', 'bench', 'automatic']).default('jmf'),
  url: z.string().max(2000).nullable().default(null),
});

/** A move of stock between two accounts; the amount in the unit of the item. */
export const stockMoveSchema = z.strictObject({
  item: z.string().min(1).max(200),
  lot: z.string().max(200).default(''),
  unit: z.enum(['sheets', 'plates', 'kg', 'copies']),
  amount: z.number().positive(),
  from: z.enum(['supplier', 'store', 'reserved', 'process', 'good', 'spoils', 'scrap', 'difference']),
  to: z.enum(['supplier', 'store', 'reserved', 'process', 'good', 'spoils', 'scrap', 'difference']),
  reason: z.string().min(1).max(500),
});

/** A token with which somebody signs in. */
export const sessionSchema = z.strictObject({ token: z.string().min(10).max(200) });

/** Counts of a bench, since the last call. Throws HttpProblem REQUEST_INVALID, as the readers below do. */
export const benchCounts = reader(benchCountsSchema);
/** Reads a device to be registered. */
export const deviceWish = reader(deviceSchema);
/** Reads a move of stock. */
export const stockMove = reader(stockMoveSchema);
/** Reads a token to sign in with. */
export const sessionWish = reader(sessionSchema);

/** Reads a body by its schema, or answers 400 with what is wrong and where. */
function reader<S extends z.ZodType>(schema: S): (body: unknown) => z.infer<S> {
  return (body) => {
    const reading = schema.safeParse(body);
    if (reading.success) return reading.data;
    const issues = reading.error.issues.map(
      (issue) => `/${issue.path.map(String).join('/')}: ${issue.message}`,
    );
    throw new HttpProblem('REQUEST_INVALID', issues.join('; '));
  };
}
