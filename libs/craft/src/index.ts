export { makereadyCapacity } from './changeover/press-change.js';
export * from './order.js';
export * from './plan.js';
export {
  type PlanContext,
  type PlannedJob,
  planJob,
  planOnPress,
  planSequence,
} from './planning/plan-job.js';
export * from './plant.js';
