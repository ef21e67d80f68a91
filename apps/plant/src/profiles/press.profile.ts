import type { Profile } from './profile.js';

export const press: Profile = {
  kind: 'press',
  processes: ['ConventionalPrinting'],
  counterUnit: 'sheets',
  needsOperatorStart: true,
  reactionS: [20, 90],
  reportEveryS: 30,
  setup: [
    { statusDetails: 'FormChange', share: 0.4, sheets: false },
    { statusDetails: 'BlanketWash', share: 0.25, sheets: false },
    { statusDetails: null, share: 0.35, sheets: true },
  ],
  setupS: 420,
  perHour: 10_000,
  cleanup: { statusDetails: 'BlanketWash', durationS: 45 },
  waste: { setupPieces: 100, runningPct: 1.5 },
  setupWasteShare: 0.75,
  burstShare: 0.4,
  reports: { waste: true, phaseCounts: true, speed: true },
};
