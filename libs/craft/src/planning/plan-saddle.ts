import { type Problem, piecesToFeed } from '#libs/kernel';
import { saddleBinding, stitcherRefusal } from '../binding/saddle.js';
import { creepShiftMm, nestedSections, sectionSizes } from '../imposition/sections.js';
import type { PlanStep } from '../plan.js';
import { devicesOf, type StitcherDefinition } from '../plant.js';
import { addSections, divisions, type SectionWay, sectionWays } from './book-sections.js';
import type { Found } from './candidate.js';
import { addCover, type CoverPlan, planCover } from './cover-work.js';
import { addStep, type Draft, newDraft } from './draft.js';
import { type Job, type PartJob, partOf, type Reason } from './job.js';
import { addPrepress, settlePrepress } from './prepress.js';
import type { BookWant } from './section-group.js';
import { draftPrice } from './totals.js';

const stitchId = 'stitch';

/** A book as one stitcher takes it in. */
interface SaddleBook extends BookWant {
  stitcher: StitcherDefinition;
}

/** Sets that a stitcher spends on set-up: a cover counts as a section. */
function setupSets({ overs }: StitcherDefinition, sections: number, cover: boolean): number {
  return overs.setupSheets + overs.setupPerSection * (sections + (cover ? 1 : 0));
}

function bookOf(job: PartJob, sizes: readonly number[]): SaddleBook | Reason {
  const { order, plant, cover } = job;
  const { caliperUm } = job.part.stock;
  const sections = nestedSections(sizes).map((s, i) => ({ name: `body-${i + 1}`, pages: s.pages }));
  const reasons: string[] = [];
  for (const stitcher of devicesOf(plant, 'stitcher')) {
    const refusal = stitcherRefusal(stitcher, {
      trimWidthMm: order.trimWidthMm,
      trimHeightMm: order.trimHeightMm,
      pages: order.pages,
      caliperUm,
      sections: sections.length,
      coverCaliperUm: cover === null ? null : cover.stock.caliperUm,
    });
    if (refusal === null) {
      const { trim, lipMm, opening, overs } = stitcher;
      const setup = setupSets(stitcher, sections.length, cover !== null);
      return {
        stitcher,
        sections,
        sets: piecesToFeed(order.quantity, overs.runningPct, setup),
        trims: { ...trim, spineMm: 0 },
        lipsMm: [...(opening.includes('lip') ? [lipMm] : []), ...(opening.includes('suckers') ? [0] : [])],
        shiftMm: (page) => creepShiftMm(page, order.pages, caliperUm),
      };
    }
    reasons.push(refusal);
  }
  const tooThick = reasons.some((r) => r.includes('pages') || r.includes('sections'));
  return {
    path: tooThick ? '/pages' : '/trimWidthMm',
    text: reasons.join('; ') || 'the plant has no stitcher',
  };
}

function addStitching(
  draft: Draft,
  job: Job,
  book: SaddleBook,
  folds: ReadonlyMap<string, PlanStep>,
  cover: PlanStep | null,
): void {
  const { stitcher, sections, sets } = book;
  const { overs, shortRun, perHour } = stitcher;
  const setup = setupSets(stitcher, sections.length, cover !== null);
  const speed = perHour * (job.order.quantity < shortRun.belowCopies ? shortRun.speedFactor : 1);
  const from = sections.flatMap((s) => folds.get(s.name) ?? []);
  draft.overs.push({ step: stitchId, setupSheets: setup, runningPct: overs.runningPct });
  addStep(draft, {
    id: stitchId,
    types: ['Collecting', 'Stitching', 'Trimming'],
    device: stitcher.id,
    setupS:
      stitcher.setupS +
      stitcher.setupPerSectionS * sections.length +
      (cover === null ? 0 : stitcher.coverSetupS),
    runS: Math.round(((sets - setup) / speed) * 3600),
    inAmount: sets,
    inUnit: 'copies',
    outAmount: job.order.quantity,
    unit: 'copies',
    inputs: [...from, ...(cover === null ? [] : [cover])].map(({ id, unit }) => ({
      from: id,
      amount: sets,
      unit,
    })),
  });
}

function complete(
  job: PartJob,
  book: SaddleBook,
  way: SectionWay,
  cover: CoverPlan | null,
): Draft | Problem | string {
  const draft = newDraft(job.held);
  addPrepress(draft, job);
  const folds = addSections(draft, job, book, way);
  if (!(folds instanceof Map)) return folds;
  const coverStep = cover === null ? null : addCover(draft, cover);
  if (typeof coverStep === 'string' || (coverStep !== null && 'severity' in coverStep)) return coverStep;
  addStitching(draft, job, book, folds, coverStep);
  settlePrepress(draft, job);
  return draft;
}

function coverFor(job: Job, book: SaddleBook): CoverPlan | null | Reason[] | Problem {
  const { trimWidthMm, trimHeightMm } = job.order;
  const { headMm, footMm, faceMm } = book.stitcher.trim;
  const size = { trimWidthMm, trimHeightMm, spineMm: 0, trimMm: { headMm, footMm, faceMm } };
  return planCover(job, { size, needed: book.sets, next: stitchId });
}

/** All complete ways to make a saddle-stitched job: presses, section sizes, layouts with and across the grain. */
export function saddleWays(whole: Job): Found | Problem {
  const job = partOf(whole, whole.body);
  const found: Found = { candidates: [], reasons: [] };
  for (const sizes of divisions(job.order.pages, sectionSizes)) {
    const book = bookOf(job, sizes);
    if (!('sections' in book)) {
      found.reasons.push(book);
      continue;
    }
    const cover = coverFor(job, book);
    if (Array.isArray(cover)) return { candidates: [], reasons: cover };
    if (cover !== null && 'severity' in cover) return cover;
    const sections = sectionWays(job, book);
    if ('severity' in sections) return sections;
    found.reasons.push(...sections.reasons);
    for (const way of sections.ways) {
      const draft = complete(job, book, way, cover);
      if (typeof draft === 'string') found.reasons.push({ path: '/stock', text: draft });
      else if ('severity' in draft) return draft;
      else {
        const outsideIn = book.sections.map((s) => ({ name: s.name, firstPage: s.pages[0] ?? 0 }));
        found.candidates.push({
          what: cover === null ? way.what : `${way.what}; cover on ${cover.way.what}`,
          draft,
          binding: saddleBinding(book.stitcher, job.order.trimHeightMm, outsideIn, cover !== null),
          price: draftPrice(job, draft),
        });
      }
    }
  }
  return found;
}
