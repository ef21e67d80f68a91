import { type Problem, piecesToFeed } from '#libs/kernel';
import { type FolderSetting, setFolder } from '../folding/folder-choice.js';
import { foldMoves } from '../folding/instructions.js';
import { oppositeRotation } from '../layouts/geometry.js';
import type { SectionLayout } from '../layouts/place-section.js';
import { type PlacedSection, sectionCells } from '../layouts/section-cells.js';
import type { Trims } from '../layouts/section-form.js';
import { grainAxis, grainOfPiece } from '../paper/paper.js';
import type { PlanBlock, PlanStep } from '../plan.js';
import { devicesOf } from '../plant.js';
import { addSheet } from './add-sheet.js';
import { addCutting, guillotineFor } from './cut-step.js';
import { addStep, type Draft } from './draft.js';
import type { PartJob } from './job.js';
import type { PressChoice } from './press-choice.js';
import { dryingWaits } from './waits.js';

export interface NamedSection {
  name: string;
  pages: number[];
}

/** What a binding asks of the sections that it takes in. */
export interface BookWant {
  sections: readonly NamedSection[];
  /** Folded sections of each name that are taken in. */
  sets: number;
  trims: Trims;
  /** Lips between the halves of a folded section that would do, the better first; 0: none. */
  lipsMm: readonly number[];
  /** How far the image of a page moves towards the spine, mm. */
  shiftMm: (page: number) => number;
}

/** A layout with the folder that can fold what it leaves; the same setting serves all blocks. */
export interface FoldableLayout {
  layout: SectionLayout;
  setting: FolderSetting;
}

/** Folder for a layout, or why no folder takes its pieces. */
export function foldable(job: PartJob, layout: SectionLayout, pieces: number): FoldableLayout | string {
  const moves = layout.blocks.map((block) => foldMoves(layout, block));
  const stops = moves.map((m) => JSON.stringify(m.map((f) => [f.positionMm, f.travelMm])));
  if (new Set(stops).size > 1) return 'the blocks of the sheet would need different folder settings';
  const reasons: string[] = [];
  const settings = devicesOf(job.plant, 'folder').flatMap((folder) => {
    const tried = moves.map((m) => setFolder(folder, m, job.part.stock.gsm));
    const refused = tried.find((t) => typeof t === 'string');
    const first = tried[0];
    if (refused !== undefined || first === undefined || typeof first === 'string') {
      reasons.push(String(refused ?? ''));
      return [];
    }
    const cost = (first.setupS + (pieces / first.sheetsPerHour) * 3600) * folder.hourRate;
    return [{ setting: first, cost }];
  });
  const best = settings.toSorted((a, b) => a.cost - b.cost)[0];
  return best === undefined
    ? reasons.join('; ') || 'the plant has no folder'
    : { layout, setting: best.setting };
}

/** Sections on one sheet: as many different ones as divide its blocks evenly, each as often as the others. */
function sheetfuls(sections: readonly NamedSection[], blocks: number): NamedSection[][] {
  const result: NamedSection[][] = [];
  let left = [...sections];
  while (left.length > 0) {
    let take = Math.min(left.length, blocks);
    while (blocks % take !== 0) take -= 1;
    result.push(left.slice(0, take));
    left = left.slice(take);
  }
  return result;
}

export interface GroupWant {
  choice: PressChoice;
  foldable: FoldableLayout;
  sections: readonly NamedSection[];
  book: BookWant;
}

/**
 * Adds the sheets of all sections that are laid out alike: printing, dividing where several stand on a sheet, folding.
 * Returns the fold step of every section, a problem of the plant definition, or why it cannot be made.
 */
export function addSectionGroup(
  draft: Draft,
  job: PartJob,
  want: GroupWant,
): Map<string, PlanStep> | Problem | string {
  const steps = new Map<string, PlanStep>();
  for (const sections of sheetfuls(want.sections, want.foldable.layout.blocks.length)) {
    const added = addSectionSheet(draft, job, want, sections, steps);
    if (added !== null) return added;
  }
  return steps;
}

