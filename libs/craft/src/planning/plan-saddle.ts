import { type Problem, piecesToFeed } from '#libs/kernel';
import { saddleBinding, stitcherRefusal } from '../binding/saddle.js';
import { sectionScheme } from '../imposition/catalogue.js';
import { nestedSections, sectionSizes, signatureCreepMm } from '../imposition/sections.js';
import { type SectionLayout, sectionLayouts } from '../layouts/place-section.js';
import { formHead, sectionForm } from '../layouts/section-form.js';
import { grainAxis, spineAxis } from '../paper/paper.js';
import type { PlanStep } from '../plan.js';
import { devicesOf, type StitcherDefinition } from '../plant.js';
import type { Found } from './candidate.js';
import { addStep, caution, type Draft, newDraft } from './draft.js';
import type { Job, Reason } from './job.js';
import { addPrepress, settlePrepress } from './prepress.js';
import { type PressChoice, pressChoices } from './press-choice.js';
import {
  addSectionGroup,
  type FoldableLayout,
  foldable,
  type GroupWant,
  type NamedSection,
} from './section-group.js';
import { draftPrice } from './totals.js';

/** Section sizes that are tried, from the fewest sections to the smallest; nothing larger is folded by this version. */
const sizeSets: readonly (readonly number[])[] = [[16, 8, 4], [8, 4], [4]];

interface Book {
  sections: NamedSection[];
  stitcher: StitcherDefinition;
  /** Sets that the stitcher takes in. */
  sets: number;
}

function bookOf(job: Job, sizes: readonly number[]): Book | Reason {
  const { order, stock, plant } = job;
  const sections = nestedSections(sizes).map((s, i) => ({ name: `body-${i + 1}`, pages: s.pages }));
  const reasons: string[] = [];
  for (const stitcher of devicesOf(plant, 'stitcher')) {
    const refusal = stitcherRefusal(stitcher, {
      trimWidthMm: order.trimWidthMm,
      trimHeightMm: order.trimHeightMm,
      pages: order.pages,
      caliperUm: stock.caliperUm,
      sections: sections.length,
    });
    if (refusal === null) {
      const { setupSheets, setupPerSection, runningPct } = stitcher.overs;
      const setup = setupSheets + setupPerSection * sections.length;
      return { sections, stitcher, sets: piecesToFeed(order.quantity, runningPct, setup) };
    }
    reasons.push(refusal);
  }
  const tooThick = reasons.some((r) => r.includes('pages') || r.includes('sections'));
  return {
    path: tooThick ? '/pages' : '/trimWidthMm',
    text: reasons.join('; ') || 'the plant has no stitcher',
  };
}

const acrossGrain = (job: Job, layout: SectionLayout): boolean =>
  spineAxis(formHead(layout.form, layout.rotation)) !==
  grainAxis(layout.area.sheetWidthMm, layout.area.sheetHeightMm, job.stock.grain);

