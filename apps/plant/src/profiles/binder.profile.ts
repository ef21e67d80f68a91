import type { Profile } from './profile.js';

export const binder: Profile = {
  kind: 'binder',
  processes: [
    'Gathering',
    'SpinePreparation',
    'SpineTaping',
    'Gluing',
    'CoverApplication',
    'AdhesiveBinding',
    'ThreadSewing',
    'Trimming',
  ],
  counterUnit: 'books',
  needsOperatorStart: true,
  reactionS: [60, 300],
  reportEveryS: 60,
  setup: [
    { statusDetails: 'WarmingUp', share: 0.5, sheets: false },
    { statusDetails: 'SizeChange', share: 0.3, sheets: false },
    { statusDetails: null, share: 0.2, sheets: true },
  ],
  setupS: 1500,
  perHour: 350,
  cleanup: { statusDetails: null, durationS: 120 },
  waste: { setupPieces: 12, runningPct: 1.5 },
  setupWasteShare: 0.6,
  burstShare: 0,
  reports: { waste: true, phaseCounts: true, speed: true },
};