function addSectionSheet(
  draft: Draft,
  job: PartJob,
  want: GroupWant,
  sections: readonly NamedSection[],
  steps: Map<string, PlanStep>,
): Problem | string | null {
  const { layout, setting } = want.foldable;
  const { area } = layout;
  const number = draft.sheets.length + 1;
  const name = `S${number}`;
  const copiesUp = layout.blocks.length / sections.length;
  const { folder } = setting;
  const foldIn = piecesToFeed(want.book.sets, folder.overs.runningPct, folder.overs.setupSheets);
  const divided = layout.blocks.length > 1;
  const guillotine = guillotineFor(job.plant, Math.max(area.sheetWidthMm, area.sheetHeightMm));
  if (divided && guillotine === null) return 'no guillotine takes the sheet to part its sections';
  const whole = Math.ceil(foldIn / copiesUp);
  const goodSheets =
    divided && guillotine !== null
      ? piecesToFeed(whole, guillotine.overs.runningPct, guillotine.overs.setupSheets)
      : whole;
  const placed = layout.blocks.map((block, i): PlacedSection => {
    const section = sections[i % sections.length];
    return { block, signature: section?.name ?? '', part: job.part.name, readerPages: section?.pages ?? [] };
  });
  const cells = sectionCells(layout, placed, want.choice.way.turn, want.book.shiftMm);
  const print = addSheet(draft, job, want.choice, {
    number,
    area,
    cells,
    copiesUp,
    goodSheets,
    next: divided ? 'cut' : 'fold',
  });
  if ('severity' in print) return print;
  const sheet = draft.sheets.at(-1);
  if (sheet === undefined) return 'nothing was printed';
  let feed: PlanStep = print;
  let edges = new Map([[blockName(name, 0, divided), ['gripper', 'lay']]]);
  if (divided && guillotine !== null) {
    const waits = dryingWaits(job, want.choice.press);
    const cut = addCutting(draft, job, {
      guillotine,
      sheet,
      pieces: layout.blocks.map((block, i) => ({ ...block, name: blockName(name, i, true) })),
      trimmed: false,
      print,
      outAmount: foldIn * sections.length,
      unit: 'blocks',
      waitAfterS: Math.max(0, waits.foldS - waits.cutS),
    });
    if (typeof cut === 'string') return cut;
    feed = cut.step;
    edges = new Map(cut.programme.piles.map((p) => [p.name, [p.edges.lower, p.edges.left]]));
  }
  const axis = grainAxis(area.sheetWidthMm, area.sheetHeightMm, job.part.stock.grain);
  for (const section of sections) {
    const repeat = steps.size > 0;
    steps.set(section.name, addFoldStep(draft, want, section, feed, foldIn, repeat));
  }
  layout.blocks.forEach((block, i) => {
    const section = sections[i % sections.length];
    if (section === undefined) return;
    const own = blockName(name, i, divided);
    const planBlock: PlanBlock = {
      name: own,
      sheet: name,
      xMm: block.xMm,
      yMm: block.yMm,
      widthMm: block.widthMm,
      heightMm: block.heightMm,
      signature: section.name,
      layEdges: edges.get(own) ?? [],
      grain: grainOfPiece(block.widthMm, block.heightMm, axis),
      next: steps.get(section.name)?.id ?? null,
    };
    draft.blocks.push(planBlock);
    const back = oppositeRotation(layout.rotation);
    const upright = back === 90 || back === 270;
    draft.folding.push({
      signature: section.name,
      block: own,
      startSide: 'front',
      startRotationDeg: back,
      sheetInMm: upright ? [block.heightMm, block.widthMm] : [block.widthMm, block.heightMm],
      ...(layout.lipOn === null ? {} : { lipMm: layout.lipMm, lipOn: layout.lipOn }),
      folds: setting.folds,
    });
  });
  return null;
}

const blockName = (sheet: string, index: number, divided: boolean): string =>
  divided ? `${sheet}-${index + 1}` : sheet;

function addFoldStep(
  draft: Draft,
  want: GroupWant,
  section: NamedSection,
  feed: PlanStep,
  foldIn: number,
  repeat: boolean,
): PlanStep {
  const { setting } = want.foldable;
  const { folder } = setting;
  const id = `fold-${draft.steps.filter((s) => s.types.includes('Folding')).length + 1}`;
  draft.overs.push({ step: id, ...folder.overs });
  return addStep(draft, {
    id,
    types: setting.creased ? ['Creasing', 'Folding'] : ['Folding'],
    device: folder.id,
    signature: section.name,
    setupS: repeat ? Math.min(folder.repeatSetupS, setting.setupS) : setting.setupS,
    runS: Math.round(((foldIn - folder.overs.setupSheets) / setting.sheetsPerHour) * 3600),
    inAmount: foldIn,
    inUnit: feed.unit,
    outAmount: want.book.sets,
    unit: 'signatures',
    inputs: [{ from: feed.id, amount: foldIn, unit: feed.unit }],
  });
}
