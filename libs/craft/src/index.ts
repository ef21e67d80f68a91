export { makereadyCapacity } from './changeover/press-change.js';
export * from './order.js';
export * from './plan.js';
export { type PlanContext, planJob } from './planning/plan-job.js';
export * from './plant.js';
