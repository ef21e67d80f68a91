import { error, type Problem } from '#libs/kernel';
import type { Order } from '../order.js';
import { devicesOf, type Plant, type PressState, type Stock } from '../plant.js';

/** An order with everything looked up that planning needs. */
export interface Job {
  order: Order;
  plant: Plant;
  stock: Stock;
  bleedMm: number;
  previousOnPress: PressState | null;
}

/** Why something cannot be, and which field of the order it hangs on. */
export interface Reason {
  path: string;
  text: string;
  /** A later version could make it. */
  notYet?: boolean;
}

function notYet(path: string, what: string): Problem {
  return error('PLAN_NOT_YET', `${what} cannot be planned by this version.`, {
    path,
    hint: 'Planned now: saddle-stitched work without a cover of its own, and flat work of one or two pages.',
  });
}

/** Kinds of work that later versions plan; each named by its field. */
function kindProblems(order: Order): Problem[] {
  const problems: Problem[] = [];
  if (order.binding !== 'None' && order.binding !== 'SaddleStitch') {
    problems.push(notYet('/binding', `The binding ${order.binding}`));
  }
  if (order.cover !== undefined) problems.push(notYet('/cover', 'A cover of its own'));
  if (order.versions !== undefined && order.versions.length > 0) {
    problems.push(notYet('/versions', 'Work in several versions'));
  }
  if (order.folds !== undefined) problems.push(notYet('/folds', 'A leaflet with its own folds'));
  if (order.foldCatalog !== undefined && order.foldCatalog !== 'F2-1') {
    problems.push(notYet('/foldCatalog', `A leaflet folded as ${order.foldCatalog}`));
  }
  return problems;
}

const wrong = (path: string, message: string, hint: string): Problem =>
  error('ORDER_FIELD', message, { path, hint });

function countProblems(order: Order): Problem[] {
  const problems: Problem[] = [];
  const whole = (path: string, value: number, what: string): void => {
    if (!Number.isInteger(value) || value < 1) {
      problems.push(wrong(path, `${what} is ${value}.`, 'A whole number from 1.'));
    }
  };
  whole('/quantity', order.quantity, 'The quantity');
  whole('/pages', order.pages, 'The number of pages');
  for (const side of ['trimWidthMm', 'trimHeightMm'] as const) {
    if (!(order[side] > 0))
      problems.push(wrong(`/${side}`, `The size is ${order[side]} mm.`, 'More than 0 mm.'));
  }
  if (problems.length > 0) return problems;
  if (order.binding === 'SaddleStitch' && order.pages % 4 !== 0) {
    const below = order.pages - (order.pages % 4);
    const possible = below === 0 ? '4' : `${below} or ${below + 4}`;
    problems.push(
      error('PLAN_IMPOSSIBLE', `Saddle-stitched work has a multiple of 4 pages, not ${order.pages}.`, {
        path: '/pages',
        hint: `${possible} pages are possible; blank pages count.`,
      }),
    );
  }
  if (
    order.binding === 'None' &&
    order.pages > 2 &&
    order.foldCatalog === undefined &&
    order.folds === undefined
  ) {
    problems.push(
      wrong(
        '/pages',
        `Flat work has 1 or 2 pages, not ${order.pages}.`,
        'Name a binding, or a fold for a leaflet.',
      ),
    );
  }
  return problems;
}

function inkProblems(order: Order, plant: Plant): Problem[] {
  const known = [...new Set(plant.inks.flatMap((set) => set.names))];
  const problems: Problem[] = [];
  for (const side of ['inksFront', 'inksBack'] as const) {
    order[side].forEach((ink, i) => {
      if (!known.includes(ink)) {
        problems.push(wrong(`/${side}/${i}`, `There is no ink ${ink}.`, `Known: ${known.join(', ')}.`));
      } else if (order[side].indexOf(ink) !== i) {
        problems.push(wrong(`/${side}/${i}`, `${ink} is named twice.`, 'Name each ink once a side.'));
      }
    });
  }
  if (order.inksFront.length === 0) {
    problems.push(wrong('/inksFront', 'No ink is named for the front.', `Known: ${known.join(', ')}.`));
  }
  const twoSided = order.pages > 1;
  if (twoSided && order.inksBack.length === 0) {
    problems.push(
      wrong('/inksBack', 'No ink is named for the back.', 'Work printed on one side has 1 page.'),
    );
  }
  if (!twoSided && order.inksBack.length > 0) {
    problems.push(
      wrong('/inksBack', 'Inks are named for a back that has no page.', 'Printed on both sides: 2 pages.'),
    );
  }
  return problems;
}

/**
 * Flat pieces are cut apart, and nothing narrower than a guillotine's least gauge can be set. Without this bound, the
 * number of pieces on a sheet and with it the search for the best cuts would have none either.
 */
function sizeProblems(order: Order, plant: Plant): Problem[] {
  const least = Math.min(...devicesOf(plant, 'guillotine').map(({ minGaugeMm }) => minGaugeMm));
  if (order.binding !== 'None' || !Number.isFinite(least)) return [];
  return (['trimWidthMm', 'trimHeightMm'] as const)
    .filter((side) => order[side] > 0 && order[side] < least)
    .map((side) =>
      error('PLAN_IMPOSSIBLE', `No guillotine here can cut a piece of ${order[side]} mm.`, {
        path: `/${side}`,
        hint: `${least} mm is the least that its gauge can be set to; smaller pieces are punched or cut elsewhere.`,
      }),
    );
}

/** Checks an order against a plant and looks its stock up. All findings at once. */
export function readJob(order: Order, plant: Plant, previousOnPress: PressState | null): Job | Problem[] {
  const stock = plant.stocks.find((s) => s.id === order.stock);
  const problems = [
    ...countProblems(order),
    ...kindProblems(order),
    ...inkProblems(order, plant),
    ...sizeProblems(order, plant),
  ];
  if (stock === undefined) {
    const known = plant.stocks.map((s) => s.id).join(', ');
    problems.push(wrong('/stock', `There is no stock ${order.stock}.`, `Known: ${known}.`));
  }
  const bleedMm = order.bleedMm ?? plant.defaults.bleedMm;
  if (bleedMm < 0 || bleedMm > 20) {
    problems.push(wrong('/bleedMm', `A bleed of ${bleedMm} mm is not possible.`, '0 to 20 mm.'));
  }
  if (problems.length > 0 || stock === undefined) return problems;
  return { order, plant, stock, bleedMm, previousOnPress };
}
