import type { Profile } from './profile.js';

export const guillotine: Profile = {
  kind: 'guillotine',
  processes: ['Cutting', 'Trimming'],
  counterUnit: 'sheets',
  needsOperatorStart: true,
  reactionS: [30, 150],
  reportEveryS: 60,
  setup: [{ statusDetails: 'SizeChange', share: 1, sheets: true }],
  setupS: 120,
  perHour: 12_000,
  cleanup: null,
  waste: { setupPieces: 4, runningPct: 0.2 },
  setupWasteShare: 0.5,
  burstShare: 0,
  reports: { waste: true, phaseCounts: true, speed: false },
};
