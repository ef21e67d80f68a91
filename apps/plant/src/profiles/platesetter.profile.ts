import type { Profile } from './profile.js';

export const platesetter: Profile = {
  kind: 'platesetter',
  processes: ['ImageSetting'],
  counterUnit: 'plates',
  needsOperatorStart: false,
  reactionS: [2, 10],
  reportEveryS: 60,
  setup: [{ statusDetails: null, share: 1, sheets: false }],
  setupS: 60,
  perHour: 30,
  cleanup: null,
  waste: { setupPieces: 0, runningPct: 0 },
  setupWasteShare: 0,
  burstShare: 0,
  reports: { waste: true, phaseCounts: true, speed: true },
};
