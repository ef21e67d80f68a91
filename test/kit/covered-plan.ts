import { type Order, type Plan, planJob } from '#libs/craft';
import { demoPlant } from './demo-plant.js';

const songs: Order = {
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
};

function planned(order: Order): Plan {
  const plan = planJob(order, demoPlant());
  if (!plan.ok) throw new Error(JSON.stringify(plan.problems));
  return plan.value;
}

/** A song booklet as the planner makes it: body and cover on different stocks, presses and inks; sizes are invented. */
export const coveredPlan = (): Plan => planned(songs);

/** A script with a glued spine as the planner makes it; sizes are invented. */
export const gluedPlan = (): Plan =>
  planned({ ...songs, jobId: 'J-150', pages: 96, binding: 'SoftCover', stock: 'book-80-full-lg' });
