export { deviceView, entryView, phaseView } from './device-view.js';
export { inOrderOfTime, sentenceOf } from './story.js';
export { consumptionView, progressPct, ticketView, waitsFor } from './ticket-view.js';
