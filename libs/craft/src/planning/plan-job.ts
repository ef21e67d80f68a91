import { error, type Result, refuse } from '#libs/kernel';
import type { Order } from '../order.js';
import type { Plan } from '../plan.js';
import type { Plant, PressState } from '../plant.js';

export interface PlanContext {
  /** What the press chosen may still hold; counts only when that press is chosen. */
  previousOnPress?: PressState;
}

/** Plans an order on a plant: the whole document of contract section 4, or why it cannot be made. */
export function planJob(order: Order, plant: Plant, context: PlanContext = {}): Result<Plan> {
  return refuse(
    error('PLAN_NOT_YET', `${order.name} cannot be planned on ${plant.name} yet.`, {
      path: '/binding',
      hint: context.previousOnPress ? null : 'Planning is being built.',
    }),
  );
}
