import type { Random } from '#libs/kernel';
import type { Disturbance, Stop } from '../behaviours/index.js';
import type { Profile } from '../profiles/index.js';
import type { Work } from '../ticket/work.js';
import type { Segment } from './state.js';

export function between(random: Random, least: number, most: number): number {
  return least + random.next() * (most - least);
}

/** Times the usual waste of the machine. */
const MOST_WASTE = 1.5;

interface Amounts {
  readonly good: number;
  readonly setupWaste: number;
  readonly runWaste: number;
  /** Pieces of input that nobody plans to use. */
  readonly spare: number;
  readonly short: boolean;
}

/**
 * What the machine will do for a job, drawn once when it starts: good and waste never exceed what the ticket gives as
 * input, and good never exceeds what is planned. Durations are plant seconds.
 */
export function planRun(
  work: Work,
  profile: Profile,
  disturbance: Disturbance,
  runNumber: number,
  random: Random,
): Segment[] {
  const amounts = drawAmounts(work, profile, disturbance.inputShare?.(runNumber) ?? 1, random);
  const slowness = disturbance.slowness ?? 1;
  const setupS = (work.setupS ?? profile.setupS) * between(random, 0.92, 1.12) * slowness;
  const segments = [
    ...setupSegments(profile, setupS, amounts.setupWaste),
    ...runSegments(work, profile, amounts, disturbance.stop?.(runNumber) ?? null, slowness, random),
  ];
  const cleanupS = (work.cleanupS ?? profile.cleanup?.durationS ?? 0) * slowness;
  if (cleanupS > 0) segments.push(segment('Cleanup', profile.cleanup?.statusDetails ?? null, cleanupS, 0, 0));
  return segments.filter(({ durationS, good, waste }) => durationS! > 0 || good + waste > 0);
}

function segment(
  status: Segment['status'],
  statusDetails: string | null,
  durationS: number,
  good: number,
  waste: number,
  notice: Segment['notice'] = null,
): Segment {
  return { status, statusDetails, durationS, good, waste, notice };
}

function drawAmounts(work: Work, profile: Profile, inputShare: number, random: Random): Amounts {
  const planned = Math.floor(work.outAmount ?? 0);
  const chance = between(random, 0.7, 0.97);
  if (planned === 0) return { good: 0, setupWaste: 0, runWaste: 0, spare: 0, short: false };
  const { setupPieces, runningPct } = profile.waste;
  const usual = setupPieces + (planned * runningPct) / 100;
  // A pile that is far too high is no reason to waste more of it.
  const overs =
    work.feedPieces === null
      ? usual
      : Math.min(Math.max(0, work.feedPieces - planned), Math.ceil(usual * MOST_WASTE));
  const limit =
    work.feedPieces === null
      ? Math.floor((planned + usual) * inputShare)
      : Math.floor(work.feedPieces * inputShare);
  const waste = Math.min(limit, Math.floor(overs * chance));
  const setupWaste = Math.round(waste * profile.setupWasteShare);
  const good = Math.min(planned, limit - waste);
  return {
    good,
    setupWaste,
    runWaste: waste - setupWaste,
    spare: limit - waste - good,
    short: good < planned,
  };
}

function setupSegments(profile: Profile, setupS: number, waste: number): Segment[] {
  const withSheets = profile.setup.filter(({ sheets }) => sheets).length;
  return profile.setup.map(({ statusDetails, share, sheets }) =>
    // A profile has at most one part in which sheets run.
    segment('Setup', statusDetails, setupS * share, 0, sheets && withSheets === 1 ? waste : 0),
  );
}

/** The run itself: good pieces with the waste spread among them, one burst of waste, and what stops it. */
function runSegments(
  work: Work,
  profile: Profile,
  amounts: Amounts,
  stop: Stop | null,
  slowness: number,
  random: Random,
): Segment[] {
  const hasSetupSheets = profile.setup.some(({ sheets }) => sheets);
  const runWaste = amounts.runWaste + (hasSetupSheets ? 0 : amounts.setupWaste);
  const planned = Math.floor(work.outAmount ?? 0);
  const perHour = work.speedPerHour ?? profile.perHour;
  const plannedS = work.runS !== null && work.runS > 0 ? work.runS : (Math.max(1, planned) * 3600) / perHour;
  const variation = between(random, 0.97, 1.05) * slowness;
  const burst = Math.floor(runWaste * profile.burstShare);
  const burstAt = between(random, 0.2, 0.8);
  if (planned === 0) return [segment('InProgress', null, plannedS * variation, 0, 0)];
  const pieces = amounts.good + runWaste;
  const secondsAPiece = (plannedS * variation) / Math.max(1, planned);
  const part = (good: number, waste: number, details = 'Good'): Segment =>
    segment('InProgress', details, secondsAPiece * (good + waste), good, waste);
  const spread = runWaste - burst;
  const halves = (share: number): [Segment, Segment] => {
    const good = Math.round(amounts.good * share);
    const waste = Math.round(spread * share);
    return [part(good, waste), part(amounts.good - good, spread - waste)];
  };
  if (pieces === 0) return [];
  if (stop !== null) {
    const [before, after] = halves(0.5);
    const spoilt = Math.min(stop.waste, amounts.spare);
    return [
      part(before.good, before.waste + burst),
      segment('Stopped', stop.statusDetails, stop.durationS, 0, 0, stop.notice),
      part(after.good, after.waste + spoilt),
    ];
  }
  if (burst === 0) return [part(amounts.good, spread)];
  const [before, after] = halves(burstAt);
  return [before, part(0, burst, 'Waste'), after];
}
