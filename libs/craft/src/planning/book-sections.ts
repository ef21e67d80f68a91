import type { Problem } from '#libs/kernel';
import { sectionScheme } from '../imposition/catalogue.js';
import { type SectionLayout, sectionLayouts } from '../layouts/place-section.js';
import { formHead, sectionForm } from '../layouts/section-form.js';
import { grainAxis, spineAxis } from '../paper/paper.js';
import type { PlanStep } from '../plan.js';
import { caution, type Draft, newDraft } from './draft.js';
import type { PartJob, Reason } from './job.js';
import { type PressChoice, pressChoices } from './press-choice.js';
import { addSectionGroup, type BookWant, type FoldableLayout, foldable } from './section-group.js';
import { draftPrice } from './totals.js';

/** Section sizes that are tried, from the fewest sections to the smallest. */
const sizeSets: readonly (readonly number[])[] = [[32, 16, 8, 4], [16, 8, 4], [8, 4], [4]];

/** One press with a layout for each section size. */
export interface SectionWay {
  choice: PressChoice;
  layouts: readonly FoldableLayout[];
  acrossGrain: boolean;
  what: string;
}

/** The divisions of a book into section sizes, each once: fewest sections first. */
export function divisions(
  pages: number,
  divide: (pages: number, sizes: readonly number[]) => number[] | null,
) {
  const found = new Map<string, number[]>();
  for (const set of sizeSets) {
    const sizes = divide(pages, set);
    if (sizes !== null && !found.has(sizes.join())) found.set(sizes.join(), sizes);
  }
  return [...found.values()];
}

function acrossGrain(job: PartJob, { form, rotation, area }: SectionLayout): boolean {
  const axis = grainAxis(area.sheetWidthMm, area.sheetHeightMm, job.part.stock.grain);
  return spineAxis(formHead(form, rotation)) !== axis;
}

/** Every layout of a section size that some folder can fold, on all sheet orientations of the press. */
function layoutsFor(
  job: PartJob,
  choice: PressChoice,
  book: BookWant,
  size: number,
): FoldableLayout[] | Reason {
  const { order, plant, part } = job;
  const scheme = sectionScheme(size);
  const form =
    scheme === null ? null : sectionForm(scheme, order.trimWidthMm, order.trimHeightMm, book.trims);
  if (form === null)
    return { path: `${part.path}/pages`, text: `sections of ${size} pages cannot be folded` };
  const layouts = choice.areas.flatMap((area) =>
    book.lipsMm.flatMap((lipMm) =>
      sectionLayouts({ form, area, bleedMm: job.bleedMm, minBleedMm: plant.defaults.minBleedMm, lipMm }),
    ),
  );
  if (layouts.length === 0) {
    const { sheetWidthMm: w, sheetHeightMm: h } = part.stock;
    return {
      path: '/trimWidthMm',
      text: `a section of ${size} pages needs ${form.widthMm} × ${form.heightMm} mm and margins, a sheet of ${w} × ${h} mm on ${choice.press.name} has not that much room`,
    };
  }
  const tried = layouts.map((layout) => foldable(job, layout, book.sets));
  const good = tried.filter((t) => typeof t !== 'string');
  if (good.length > 0) return good;
  const reasons = [...new Set(tried.filter((t) => typeof t === 'string'))];
  return { path: '/stock', text: `no folder makes a section of ${size} pages: ${reasons[0] ?? ''}` };
}

/** The layouts worth a complete plan: the cheapest with the grain and the cheapest of all. */
function picks(
  job: PartJob,
  choice: PressChoice,
  book: BookWant,
  size: number,
): FoldableLayout[] | Reason | Problem {
  const layouts = layoutsFor(job, choice, book, size);
  if (!Array.isArray(layouts)) return layouts;
  const sections = book.sections.filter((s) => s.pages.length === size);
  const priced: { layout: FoldableLayout; noLip: boolean; across: boolean; amount: number }[] = [];
  for (const layout of layouts) {
    const draft = newDraft(job.held);
    const added = addSectionGroup(draft, job, { choice, foldable: layout, sections, book });
    if (typeof added === 'string') continue;
    if ('severity' in added) return added;
    // Suckers miss more often than a lip does: they are used only where no lip fits.
    const noLip = (book.lipsMm[0] ?? 0) > 0 && layout.layout.lipOn === null;
    const across = acrossGrain(job, layout.layout);
    priced.push({ layout, noLip, across, amount: draftPrice(job, draft).amount });
  }
  const byPrice = priced.toSorted((x, y) => Number(x.noLip) - Number(y.noLip) || x.amount - y.amount);
  const cheapest = byPrice.toSorted((x, y) => x.amount - y.amount)[0];
  const found = [byPrice.find((p) => !p.across), cheapest];
  return [...new Set(found.flatMap((f) => (f === undefined ? [] : [f.layout])))];
}

