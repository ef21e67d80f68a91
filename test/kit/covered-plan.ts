import { type Plan, planJob } from '#libs/craft';
import { demoPlant } from './demo-plant.js';

/** A song booklet as the planner makes it: body and cover on different stocks, presses and inks; sizes are invented. */
export function coveredPlan(): Plan {
  const plan = planJob(
    {
      jobId: 'J-600',
      name: 'Songs of the ferry',
      quantity: 600,
      trimWidthMm: 148,
      trimHeightMm: 210,
      pages: 32,
      binding: 'SaddleStitch',
      stock: 'offset-100-full-lg',
      inksFront: ['Black'],
      inksBack: ['Black'],
      cover: {
        stock: 'offset-240-half-sg',
        pages: 4,
        inksFront: ['Cyan', 'Magenta', 'Yellow', 'Black'],
        inksBack: [],
      },
    },
    demoPlant(),
  );
  if (!plan.ok) throw new Error(JSON.stringify(plan.problems));
  return plan.value;
}
