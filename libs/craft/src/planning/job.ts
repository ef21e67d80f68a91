import { error, type Problem } from '#libs/kernel';
import type { CoverOrder, Order } from '../order.js';
import { devicesOf, type Plant, type PressStates, type Stock } from '../plant.js';

/** A part of the job that is printed on one stock with one set of inks. */
export interface Part {
  /** As cells and signatures name it. */
  name: 'body' | 'cover';
  /** Where it stands in the order, as a JSON Pointer. */
  path: '' | '/cover';
  stock: Stock;
  pages: number;
  inksFront: readonly string[];
  inksBack: readonly string[];
}

/** An order with everything looked up that planning needs. */
export interface Job {
  order: Order;
  plant: Plant;
  bleedMm: number;
  /** What each press holds before the job; one that is not in it is clean. */
  held: PressStates;
  body: Part;
  cover: Part | null;
}

/** A job with the part that is being planned. */
export interface PartJob extends Job {
  part: Part;
}

export function partOf(job: Job, part: Part): PartJob {
  return { ...job, part };
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
    hint: 'Planned now: SaddleStitch with or without a cover of its own, SoftCover, leaflets, and flat work of one or two pages, in versions too.',
  });
}

/** Kinds of work that later versions plan; each named by its field. */
function kindProblems(order: Order): Problem[] {
  const problems: Problem[] = [];
  if (order.binding !== 'None' && order.binding !== 'SaddleStitch' && order.binding !== 'SoftCover') {
    problems.push(notYet('/binding', `The binding ${order.binding}`));
  }
  if (order.binding === 'SoftCover' && order.cover === undefined) {
    problems.push(
      wrong('/cover', 'A book with a glued spine needs a cover.', 'Give the cover its stock and inks.'),
    );
  }
  if (order.cover !== undefined && order.binding === 'None') {
    problems.push(wrong('/cover', 'Only bound work has a cover.', 'Leave the cover out, or name a binding.'));
  }
  const isFlat = order.binding === 'None' && order.folds === undefined && order.foldCatalog === undefined;
  if (order.versions !== undefined && order.versions.length > 0 && !isFlat) {
    problems.push(notYet('/versions', 'Bound or folded work in several versions'));
  }
  if (order.binding !== 'None' && (order.folds !== undefined || order.foldCatalog !== undefined)) {
    const path = order.folds === undefined ? '/foldCatalog' : '/folds';
    problems.push(
      wrong(path, 'Only work that is not bound is folded as a leaflet.', 'Name no fold, or bind nothing.'),
    );
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
  if (order.binding !== 'None' && order.pages % 4 !== 0) {
    const below = order.pages - (order.pages % 4);
    const possible = below === 0 ? '4' : `${below} or ${below + 4}`;
    problems.push(
      error('PLAN_IMPOSSIBLE', `Bound work has a multiple of 4 pages, not ${order.pages}.`, {
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

function inkProblems(
  path: '' | '/cover',
  order: Pick<Order, 'inksFront' | 'inksBack'>,
  pages: number,
  plant: Plant,
): Problem[] {
  const known = [...new Set(plant.inks.flatMap((set) => set.names))];
  const problems: Problem[] = [];
  for (const side of ['inksFront', 'inksBack'] as const) {
    order[side].forEach((ink, i) => {
      if (!known.includes(ink)) {
        problems.push(
          wrong(`${path}/${side}/${i}`, `There is no ink ${ink}.`, `Known: ${known.join(', ')}.`),
        );
      } else if (order[side].indexOf(ink) !== i) {
        problems.push(wrong(`${path}/${side}/${i}`, `${ink} is named twice.`, 'Name each ink once a side.'));
      }
    });
  }
  if (order.inksFront.length === 0) {
    problems.push(
      wrong(`${path}/inksFront`, 'No ink is named for the front.', `Known: ${known.join(', ')}.`),
    );
  }
  const twoSided = pages > 1;
  if (twoSided && order.inksBack.length === 0) {
    problems.push(
      wrong(`${path}/inksBack`, 'No ink is named for the back.', 'Work printed on one side has 1 page.'),
    );
  }
  if (!twoSided && order.inksBack.length > 0) {
    problems.push(
      wrong(
        `${path}/inksBack`,
        'Inks are named for a back that has no page.',
        'Printed on both sides: 2 pages.',
      ),
    );
  }
  return problems;
}

/** Versions have names of their own, inks that are printed, and quantities that add up to the order's. */
function versionProblems(order: Order): Problem[] {
  const versions = order.versions ?? [];
  const problems: Problem[] = [];
  versions.forEach(({ name, quantity, changes }, i) => {
    const path = `/versions/${i}`;
    if (versions.findIndex((v) => v.name === name) !== i) {
      problems.push(
        wrong(`${path}/name`, `Two versions are called ${name}.`, 'Give each a name of its own.'),
      );
    }
    if (!Number.isInteger(quantity) || quantity < 1) {
      problems.push(wrong(`${path}/quantity`, `The quantity is ${quantity}.`, 'A whole number from 1.'));
    }
    const printed = [...order.inksFront, ...order.inksBack];
    const strange = changes.findIndex((ink) => !printed.includes(ink));
    if (strange >= 0) {
      const known = `Printed are ${[...new Set(printed)].join(', ')}.`;
      problems.push(wrong(`${path}/changes/${strange}`, `${changes[strange]} is not printed.`, known));
    }
  });
  const sum = versions.reduce((all, { quantity }) => all + quantity, 0);
  if (versions.length > 0 && problems.length === 0 && sum !== order.quantity) {
    const hint = `Order ${sum}, or mend the quantities of the versions.`;
    problems.push(
      wrong('/versions', `The versions are ${sum} together, ordered are ${order.quantity}.`, hint),
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

function stockProblem(path: string, id: string, plant: Plant): Problem {
  const known = plant.stocks.map((s) => s.id).join(', ');
  return wrong(path, `There is no stock ${id}.`, `Known: ${known}.`);
}

/** Checks an order against a plant and looks its stocks up. All findings at once. */
export function readJob(order: Order, plant: Plant, held: PressStates): Job | Problem[] {
  const find = (id: string): Stock | undefined => plant.stocks.find((s) => s.id === id);
  const stock = find(order.stock);
  const coverStock = order.cover === undefined ? undefined : find(order.cover.stock);
  const problems = [
    ...countProblems(order),
    ...kindProblems(order),
    ...inkProblems('', order, order.pages, plant),
    ...(order.cover === undefined ? [] : coverProblems(order.cover, plant)),
    ...versionProblems(order),
    ...sizeProblems(order, plant),
  ];
  if (stock === undefined) problems.push(stockProblem('/stock', order.stock, plant));
  if (order.cover !== undefined && coverStock === undefined) {
    problems.push(stockProblem('/cover/stock', order.cover.stock, plant));
  }
  const bleedMm = order.bleedMm ?? plant.defaults.bleedMm;
  if (bleedMm < 0 || bleedMm > 20) {
    problems.push(wrong('/bleedMm', `A bleed of ${bleedMm} mm is not possible.`, '0 to 20 mm.'));
  }
  if (problems.length > 0 || stock === undefined) return problems;
  const { pages, inksFront, inksBack, cover } = order;
  return {
    order,
    plant,
    bleedMm,
    held,
    body: { name: 'body', path: '', stock, pages, inksFront, inksBack },
    cover:
      cover === undefined || coverStock === undefined
        ? null
        : { name: 'cover', path: '/cover', stock: coverStock, ...coverPrint(cover) },
  };
}

function coverPrint({
  pages,
  inksFront,
  inksBack,
}: CoverOrder): Pick<Part, 'pages' | 'inksFront' | 'inksBack'> {
  return { pages, inksFront, inksBack };
}

/** A cover has four pages; printed on one side only these are its first and its last. */
function coverProblems(cover: CoverOrder, plant: Plant): Problem[] {
  const problems = inkProblems('/cover', cover, cover.inksBack.length > 0 ? 4 : 1, plant);
  if (cover.pages !== 4) {
    problems.push(
      error('PLAN_IMPOSSIBLE', `A cover has 4 pages, not ${String(cover.pages)}.`, {
        path: '/cover/pages',
        hint: 'Flaps and double covers are not planned; pages that are left blank count.',
      }),
    );
  }
  return problems;
}
