import type { Problem } from '#libs/kernel';
import { flatForm } from '../layouts/piece-form.js';
import { sharePlaces } from '../layouts/share-places.js';
import type { VersionOrder } from '../order.js';
import type { PlanBinding } from '../plan.js';
import type { Found } from './candidate.js';
import { caution, type Draft, newDraft } from './draft.js';
import { type Job, type PartJob, partOf } from './job.js';
import { addPieces, type PieceNames, type PieceWay, type PieceWork, pieceWays } from './piece-work.js';
import { addPrepress, settlePrepress } from './prepress.js';
import { draftPrice } from './totals.js';

/** A version with the signature that its pieces are. */
interface Version extends VersionOrder {
  names: PieceNames;
}

function versionsOf(job: PartJob): Version[] {
  return (job.order.versions ?? []).map((version, i) => {
    const word = version.name.toLowerCase().replaceAll(/[^a-z0-9]+/g, '-');
    const signature = `v${i + 1}-${word}`;
    return { ...version, names: { part: version.name, signature, pileLabel: version.name } };
  });
}

function workOf(job: PartJob, versions: readonly Version[]): Omit<PieceWork, 'share'> {
  const { trimWidthMm, trimHeightMm } = job.order;
  return {
    form: flatForm(trimWidthMm, trimHeightMm, job.part.pages),
    signature: versions[0]?.names.signature ?? '',
    needed: versions.reduce((sum, v) => sum + v.quantity, 0),
    unit: 'copies',
    next: null,
    grainFirst: false,
  };
}

/** One form with some versions side by side. Null where it has too few places for them. */
function formOf(job: PartJob, way: PieceWay, versions: readonly Version[]): PieceWork | null {
  const places = way.layout.pieces.length;
  const share = sharePlaces(
    versions.map((v) => v.quantity),
    places,
  );
  if (share === null) return null;
  const names = versions.flatMap((v, i) => Array.from({ length: share.places[i] ?? 0 }, () => v.names));
  return { ...workOf(job, versions), share: { sheets: share.sheets, names } };
}

/** Price without the floor of a minimum order, so that prices of forms can be added up. */
function plainPrice(job: PartJob, draft: Draft): number {
  const costs = { ...job.plant.costs, minimumOrder: 0 };
  return draftPrice({ ...job, plant: { ...job.plant, costs } }, draft).amount;
}

function formPrice(job: PartJob, way: PieceWay, work: PieceWork): number | null {
  const draft = newDraft(job.held);
  const made = addPieces(draft, job, way, work);
  return typeof made === 'string' || 'severity' in made ? null : plainPrice(job, draft);
}

/**
 * The cheapest way to spread the versions over forms, among all that put neighbours in quantity together (kinds of like
 * quantity waste least beside each other). Null where not even single versions can be made.
 */
function cheapestForms(job: PartJob, way: PieceWay, versions: readonly Version[]): PieceWork[] | null {
  const sorted = versions.toSorted((a, b) => b.quantity - a.quantity);
  const best: ({ amount: number; forms: PieceWork[] } | null)[] = [{ amount: 0, forms: [] }];
  for (let end = 1; end <= sorted.length; end++) {
    best[end] = null;
    for (let start = end - 1; start >= 0; start--) {
      const before = best[start] ?? null;
      const work = formOf(job, way, sorted.slice(start, end));
      if (work === null) break;
      const amount = before === null ? null : formPrice(job, way, work);
      if (before === null || amount === null) continue;
      const known = best[end] ?? null;
      if (known === null || before.amount + amount < known.amount) {
        best[end] = { amount: before.amount + amount, forms: [...before.forms, work] };
      }
    }
  }
  return best[sorted.length]?.forms ?? null;
}

/** Each version on a form of its own, one after the other: only the plates that differ are changed. */
function inTurn(job: PartJob, way: PieceWay, versions: readonly Version[]): PieceWork[] {
  const first = versions[0]?.changes ?? [];
  const everChanged = [...new Set([...first, ...versions.flatMap((v) => v.changes)])];
  return versions.flatMap((version, i) => {
    const work = formOf(job, way, [version]);
    const changes = i === 0 ? everChanged : version.changes;
    return work === null ? [] : [{ ...work, version: { name: version.name, changes } }];
  });
}

function complete(job: PartJob, way: PieceWay, forms: readonly PieceWork[], versions: readonly Version[]) {
  const draft = newDraft(job.held);
  addPrepress(draft, job);
  for (const work of forms) {
    const made = addPieces(draft, job, way, work);
    if (typeof made === 'string' || 'severity' in made) return made;
  }
  const pages = Array.from({ length: job.part.pages }, (_, i) => i + 1);
  draft.signatures.push(
    ...versions.map(({ names }) => ({
      name: names.signature,
      part: names.part,
      pages,
      foldCatalog: 'F2-1',
      creepMm: 0,
    })),
  );
  settlePrepress(draft, job);
  caution(
    draft,
    'Several versions lie on a sheet or follow each other: label each pile at the guillotine, never mix them.',
  );
  return draft;
}

function bindingOf(versions: readonly Version[]): PlanBinding {
  return {
    kind: 'None',
    signatureOrder: versions.map(({ names }) => names.signature),
    trim: { headMm: 0, footMm: 0, faceMm: 0 },
  };
}

/**
 * All complete ways to make flat work in several versions: side by side on one form or on several, or each on its own
 * with only the plates changed that differ; on every press and layout.
 */
export function versionWays(whole: Job): Found | Problem {
  const job = partOf(whole, whole.body);
  const versions = versionsOf(job);
  const found = pieceWays(job, workOf(job, versions));
  if ('severity' in found) return found;
  const { ways, reasons } = found;
  const candidates: Found['candidates'] = [];
  const binding = bindingOf(versions);
  for (const way of ways) {
    const spread = cheapestForms(job, way, versions);
    const tries: [string, readonly PieceWork[] | null][] = [
      [spread?.length === 1 ? 'all versions on one form' : `versions on ${spread?.length} forms`, spread],
      ['one version after the other, only their own plates changed', inTurn(job, way, versions)],
    ];
    for (const [what, forms] of tries) {
      if (forms === null || forms.length === 0) continue;
      const draft = complete(job, way, forms, versions);
      if (typeof draft === 'string') reasons.push({ path: '/versions', text: draft });
      else if ('severity' in draft) return draft;
      else candidates.push({ what: `${way.what}, ${what}`, draft, binding, price: draftPrice(job, draft) });
    }
  }
  return { candidates, reasons };
}
