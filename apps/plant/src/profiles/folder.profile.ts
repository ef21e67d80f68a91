import type { Profile } from './profile.js';

export const folder: Profile = {
  kind: 'folder',
  processes: ['Folding', 'Creasing', 'Perforating'],
  counterUnit: 'signatures',
  needsOperatorStart: true,
  reactionS: [30, 120],
  reportEveryS: 30,
  setup: [
    { statusDetails: 'SizeChange', share: 0.6, sheets: false },
    { statusDetails: null, share: 0.4, sheets: true },
  ],
  setupS: 540,
  perHour: 6000,
  cleanup: null,
  waste: { setupPieces: 30, runningPct: 1 },
  setupWasteShare: 0.7,
  burstShare: 0,
  reports: { waste: true, phaseCounts: true, speed: true },
};
