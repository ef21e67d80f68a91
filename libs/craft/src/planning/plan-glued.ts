import { type Problem, piecesToFeed, roundTo } from '#libs/kernel';
import { binderRefusal, blockThicknessMm, gluedBinding, gluedSpineMm } from '../binding/glued.js';
import { gatheredSections, gatheredSizes } from '../imposition/sections.js';
import type { PlanStep } from '../plan.js';
import {
  type BenchDefinition,
  type BinderDefinition,
  devicesOf,
  type GuillotineDefinition,
} from '../plant.js';
import { addSections, divisions, type SectionWay, sectionWays } from './book-sections.js';
import type { Found } from './candidate.js';
import { addCover, type CoverPlan, planCover } from './cover-work.js';
import { guillotineFor } from './cut-step.js';
import { addStep, caution, type Draft, newDraft } from './draft.js';
import { type Job, type PartJob, partOf, type Reason } from './job.js';
import { addPrepress, settlePrepress } from './prepress.js';
import type { BookWant } from './section-group.js';
import { draftPrice } from './totals.js';

const [gatherId, bindId, trimId] = ['gather', 'bind', 'trim'];

/** Books on the guillotine are trimmed in lifts no higher than this: they slip (common practice, no source). */
const MAX_BOOK_LIFT_MM = 60;

/** Who makes the book, and how many copies each of them takes in. */
interface GluedBook extends BookWant {
  bench: BenchDefinition;
  binder: BinderDefinition;
  guillotine: GuillotineDefinition;
  spineMm: number;
  booksToTrim: number;
  blocksToBind: number;
}

function bookOf(job: PartJob, coverUm: number, sizes: readonly number[]): GluedBook | Reason {
  const { order, plant } = job;
  const { caliperUm } = job.part.stock;
  const bench = devicesOf(plant, 'bench').find((b) => b.does.includes('Gathering'));
  if (bench === undefined) return { path: '/binding', text: 'no bench of the plant gathers sections' };
  const guillotine = guillotineFor(plant, Math.max(order.trimWidthMm, order.trimHeightMm));
  if (guillotine === null) return { path: '/trimWidthMm', text: 'no guillotine trims books of that size' };
  const reasons: string[] = [];
  for (const binder of devicesOf(plant, 'binder')) {
    const refusal = binderRefusal(binder, order.pages, caliperUm);
    if (refusal !== null) {
      reasons.push(refusal);
      continue;
    }
    const feed = (out: number, overs: { setupSheets: number; runningPct: number }): number =>
      piecesToFeed(out, overs.runningPct, overs.setupSheets);
    const booksToTrim = feed(order.quantity, guillotine.overs);
    const blocksToBind = feed(booksToTrim, binder.overs);
    return {
      bench,
      binder,
      guillotine,
      spineMm: roundTo(gluedSpineMm(order.pages, caliperUm, coverUm), 3),
      booksToTrim,
      blocksToBind,
      sections: gatheredSections(sizes).map((s, i) => ({ name: `body-${i + 1}`, pages: s.pages })),
      sets: feed(blocksToBind, bench.overs),
      trims: { ...binder.trim, spineMm: binder.millMm },
      lipsMm: [0],
      shiftMm: () => 0,
    };
  }
  return { path: '/pages', text: reasons.join('; ') || 'the plant has no binder' };
}

function addGathering(draft: Draft, book: GluedBook, folds: readonly PlanStep[]): PlanStep {
  const { bench, sets, blocksToBind, sections } = book;
  draft.overs.push({ step: gatherId, ...bench.overs });
  return addStep(draft, {
    id: gatherId,
    types: ['Gathering'],
    device: bench.id,
    setupS: 0,
    // The rate of a bench counts the sections that are laid down one on the other.
    runS: Math.round(((sets * sections.length) / bench.perHour) * 3600),
    inAmount: sets,
    inUnit: 'signatures',
    outAmount: blocksToBind,
    unit: 'blocks',
    inputs: folds.map(({ id, unit }) => ({ from: id, amount: sets, unit })),
  });
}

function addBinding(draft: Draft, book: GluedBook, blocks: PlanStep, cover: PlanStep): PlanStep {
  const { binder, blocksToBind, booksToTrim } = book;
  draft.overs.push({ step: bindId, ...binder.overs });
  return addStep(draft, {
    id: bindId,
    types: ['SpinePreparation', 'CoverApplication'],
    device: binder.id,
    setupS: binder.setupS,
    runS: Math.round(((blocksToBind - binder.overs.setupSheets) / binder.perHour) * 3600),
    waitAfterS: binder.coolBeforeTrimS,
    inAmount: blocksToBind,
    inUnit: 'blocks',
    outAmount: booksToTrim,
    unit: 'books',
    inputs: [blocks, cover].map(({ id, unit }) => ({ from: id, amount: blocksToBind, unit })),
  });
}

