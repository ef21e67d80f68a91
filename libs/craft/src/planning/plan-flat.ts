import type { Problem } from '#libs/kernel';
import { flatForm } from '../layouts/piece-form.js';
import type { PlanBinding } from '../plan.js';
import type { Found } from './candidate.js';
import { caution, type Draft, newDraft } from './draft.js';
import { type Job, type PartJob, partOf } from './job.js';
import { addPieces, type PieceWay, type PieceWork, pieceWays } from './piece-work.js';
import { addPrepress, settlePrepress } from './prepress.js';
import { draftPrice } from './totals.js';

const signature = 'flat';

const binding: PlanBinding = {
  kind: 'None',
  signatureOrder: [signature],
  trim: { headMm: 0, footMm: 0, faceMm: 0 },
};

function complete(job: PartJob, way: PieceWay, work: PieceWork): Draft | Problem | string {
  const draft = newDraft(job.held);
  addPrepress(draft, job);
  const made = addPieces(draft, job, way, work);
  if (typeof made === 'string' || 'severity' in made) return made;
  const pages = Array.from({ length: job.part.pages }, (_, i) => i + 1);
  draft.signatures.push({ name: signature, part: job.part.name, pages, foldCatalog: 'F2-1', creepMm: 0 });
  settlePrepress(draft, job);
  const [sheet] = draft.sheets;
  if (sheet !== undefined && sheet.makereadySheets > sheet.goodSheets) {
    caution(
      draft,
      `Setting up takes ${sheet.makereadySheets} sheets for ${sheet.goodSheets} good ones: run it together with another job on this stock if one is waiting.`,
    );
  }
  return draft;
}

/** All complete ways to make flat work of one or two pages: presses, sheet orientations, pieces upright or turned. */
export function flatWays(whole: Job): Found | Problem {
  const job = partOf(whole, whole.body);
  const { trimWidthMm, trimHeightMm, quantity } = job.order;
  const work: PieceWork = {
    form: flatForm(trimWidthMm, trimHeightMm, job.part.pages),
    signature,
    needed: quantity,
    unit: 'copies',
    next: null,
    grainFirst: false,
  };
  const found = pieceWays(job, work);
  if ('severity' in found) return found;
  const { ways, reasons } = found;
  const candidates: Found['candidates'] = [];
  for (const way of ways) {
    const draft = complete(job, way, work);
    if (typeof draft === 'string') reasons.push({ path: '/trimWidthMm', text: draft });
    else if ('severity' in draft) return draft;
    else candidates.push({ what: way.what, draft, binding, price: draftPrice(job, draft) });
  }
  return { candidates, reasons };
}
