import { type Problem, piecesToFeed } from '#libs/kernel';
import { type FolderSetting, setFolder } from '../folding/folder-choice.js';
import { leafletMoves } from '../folding/instructions.js';
import { type LeafletScheme, leafletByCode, leafletByFolds } from '../imposition/leaflet.js';
import { oppositeRotation } from '../layouts/geometry.js';
import { leafletForm } from '../layouts/piece-form.js';
import type { PlanBinding, PlanStep } from '../plan.js';
import { devicesOf } from '../plant.js';
import type { Found } from './candidate.js';
import { addStep, caution, type Draft, newDraft } from './draft.js';
import { type Job, type PartJob, partOf, type Reason } from './job.js';
import { addPieces, type PieceWay, type PieceWork, pieceWays } from './piece-work.js';
import { addPrepress, settlePrepress } from './prepress.js';
import { draftPrice } from './totals.js';

const signature = 'leaflet';
const foldId = 'fold-1';

/** Up to this grammage a fold across the grain is a matter of price, above it breaks (common practice, no source). */
const GRAIN_FIRST_ABOVE_GSM = 150;

const binding: PlanBinding = {
  kind: 'None',
  signatureOrder: [signature],
  trim: { headMm: 0, footMm: 0, faceMm: 0 },
};

function schemeOf(job: PartJob): LeafletScheme | Reason {
  const { folds, foldCatalog = '', trimWidthMm, trimHeightMm, pages } = job.order;
  const scheme =
    folds === undefined
      ? leafletByCode(foldCatalog, trimWidthMm, trimHeightMm)
      : leafletByFolds(folds, trimWidthMm, trimHeightMm);
  if (scheme === null) {
    return folds === undefined
      ? { path: '/foldCatalog', text: `the fold ${foldCatalog} is not planned by its code` }
      : { path: '/folds', text: 'a fold of the list lays more paper over than there is to lie on' };
  }
  const possible = 2 * scheme.columnsMm.length * scheme.rowsMm.length;
  if (pages !== possible) {
    return { path: '/pages', text: `a leaflet folded so has ${possible} pages, not ${pages}` };
  }
  return scheme;
}

/** Every folder that can fold the leaflet, the cheapest for the run first; or why none can. */
function foldersFor(job: PartJob, scheme: LeafletScheme): FolderSetting[] | Reason {
  const moves = leafletMoves(scheme);
  const reasons: string[] = [];
  const settings = devicesOf(job.plant, 'folder').flatMap((folder) => {
    const setting = setFolder(folder, moves, job.part.stock.gsm);
    if (typeof setting !== 'string') return [setting];
    reasons.push(setting);
    return [];
  });
  if (settings.length === 0) {
    const text = reasons.join('; ') || 'the plant has no folder';
    return { path: reasons.some((r) => r.includes('g/m²')) ? '/stock' : '/trimWidthMm', text };
  }
  const price = (s: FolderSetting): number =>
    (s.setupS + (job.order.quantity / s.sheetsPerHour) * 3600) * s.folder.hourRate;
  return settings.toSorted((a, b) => price(a) - price(b));
}

function addFolding(draft: Draft, job: PartJob, setting: FolderSetting, way: PieceWay, cut: PlanStep): void {
  const { folder } = setting;
  draft.overs.push({ step: foldId, ...folder.overs });
  addStep(draft, {
    id: foldId,
    types: setting.creased ? ['Creasing', 'Folding'] : ['Folding'],
    device: folder.id,
    signature,
    setupS: setting.setupS,
    runS: Math.round(((cut.outAmount - folder.overs.setupSheets) / setting.sheetsPerHour) * 3600),
    inAmount: cut.outAmount,
    inUnit: cut.unit,
    outAmount: job.order.quantity,
    unit: 'copies',
    inputs: [{ from: cut.id, amount: cut.outAmount, unit: cut.unit }],
  });
  const { widthMm, heightMm } = way.layout.form;
  const blocks = draft.blocks.filter((block) => block.signature === signature);
  draft.folding.push(
    ...blocks.map((block, i) => ({
      signature,
      block: block.name,
      startSide: 'front' as const,
      startRotationDeg: oppositeRotation(way.layout.pieces[i]?.rotation ?? 0),
      sheetInMm: [widthMm, heightMm] as [number, number],
      folds: setting.folds,
    })),
  );
}

function complete(
  job: PartJob,
  scheme: LeafletScheme,
  setting: FolderSetting,
  way: PieceWay,
  work: PieceWork,
): Draft | Problem | string {
  const draft = newDraft(job.held);
  addPrepress(draft, job);
  const cut = addPieces(draft, job, way, work);
  if (typeof cut === 'string' || 'severity' in cut) return cut;
  addFolding(draft, job, setting, way, cut);
  const pages = Array.from({ length: job.part.pages }, (_, i) => i + 1);
  draft.signatures.push({
    name: signature,
    part: job.part.name,
    pages,
    foldCatalog: scheme.code,
    creepMm: 0,
  });
  settlePrepress(draft, job);
  draft.acrossGrain = way.acrossGrain && work.grainFirst;
  if (way.acrossGrain) {
    caution(draft, 'The last fold runs across the grain: it may crack. Look at a folded blank first.');
  }
  if (setting.creased) {
    caution(draft, `${job.part.stock.name} is creased before it is folded: look at a creased blank first.`);
  }
  return draft;
}

/** All complete ways to make a leaflet: presses, layouts of the open piece, each with the folder that folds it cheapest. */
export function leafletWays(whole: Job): Found | Problem {
  const job = partOf(whole, whole.body);
  const none = (reason: Reason): Found => ({ candidates: [], reasons: [reason] });
  const scheme = schemeOf(job);
  if ('text' in scheme) return none(scheme);
  const form = leafletForm(scheme);
  if (form === null)
    return none({ path: '/folds', text: 'the folds leave more than one panel side by side' });
  const folders = foldersFor(job, scheme);
  if (!Array.isArray(folders)) return none(folders);
  const [setting] = folders;
  if (setting === undefined) return none({ path: '/folds', text: 'no folder makes these folds' });
  const { overs } = setting.folder;
  const work: PieceWork = {
    form,
    signature,
    needed: piecesToFeed(job.order.quantity, overs.runningPct, overs.setupSheets),
    unit: 'blocks',
    next: foldId,
    grainFirst: job.part.stock.gsm > GRAIN_FIRST_ABOVE_GSM,
  };
  const found = pieceWays(job, work);
  if ('severity' in found) return found;
  const { ways, reasons } = found;
  const candidates: Found['candidates'] = [];
  for (const way of ways) {
    const draft = complete(job, scheme, setting, way, work);
    if (typeof draft === 'string') reasons.push({ path: '/trimWidthMm', text: draft });
    else if ('severity' in draft) return draft;
    else {
      const across = way.acrossGrain ? ', fold across the grain' : '';
      candidates.push({ what: `${way.what}${across}`, draft, binding, price: draftPrice(job, draft) });
    }
  }
  return { candidates, reasons };
}
