export { saddleThicknessMm } from './binding/saddle.js';
export { makereadyCapacity } from './changeover/press-change.js';
export { canMakeFolds, heaviestToFold } from './folding/folder-choice.js';
export { type FoldScheme, foldCatalogue, foldScheme } from './imposition/catalogue.js';
export { type PagePlace, pagesByFolding } from './imposition/number-pages.js';
export * from './order.js';
export * from './plan.js';
export { compareOrders, type JobSequence } from './planning/compare-orders.js';
export {
  type PlanContext,
  type PlannedJob,
  planJob,
  planOnPress,
  planSequence,
} from './planning/plan-job.js';
export * from './plant.js';
export { type Account, accounts, balance, drawMoves, type StockMove } from './stock/accounts.js';