function product<T>(lists: readonly (readonly T[])[]): T[][] {
  return lists.reduce<T[][]>((all, list) => all.flatMap((row) => list.map((item) => [...row, item])), [[]]);
}

/** The ways to print and fold the sections of a book, on every press that can. */
export function sectionWays(
  job: PartJob,
  book: BookWant,
): { ways: SectionWay[]; reasons: Reason[] } | Problem {
  const { choices, reasons } = pressChoices(job);
  const sizes = [...new Set(book.sections.map((s) => s.pages.length))];
  const ways: SectionWay[] = [];
  for (const choice of choices) {
    const lists: FoldableLayout[][] = [];
    for (const size of sizes) {
      const picked = picks(job, choice, book, size);
      if (Array.isArray(picked)) lists.push(picked);
      else if ('severity' in picked) return picked;
      else reasons.push(picked);
    }
    if (lists.length < sizes.length) continue;
    for (const layouts of product(lists)) {
      const across = layouts.some(({ layout }) => acrossGrain(job, layout));
      ways.push({ choice, layouts, acrossGrain: across, what: inWords(choice, layouts, across) });
    }
  }
  return { ways, reasons };
}

function inWords(choice: PressChoice, layouts: readonly FoldableLayout[], across: boolean): string {
  const forms = layouts.map(({ layout }) => `${layout.form.pages}-page sections ${layout.blocks.length}-up`);
  return `${choice.press.name}, ${forms.join(' and ')}${across ? ', spine across the grain' : ''}`;
}

/** Adds all sheets of a book's sections; returns the fold step of each, a problem of the plant, or why it cannot be. */
export function addSections(
  draft: Draft,
  job: PartJob,
  book: BookWant,
  way: SectionWay,
): Map<string, PlanStep> | Problem | string {
  const folds = new Map<string, PlanStep>();
  for (const layout of way.layouts) {
    const sections = book.sections.filter((s) => s.pages.length === layout.layout.form.pages);
    const added = addSectionGroup(draft, job, { choice: way.choice, foldable: layout, sections, book });
    if (!(added instanceof Map)) return added;
    for (const [name, step] of added) folds.set(name, step);
  }
  draft.signatures.push(
    ...book.sections.map((s) => ({
      name: s.name,
      part: job.part.name,
      pages: s.pages,
      foldCatalog: sectionScheme(s.pages.length)?.code ?? '',
      creepMm: Math.max(...s.pages.map(book.shiftMm)),
    })),
  );
  addSectionCautions(draft, job, book, way);
  return folds;
}

function addSectionCautions(draft: Draft, job: PartJob, book: BookWant, way: SectionWay): void {
  draft.acrossGrain ||= way.acrossGrain;
  for (const { layout } of way.layouts) {
    const pages = layout.form.pages;
    if (acrossGrain(job, layout)) {
      caution(
        draft,
        `The spine of the ${pages}-page sections lies across the grain: the fold may crack and the copy opens less well. Look at a folded blank first.`,
      );
    } else if (pages === 16 && job.part.stock.grain === 'short') {
      caution(
        draft,
        'Short-grain sheets stretch more in feed direction: check register at the tail during the run.',
      );
    }
    if ((book.lipsMm[0] ?? 0) > 0 && layout.lipOn === null) {
      caution(
        draft,
        `There is no room for a lip on the ${pages}-page sections: set the stitcher to open them by suckers.`,
      );
    }
  }
}
