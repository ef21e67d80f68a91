export { drawCuts } from './draw-cuts.js';
export { drawFolds } from './draw-folds.js';
export { drawSheet } from './draw-sheet.js';
