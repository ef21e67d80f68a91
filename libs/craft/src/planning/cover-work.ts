import type { Problem } from '#libs/kernel';
import { type CoverSize, coverForm } from '../layouts/piece-form.js';
import type { PlanStep } from '../plan.js';
import { caution, type Draft } from './draft.js';
import { type Job, type PartJob, partOf, type Reason } from './job.js';
import { addPieces, type PieceWay, type PieceWork, pieceWays } from './piece-work.js';

/** How the cover of a book is made: printed, cut to its open size, fed flat to the binding machine. */
export interface CoverPlan {
  job: PartJob;
  work: PieceWork;
  way: PieceWay;
}

export interface CoverWant {
  size: CoverSize;
  /** Covers that binding takes in. */
  needed: number;
  /** Id of the binding step. */
  next: string;
}

const signature = 'cover';

/**
 * The best way to make the cover of a job: with the grain along the spine before across it, then the cheapest. Null for
 * a job without one; reasons where it cannot be made.
 */
export function planCover(job: Job, want: CoverWant): CoverPlan | null | Reason[] | Problem {
  if (job.cover === null) return null;
  const part = partOf(job, job.cover);
  const work: PieceWork = {
    form: coverForm(want.size),
    signature,
    needed: want.needed,
    unit: 'blocks',
    next: want.next,
    grainFirst: true,
  };
  const found = pieceWays(part, work);
  if ('severity' in found) return found;
  const [way] = found.ways;
  return way === undefined ? found.reasons : { job: part, work, way };
}

/** Adds the cover's sheet and its cutting; returns the cutting step, a problem of the plant, or why it cannot be. */
export function addCover(draft: Draft, cover: CoverPlan): PlanStep | Problem | string {
  const step = addPieces(draft, cover.job, cover.way, cover.work);
  if (typeof step === 'string' || 'severity' in step) return step;
  const { inksBack } = cover.job.part;
  const pages = inksBack.length > 0 ? [1, 2, 3, 4] : [1, 4];
  draft.signatures.push({ name: signature, part: 'cover', pages, foldCatalog: 'F4-1', creepMm: 0 });
  if (cover.way.acrossGrain) {
    caution(
      draft,
      'The spine of the cover lies across the grain: it may crack. Score it, and look at a blank first.',
    );
  }
  return step;
}
