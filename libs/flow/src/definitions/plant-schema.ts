import { z } from 'zod';
import { bindings, type Plant } from '#libs/craft';
import { done, hasErrors, type Result, refuse } from '#libs/kernel';
import { checkPlant } from './check-plant.js';
import {
  benchSchema,
  binderSchema,
  folderSchema,
  guillotineSchema,
  platesetterSchema,
  prepressSchema,
  pressSchema,
  stitcherSchema,
} from './device-schemas.js';
import { schemaProblems } from './schema-problems.js';

const text = z.string().min(1);
const positive = z.number().positive();
const atLeastNone = z.number().min(0);
const pct = z.number().min(0).max(100);
const clock = z.string().regex(/^([01][0-9]|2[0-4]):[0-5][0-9]$/, 'a time of day as HH:MM');

const stock = z.strictObject({
  id: text,
  family: text,
  name: text,
  class: text,
  gsm: positive,
  caliperUm: positive,
  sheetWidthMm: positive,
  sheetHeightMm: positive,
  grain: z.enum(['long', 'short']),
  price: atLeastNone,
  priceBasis: z.enum(['per1000', 'per100kg']),
  onHand: z.int().min(0),
  location: z.string(),
});

const inkSet = z.strictObject({
  id: text,
  press: text,
  names: z.array(text).min(1),
  solidGPerM2: z.record(text, positive),
  pricePerKg: atLeastNone,
  onHandKg: z.record(text, atLeastNone),
  metallic: z.boolean().optional(),
  dark: z.boolean().optional(),
});

const calendarRow = z.strictObject({
  days: z.array(z.enum(['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'])).min(1),
  from: clock,
  to: clock,
});

/** The plant definition as the file has it: devices by kind, everything in the units that the names say. */
export const plantSchema = z.strictObject({
  $schema: z.string().optional(),
  id: text,
  name: text,
  timeZone: text,
  currency: z.string().regex(/^[A-Z]{3}$/, 'three letters as in ISO 4217'),
  defaults: z
    .strictObject({
      binding: z.strictObject({
        onePage: z.enum(bindings),
        twoPages: z.enum(bindings),
        more: z.enum(bindings),
      }),
      inksFront: z.array(text),
      inksBack: z.array(text),
      stock: text,
      bleedMm: atLeastNone,
      minBleedMm: atLeastNone,
      assumedCoveragePct: pct,
    })
    .describe('What a ticket leaves open is filled from here, each time with a warning.'),
  presses: z.array(pressSchema).min(1),
  platesetters: z.array(platesetterSchema).min(1),
  prepress: z.array(prepressSchema).min(1),
  guillotines: z.array(guillotineSchema),
  folders: z.array(folderSchema),
  stitchers: z.array(stitcherSchema),
  binders: z.array(binderSchema),
  benches: z.array(benchSchema),
  plates: z.array(
    z.strictObject({
      id: text,
      widthMm: positive,
      heightMm: positive,
      price: atLeastNone,
      onHand: z.int().min(0),
      reorderAt: z.int().min(0),
    }),
  ),
  stocks: z.array(stock).min(1),
  inks: z.array(inkSet).min(1),
  inkRules: z.strictObject({ lostPerWashUpKg: atLeastNone }),
  waits: z.array(
    z.strictObject({
      press: text,
      class: text.optional(),
      metallic: z.boolean().optional(),
      backUpS: atLeastNone,
      cutS: atLeastNone,
      foldS: atLeastNone,
    }),
  ),
  costs: z.strictObject({
    materialHandlingPct: pct,
    overheadPct: pct,
    marginPct: z.number().min(0).lt(100),
    minimumOrder: atLeastNone,
  }),
  calendars: z.record(text, z.array(calendarRow)),
});

/**
 * Reads a plant definition from the value of its parsed file. Errors: PLANT_DEFINITION with a JSON Pointer, for the
 * shape and for what does not fit together (unknown stock, set-up sheets that the set-up time cannot hold).
 */
export function readPlantDefinition(value: unknown): Result<Plant> {
  const read = plantSchema.safeParse(value);
  if (!read.success) {
    return refuse(...schemaProblems('PLANT_DEFINITION', read.error, value, () => null));
  }
  const {
    $schema: _schema,
    presses,
    platesetters,
    prepress,
    guillotines,
    folders,
    stitchers,
    binders,
    benches,
    ...rest
  } = read.data;
  const devices = [
    ...presses,
    ...platesetters,
    ...prepress,
    ...guillotines,
    ...folders,
    ...stitchers,
    ...binders,
    ...benches,
  ];
  const plant: Plant = { ...rest, devices };
  const problems = checkPlant(plant);
  return hasErrors(problems) ? refuse(...problems) : done(plant, problems);
}

/** JSON Schema of the plant definition file, for editors and for plants that write their own. */
export function plantJsonSchema(): Record<string, unknown> {
  const schema: Record<string, unknown> = z.toJSONSchema(plantSchema, { io: 'input' });
  return { ...schema, title: 'Sidelay plant definition' };
}
