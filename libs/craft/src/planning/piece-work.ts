import { type Problem, piecesToFeed } from '#libs/kernel';
import type { PieceForm } from '../layouts/piece-form.js';
import { type PieceLayout, pieceCells, pieceLayouts } from '../layouts/place-pieces.js';
import { grainAxis, grainOfPiece } from '../paper/paper.js';
import type { PlanStep } from '../plan.js';
import { addSheet, type SheetVersion } from './add-sheet.js';
import { addCutting, guillotineFor } from './cut-step.js';
import { type Draft, newDraft } from './draft.js';
import type { PartJob, Reason } from './job.js';
import { type PressChoice, pressChoices } from './press-choice.js';
import { draftPrice } from './totals.js';
import { dryingWaits } from './waits.js';

/** What a piece is: its part and signature, and what is written on its pile where piles must be told apart. */
export interface PieceNames {
  part: string;
  signature: string;
  pileLabel?: string;
}

/** What is wanted of pieces that are cut out of the sheet on all four sides. */
export interface PieceWork {
  form: PieceForm;
  /** Name of the signature that each piece is or becomes. */
  signature: string;
  /** Pieces that the next step takes in, or that are delivered. */
  needed: number;
  unit: 'copies' | 'blocks';
  /** Id of the step that takes them; null where they are finished. */
  next: string | null;
  /** Fibres along the fold count more than the price. */
  grainFirst: boolean;
  /** Good sheets to be cut, and what each place of the layout holds; left out: one kind, as many as are needed. */
  share?: { sheets: number; names: readonly PieceNames[] };
  /** Plates of these inks are the version's own; those of the others are used again if they hang already. */
  version?: SheetVersion;
}

/** One press and layout for pieces. */
export interface PieceWay {
  choice: PressChoice;
  layout: PieceLayout;
  /** A piece that is folded would have its fold across the grain. */
  acrossGrain: boolean;
  /** Price of printing and cutting alone. */
  amount: number;
  what: string;
}

/** Adds printing and cutting of pieces; returns the cutting step, a problem of the plant, or why it cannot be. */
export function addPieces(
  draft: Draft,
  job: PartJob,
  way: Pick<PieceWay, 'choice' | 'layout'>,
  work: PieceWork,
): PlanStep | Problem | string {
  const { choice, layout } = way;
  const { area } = layout;
  const { part } = job;
  const up = layout.pieces.length;
  const number = draft.sheets.length + 1;
  const guillotine = guillotineFor(job.plant, Math.max(area.sheetWidthMm, area.sheetHeightMm));
  if (guillotine === null) return 'no guillotine takes the sheet';
  const sides = { front: true, back: part.inksBack.length > 0 };
  const nameOf = (i: number): PieceNames =>
    work.share?.names[i] ?? { part: part.name, signature: work.signature };
  const print = addSheet(draft, job, choice, {
    number,
    area,
    cells: pieceCells(layout, choice.way.turn, nameOf, sides),
    copiesUp: up,
    goodSheets: piecesToFeed(
      work.share?.sheets ?? Math.ceil(work.needed / up),
      guillotine.overs.runningPct,
      guillotine.overs.setupSheets,
    ),
    next: 'cut',
    ...(work.version === undefined ? {} : { version: work.version }),
  });
  if ('severity' in print) return print;
  const sheet = draft.sheets.at(-1);
  if (sheet === undefined) return 'nothing was printed';
  const waits = dryingWaits(job, choice.press);
  const pieces = layout.pieces.map((piece, i) => ({ ...piece, name: `${sheet.name}-${i + 1}` }));
  const cut = addCutting(draft, job, {
    guillotine,
    sheet,
    pieces,
    trimmed: true,
    print,
    outAmount: work.needed,
    unit: work.unit,
    // What is folded next must be drier than what is only cut.
    waitAfterS: work.form.grain === null ? 0 : Math.max(0, waits.foldS - waits.cutS),
  });
  if (typeof cut === 'string') return cut;
  const axis = grainAxis(area.sheetWidthMm, area.sheetHeightMm, part.stock.grain);
  draft.blocks.push(
    ...pieces.map(({ name, xMm, yMm, widthMm, heightMm }, i) => ({
      name,
      sheet: sheet.name,
      xMm,
      yMm,
      widthMm,
      heightMm,
      signature: nameOf(i).signature,
      layEdges: [],
      grain: grainOfPiece(widthMm, heightMm, axis),
      next: work.next,
      ...(nameOf(i).pileLabel === undefined ? {} : { pileLabel: nameOf(i).pileLabel }),
    })),
  );
  return cut.step;
}

function acrossGrain(job: PartJob, layout: PieceLayout): boolean {
  const { form, area, rotation } = layout;
  if (form.grain === null) return false;
  const upright = rotation === 0 || rotation === 180;
  const wanted = upright ? form.grain : form.grain === 'x' ? 'y' : 'x';
  return grainAxis(area.sheetWidthMm, area.sheetHeightMm, job.part.stock.grain) !== wanted;
}

/** All presses and layouts that can make the pieces: with the grain first where that is wanted, then by price. */
export function pieceWays(job: PartJob, work: PieceWork): { ways: PieceWay[]; reasons: Reason[] } | Problem {
  const { choices, reasons } = pressChoices(job);
  const ways: PieceWay[] = [];
  for (const choice of choices) {
    const layouts = choice.areas.flatMap((area) =>
      pieceLayouts({
        form: work.form,
        area,
        bleedMm: job.bleedMm,
        minBleedMm: job.plant.defaults.minBleedMm,
      }),
    );
    if (layouts.length === 0) reasons.push(doesNotFit(job, work.form, choice));
    for (const layout of layouts) {
      const draft = newDraft(job.held);
      const made = addPieces(draft, job, { choice, layout }, work);
      if (typeof made === 'string') reasons.push({ path: '/trimWidthMm', text: made });
      else if ('severity' in made) return made;
      else {
        const turned = layout.rotation === 0 ? '' : ', turned';
        ways.push({
          choice,
          layout,
          acrossGrain: acrossGrain(job, layout),
          amount: draftPrice(job, draft).amount,
          what: `${choice.press.name}, ${layout.columns} × ${layout.rows} up${turned}`,
        });
      }
    }
  }
  const rank = (way: PieceWay): number => (work.grainFirst ? Number(way.acrossGrain) : 0);
  const sorted = ways.toSorted((a, b) => rank(a) - rank(b) || a.amount - b.amount);
  return { ways: sorted, reasons };
}

function doesNotFit(job: PartJob, form: PieceForm, choice: PressChoice): Reason {
  const { sheetWidthMm: w, sheetHeightMm: h } = job.part.stock;
  return {
    path: '/trimWidthMm',
    text: `${form.widthMm} × ${form.heightMm} mm with bleed does not fit the printable area of a sheet of ${w} × ${h} mm on ${choice.press.name}`,
  };
}
