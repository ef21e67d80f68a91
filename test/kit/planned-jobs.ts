import { type Order, type Plan, planJob } from '#libs/craft';
import { demoPlant } from './demo-plant.js';
import { valueIn } from './value-in.js';

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

const { cover: _cover, ...uncovered } = songs;
const leaflet: Order = {
  ...uncovered,
  jobId: 'J-2500',
  name: 'Workshops',
  trimWidthMm: 99.5,
  pages: 6,
  binding: 'None',
  foldCatalog: 'F6-1',
  stock: 'silk-135-half-lg',
};

function planned(order: Order): Plan {
  return valueIn(planJob(order, demoPlant()));
}

/** A song booklet as the planner makes it: body and cover on different stocks, presses and inks; sizes are invented. */
export const coveredPlan = (): Plan => planned(songs);

/** A script with a glued spine as the planner makes it; sizes are invented. */
export const gluedPlan = (): Plan =>
  planned({ ...songs, jobId: 'J-150', pages: 96, binding: 'SoftCover', stock: 'book-80-full-lg' });

/** A wrap-folded leaflet as the planner makes it, and one of heavy paper that is creased; sizes are invented. */
export const leafletPlan = (): Plan => planned(leaflet);
export const creasedPlan = (): Plan =>
  planned({ ...leaflet, trimWidthMm: 148, pages: 4, foldCatalog: 'F4-1', stock: 'silk-250-half-lg' });

/** Cards in three versions side by side, and on two forms; sizes are invented. */
export const versionsPlan = (places: 'one form' | 'two forms'): Plan => {
  const { foldCatalog: _code, ...flat } = leaflet;
  const size =
    places === 'one form' ? { trimWidthMm: 105, trimHeightMm: 148 } : { trimWidthMm: 420, trimHeightMm: 297 };
  const names = ['Fri', 'Sat matinee', 'Sun'];
  const versions = names.map((name, i) => ({ name, quantity: 100 * (i + 1), changes: ['Black'] }));
  return planned({ ...flat, ...size, jobId: 'J-V', quantity: 600, pages: 2, versions });
};