/** Every layout of a section size that some folder can fold, on all sheet orientations of the press. */
function layoutsFor(job: Job, choice: PressChoice, book: Book, size: number): FoldableLayout[] | Reason {
  const scheme = sectionScheme(size);
  const { order, plant } = job;
  const { trim, lipMm, opening } = book.stitcher;
  const form = scheme === null ? null : sectionForm(scheme, order.trimWidthMm, order.trimHeightMm, trim);
  if (form === null) return { path: '/pages', text: `sections of ${size} pages cannot be folded` };
  const lips = [...(opening.includes('lip') ? [lipMm] : []), ...(opening.includes('suckers') ? [0] : [])];
  const layouts = choice.areas.flatMap((area) =>
    lips.flatMap((lip) =>
      sectionLayouts({
        form,
        area,
        bleedMm: job.bleedMm,
        minBleedMm: plant.defaults.minBleedMm,
        lipMm: lip,
      }),
    ),
  );
  if (layouts.length === 0) {
    const { sheetWidthMm: w, sheetHeightMm: h } = job.stock;
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
function picks(job: Job, choice: PressChoice, book: Book, size: number): FoldableLayout[] | Reason | Problem {
  const layouts = layoutsFor(job, choice, book, size);
  if (!Array.isArray(layouts)) return layouts;
  const sections = book.sections.filter((s) => s.pages.length === size);
  const priced: { layout: FoldableLayout; noLip: boolean; across: boolean; amount: number }[] = [];
  for (const layout of layouts) {
    const draft = newDraft(null);
    const added = addSectionGroup(draft, job, groupWant(job, choice, book, layout, sections));
    if (typeof added === 'string') continue;
    if ('severity' in added) return added;
    // Suckers miss more often than a lip does: they are used only where no lip fits.
    const noLip = book.stitcher.opening.includes('lip') && layout.layout.lipOn === null;
    const across = acrossGrain(job, layout.layout);
    priced.push({ layout, noLip, across, amount: draftPrice(job, draft).amount });
  }
  const byPrice = priced.toSorted((x, y) => Number(x.noLip) - Number(y.noLip) || x.amount - y.amount);
  const cheapest = byPrice.toSorted((x, y) => x.amount - y.amount)[0];
  const found = [byPrice.find((p) => !p.across), cheapest];
  return [...new Set(found.flatMap((f) => (f === undefined ? [] : [f.layout])))];
}

function groupWant(
  job: Job,
  choice: PressChoice,
  book: Book,
  layout: FoldableLayout,
  sections: readonly NamedSection[],
): GroupWant {
  return {
    choice,
    foldable: layout,
    sections,
    signaturesNeeded: book.sets,
    bookPages: job.order.pages,
  };
}

function addStitching(draft: Draft, job: Job, book: Book, folds: ReadonlyMap<string, PlanStep>): void {
  const { stitcher, sections, sets } = book;
  const { overs, shortRun, perHour } = stitcher;
  const setup = overs.setupSheets + overs.setupPerSection * sections.length;
  const speed = perHour * (job.order.quantity < shortRun.belowCopies ? shortRun.speedFactor : 1);
  draft.overs.push({ step: 'stitch', setupSheets: setup, runningPct: overs.runningPct });
  addStep(draft, {
    id: 'stitch',
    types: ['Collecting', 'Stitching', 'Trimming'],
    device: stitcher.id,
    setupS: stitcher.setupS + stitcher.setupPerSectionS * sections.length,
    runS: Math.round(((sets - setup) / speed) * 3600),
    inAmount: sets,
    inUnit: 'copies',
    outAmount: job.order.quantity,
    unit: 'copies',
    inputs: sections.flatMap((s) => {
      const from = folds.get(s.name);
      return from === undefined ? [] : [{ from: from.id, amount: sets, unit: 'signatures' as const }];
    }),
  });
}

function addBookCautions(draft: Draft, job: Job, book: Book, layouts: readonly FoldableLayout[]): void {
  for (const { layout } of layouts) {
    const pages = layout.form.pages;
    if (acrossGrain(job, layout)) {
      draft.acrossGrain = true;
      caution(
        draft,
        `The spine of the ${pages}-page sections lies across the grain: the fold may crack and the copy opens less well. Look at a folded blank first.`,
      );
    } else if (pages === 16 && job.stock.grain === 'short') {
      caution(
        draft,
        'Short-grain sheets stretch more in feed direction: check register at the tail during the run.',
      );
    }
    if (book.stitcher.opening.includes('lip') && layout.lipOn === null) {
      caution(
        draft,
        `There is no room for a lip on the ${pages}-page sections: set the stitcher to open them by suckers.`,
      );
    }
  }
}

function complete(
  job: Job,
  choice: PressChoice,
  book: Book,
  layouts: readonly FoldableLayout[],
): Draft | Problem | string {
  const held = job.previousOnPress?.press === choice.press.id ? job.previousOnPress : null;
  const draft = newDraft(held);
  addPrepress(draft, job);
  const folds = new Map<string, PlanStep>();
  for (const layout of layouts) {
    const size = layout.layout.form.pages;
    const sections = book.sections.filter((s) => s.pages.length === size);
    const added = addSectionGroup(draft, job, groupWant(job, choice, book, layout, sections));
    if (!(added instanceof Map)) return added;
    for (const [name, step] of added) folds.set(name, step);
  }
  addStitching(draft, job, book, folds);
  settlePrepress(draft, job);
  const { pages } = job.order;
  draft.signatures.push(
    ...book.sections.map((s) => ({
      name: s.name,
      part: 'body',
      pages: s.pages,
      foldCatalog: sectionScheme(s.pages.length)?.code ?? '',
      creepMm: signatureCreepMm(s.pages, pages, job.stock.caliperUm),
    })),
  );
  addBookCautions(draft, job, book, layouts);
  return draft;
}

function product<T>(lists: readonly (readonly T[])[]): T[][] {
  return lists.reduce<T[][]>((all, list) => all.flatMap((row) => list.map((item) => [...row, item])), [[]]);
}

/** All complete ways to make a saddle-stitched job: presses, section sizes, layouts with and across the grain. */
export function saddleWays(job: Job): Found | Problem {
  const found: Found = { candidates: [], reasons: [] };
  const { choices, reasons } = pressChoices(job);
  found.reasons.push(...reasons);
  const tried = new Set<string>();
  for (const set of sizeSets) {
    const sizes = sectionSizes(job.order.pages, set);
    if (sizes === null || tried.has(sizes.join())) continue;
    tried.add(sizes.join());
    const book = bookOf(job, sizes);
    if (!('sections' in book)) {
      found.reasons.push(book);
      continue;
    }
    for (const choice of choices) {
      const lists = [...new Set(sizes)].map((size) => picks(job, choice, book, size));
      const missing = lists.find((list) => !Array.isArray(list));
      if (missing !== undefined && !Array.isArray(missing)) {
        if ('severity' in missing) return missing;
        found.reasons.push(missing);
        continue;
      }
      for (const layouts of product(lists.filter((list) => Array.isArray(list)))) {
        const draft = complete(job, choice, book, layouts);
        if (typeof draft === 'string') {
          found.reasons.push({ path: '/stock', text: draft });
        } else if ('severity' in draft) {
          return draft;
        } else {
          found.candidates.push({
            what: wayInWords(choice, layouts, draft),
            draft,
            binding: saddleBinding(
              book.stitcher,
              job.order.trimHeightMm,
              book.sections.map((s) => ({ name: s.name, firstPage: s.pages[0] ?? 0 })),
            ),
            price: draftPrice(job, draft),
          });
        }
      }
    }
  }
  return found;
}

function wayInWords(choice: PressChoice, layouts: readonly FoldableLayout[], draft: Draft): string {
  const forms = layouts.map(({ layout }) => `${layout.form.pages}-page sections ${layout.blocks.length}-up`);
  return `${choice.press.name}, ${forms.join(' and ')}${draft.acrossGrain ? ', spine across the grain' : ''}`;
}
