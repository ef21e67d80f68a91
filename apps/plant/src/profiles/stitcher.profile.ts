import type { Profile } from './profile.js';

export const stitcher: Profile = {
  kind: 'stitcher',
  processes: ['Collecting', 'Stitching', 'Trimming', 'Gathering', 'Inserting'],
  counterUnit: 'copies',
  needsOperatorStart: true,
  reactionS: [60, 240],
  reportEveryS: 30,
  setup: [
    { statusDetails: 'SizeChange', share: 0.75, sheets: false },
    { statusDetails: null, share: 0.25, sheets: true },
  ],
  setupS: 1200,
  perHour: 4000,
  cleanup: null,
  waste: { setupPieces: 20, runningPct: 1 },
  setupWasteShare: 0.6,
  burstShare: 0,
  reports: { waste: true, phaseCounts: true, speed: true },
};
