import { done, error, type Problem, type Result, refuse, roundTo, warning } from '#libs/kernel';
import { leafletCodes } from '../imposition/leaflet.js';
import type { Order } from '../order.js';
import type { Plan, PlanAlternative, PlanProductPart } from '../plan.js';
import type { Plant, PressState, PressStates } from '../plant.js';
import { bestFirst, type Candidate, type Found } from './candidate.js';
import { addCautions } from './cautions.js';
import { type Job, type Part, type Reason, readJob } from './job.js';
import { flatWays } from './plan-flat.js';
import { gluedWays } from './plan-glued.js';
import { leafletWays } from './plan-leaflet.js';
import { saddleWays } from './plan-saddle.js';
import { versionWays } from './plan-versions.js';
import { draftPrice, inkGrams, inkOfSheet, paperMassKg, platesOf, sheetsOf } from './totals.js';

export interface PlanContext {
  /** What the presses hold; left out: every press is clean. */
  held?: PressStates;
}

/** A plan and what its presses hold afterwards, for the next job on them. */
export interface PlannedJob {
  plan: Plan;
  /** Of the presses that the job is printed on. */
  pressStates: PressState[];
}

/**
 * Plans an order on a plant: the whole plan document (plan.ts). All ways that the plant's presses, folders and
 * the stock's sheet allow are worked out completely; with the grain goes before across it, then the cheapest wins, and
 * the others are listed as alternatives. Errors: ORDER_FIELD and PLAN_IMPOSSIBLE with a JSON Pointer into the order and
 * what would be possible, PLAN_NOT_YET for kinds of work of later versions, PLANT_DEFINITION for figures of the plant
 * that contradict each other.
 */
export function planJob(order: Order, plant: Plant, context: PlanContext = {}): Result<Plan> {
  const planned = planOnPress(order, plant, context);
  return planned.ok ? done(planned.value.plan, planned.problems) : planned;
}

/** Plans orders that follow each other: each finds in a press what the one before left there. */
export function planSequence(orders: readonly Order[], plant: Plant): Result<Plan>[] {
  const held = new Map<string, PressState>();
  return orders.map((order) => {
    const planned = planOnPress(order, plant, { held });
    if (!planned.ok) return planned;
    for (const state of planned.value.pressStates) held.set(state.press, state);
    return done(planned.value.plan, planned.problems);
  });
}

/** As planJob, with what the presses hold afterwards. */
export function planOnPress(order: Order, plant: Plant, context: PlanContext = {}): Result<PlannedJob> {
  const job = readJob(order, plant, context.held ?? new Map());
  if (Array.isArray(job)) return refuse(...job);
  const found = waysToMake(job);
  if ('severity' in found) return refuse(found);
  const [best, ...others] = bestFirst(found.candidates);
  if (best === undefined) return refuse(...impossible(found.reasons));
  const perRun = priceRuns(order, plant, context);
  if (!perRun.ok) return perRun;
  const plan = planOf(job, best, alternatives(best, others, found), perRun.value);
  const used = new Set(plan.sheets.map((sheet) => sheet.press));
  const pressStates = [...best.draft.pressStates.values()].filter(({ press }) => used.has(press));
  return done({ plan, pressStates }, plan.problems);
}

/** What is tried depends on the binding. */
function waysToMake(job: Job): Found | Problem {
  if (job.order.binding === 'SaddleStitch') return saddleWays(job);
  if (job.order.binding === 'SoftCover') return gluedWays(job);
  const { foldCatalog, folds } = job.order;
  const isFolded = folds !== undefined || (foldCatalog !== undefined && foldCatalog !== 'F2-1');
  if (isFolded) return leafletWays(job);
  return (job.order.versions ?? []).length > 0 ? versionWays(job) : flatWays(job);
}

function impossible(reasons: readonly Reason[]): Problem[] {
  const seen = new Set<string>();
  return reasons.flatMap(({ path, text, notYet }) => {
    if (seen.has(text)) return [];
    seen.add(text);
    const code = notYet === true ? 'PLAN_NOT_YET' : 'PLAN_IMPOSSIBLE';
    return [error(code, `${text}.`, { path, hint: hintFor(path) })];
  });
}

function hintFor(path: string): string {
  if (path.startsWith('/inks')) return 'Name inks that one press has, as many a side as it has units.';
  if (path === '/stock') return 'Another stock, sheet size or grammage may do.';
  if (path === '/foldCatalog' || path === '/folds') {
    return `Codes that are planned: ${leafletCodes.join(', ')}; any other fold is given as a list in "folds".`;
  }
  if (path === '/pages') return 'Fewer pages or thinner paper may do.';
  return 'A smaller format or a larger sheet may do.';
}