/** Three sides of each lift of books: three cuts with a turn before each. */
function addTrimming(draft: Draft, job: PartJob, book: GluedBook, books: PlanStep): void {
  const { guillotine, booksToTrim, spineMm } = book;
  const high = Math.max(1, Math.floor(Math.min(MAX_BOOK_LIFT_MM, guillotine.maxClampMm) / spineMm));
  const lifts = Math.ceil(booksToTrim / high);
  draft.overs.push({ step: trimId, ...guillotine.overs });
  addStep(draft, {
    id: trimId,
    types: ['Trimming'],
    device: guillotine.id,
    setupS: guillotine.setupS,
    runS: Math.round(lifts * (guillotine.perLiftS + 3 * (guillotine.perCutS + guillotine.perTurnS))),
    inAmount: booksToTrim,
    inUnit: 'books',
    outAmount: job.order.quantity,
    unit: 'copies',
    inputs: [{ from: books.id, amount: booksToTrim, unit: books.unit }],
  });
}

function complete(
  job: PartJob,
  book: GluedBook,
  way: SectionWay,
  cover: CoverPlan,
): Draft | Problem | string {
  const draft = newDraft(job.held);
  addPrepress(draft, job);
  const folds = addSections(draft, job, book, way);
  if (!(folds instanceof Map)) return folds;
  const coverStep = addCover(draft, cover);
  if (typeof coverStep === 'string' || 'severity' in coverStep) return coverStep;
  const inOrder = book.sections.flatMap((s) => folds.get(s.name) ?? []);
  const blocks = addGathering(draft, book, inOrder);
  addTrimming(draft, job, book, addBinding(draft, book, blocks, coverStep));
  settlePrepress(draft, job);
  addBookCautions(draft, job, book);
  return draft;
}

function addBookCautions(draft: Draft, job: PartJob, book: GluedBook): void {
  const { binder, spineMm } = book;
  const block = blockThicknessMm(job.order.pages, job.part.stock.caliperUm);
  caution(
    draft,
    `The spine of ${spineMm} mm is worked out (block ${block.toFixed(2)} mm and the cover) without glue: a signed blank dummy decides before the cover is made.`,
  );
  caution(
    draft,
    `Switch the glue of ${binder.name} on ${Math.round(binder.warmUpS / 60)} min before the first book; books cool ${Math.round(binder.coolBeforeTrimS / 60)} min before they are trimmed.`,
  );
}

function coverFor(job: Job, book: GluedBook): CoverPlan | null | Reason[] | Problem {
  const { trimWidthMm, trimHeightMm } = job.order;
  const { headMm, footMm, faceMm } = book.binder.trim;
  const size = { trimWidthMm, trimHeightMm, spineMm: book.spineMm, trimMm: { headMm, footMm, faceMm } };
  return planCover(job, { size, needed: book.blocksToBind, next: bindId });
}

/** All complete ways to make a book with a glued spine and a cover. */
export function gluedWays(whole: Job): Found | Problem {
  const job = partOf(whole, whole.body);
  const found: Found = { candidates: [], reasons: [] };
  if (whole.cover === null) return found;
  for (const sizes of divisions(job.order.pages, gatheredSizes)) {
    const book = bookOf(job, whole.cover.stock.caliperUm, sizes);
    if (!('sections' in book)) {
      found.reasons.push(book);
      continue;
    }
    const cover = coverFor(job, book);
    if (Array.isArray(cover)) return { candidates: [], reasons: cover };
    if (cover === null) continue;
    if ('severity' in cover) return cover;
    const sections = sectionWays(job, book);
    if ('severity' in sections) return sections;
    found.reasons.push(...sections.reasons);
    for (const way of sections.ways) {
      const draft = complete(job, book, way, cover);
      if (typeof draft === 'string') found.reasons.push({ path: '/stock', text: draft });
      else if ('severity' in draft) return draft;
      else {
        const inOrder = book.sections.map((s) => ({ name: s.name, firstPage: s.pages[0] ?? 0 }));
        const { trimWidthMm } = job.order;
        found.candidates.push({
          what: `${way.what}; cover on ${cover.way.what}`,
          draft,
          binding: gluedBinding(book.binder, { trimWidthMm, spineMm: book.spineMm, sections: inOrder }),
          price: draftPrice(job, draft),
        });
      }
    }
  }
  return found;
}