function alternatives(best: Candidate, others: readonly Candidate[], found: Found): PlanAlternative[] {
  const ways = others
    .filter((c, i) => others.findIndex((o) => o.what === c.what) === i && c.what !== best.what)
    .slice(0, 8)
    .map((c) => ({
      what: c.what,
      amount: c.price.amount,
      why: whyNot(best, c),
    }));
  const closed = [...new Set(found.reasons.map(({ text }) => text))]
    .slice(0, 8)
    .map((why) => ({ what: 'not possible', amount: null, why }));
  return [...ways, ...closed];
}

function whyNot(best: Candidate, other: Candidate): string {
  const more = roundTo(other.price.amount - best.price.amount, 2);
  const money = more < 0 ? `saves ${-more}` : more === 0 ? 'costs the same' : `costs ${more} more`;
  if (other.draft.acrossGrain && !best.draft.acrossGrain)
    return `the spine would lie across the grain; ${money}`;
  const sections = other.draft.signatures.length;
  if (sections > best.draft.signatures.length) return `${sections} sections to fold and collect; ${money}`;
  return more < 0 ? `${money}, but takes more sheets` : money;
}

/** The same order for another quantity; its versions keep their shares, whole copies of which the first ones get the rest. */
function ofQuantity(order: Order, quantity: number): Order {
  const { versions } = order;
  if (versions === undefined || versions.length === 0) return { ...order, quantity };
  const shares = versions.map((v) => Math.floor((v.quantity * quantity) / order.quantity));
  const rest = quantity - shares.reduce((a, b) => a + b, 0);
  const scaled = versions.map((v, i) => ({ ...v, quantity: (shares[i] ?? 0) + (i < rest ? 1 : 0) }));
  return { ...order, quantity, versions: scaled.filter((v) => v.quantity > 0) };
}

function priceRuns(
  order: Order,
  plant: Plant,
  context: PlanContext,
): Result<{ quantity: number; amount: number }[]> {
  const rows: { quantity: number; amount: number }[] = [];
  for (const quantity of order.runs ?? []) {
    const { runs: _runs, deliveries: _deliveries, ...rest } = order;
    const planned = planOnPress(ofQuantity(rest, quantity), plant, context);
    if (!planned.ok) return planned;
    rows.push({ quantity, amount: planned.value.plan.totals.cost.amount });
  }
  return done(rows);
}

function planOf(
  job: Job,
  best: Candidate,
  others: PlanAlternative[],
  perRun: { quantity: number; amount: number }[],
): Plan {
  const { order, plant } = job;
  const { draft } = best;
  addCautions(draft, job);
  const price = draftPrice(job, draft);
  const problems = draft.acrossGrain
    ? [
        warning('PLAN_CAUTION', 'A spine lies across the grain; no way with the grain was found.', {
          path: '/stock',
        }),
      ]
    : [];
  return {
    jobId: order.jobId,
    name: order.name,
    quantity: order.quantity,
    product: {
      ...productPart(job, job.body),
      ...(job.cover === null ? {} : { cover: productPart(job, job.cover) }),
    },
    signatures: draft.signatures,
    sheets: draft.sheets.map((sheet) => ({ ...sheet, inkG: inkOfSheet(job, sheet) })),
    steps: draft.steps,
    plateList: draft.plateList,
    changeovers: draft.changeovers,
    blocks: draft.blocks,
    cuts: draft.cuts,
    lifts: draft.lifts,
    folding: draft.folding,
    binding: best.binding,
    overs: { convention: 'onInput', lines: draft.overs },
    totals: {
      sheetsToPress: sheetsOf(draft),
      plates: platesOf(draft),
      paperKg: roundTo(paperMassKg(job, draft), 2),
      inkG: inkGrams(job, draft),
      setupS: draft.steps.reduce((sum, s) => sum + s.setupS, 0),
      runS: draft.steps.reduce((sum, s) => sum + s.runS, 0),
      cost: { amount: price.amount, currency: plant.currency, lines: price.lines },
      ...(perRun.length > 0 ? { perRun } : {}),
    },
    alternatives: others,
    cautions: draft.cautions,
    problems,
  };
}

function productPart({ order }: Job, part: Part): PlanProductPart {
  const { stock } = part;
  return {
    trimWidthMm: order.trimWidthMm,
    trimHeightMm: order.trimHeightMm,
    pages: part.pages,
    binding: order.binding,
    inksFront: [...part.inksFront],
    inksBack: [...part.inksBack],
    stock: stock.id,
    stockGsm: stock.gsm,
    stockCaliperUm: stock.caliperUm,
  };
}
