import { type Problem, piecesToFeed } from '#libs/kernel';
import { type FlatLayout, flatCells, flatLayouts } from '../layouts/flat-form.js';
import { grainAxis, grainOfPiece } from '../paper/paper.js';
import type { PlanBinding } from '../plan.js';
import { addSheet } from './add-sheet.js';
import type { Found } from './candidate.js';
import { addCutting, guillotineFor } from './cut-step.js';
import { caution, type Draft, newDraft } from './draft.js';
import type { Job } from './job.js';
import { addPrepress, settlePrepress } from './prepress.js';
import { type PressChoice, pressChoices } from './press-choice.js';
import { draftPrice } from './totals.js';

const signature = 'flat';

const binding: PlanBinding = {
  kind: 'None',
  signatureOrder: [signature],
  trim: { headMm: 0, footMm: 0, faceMm: 0 },
};

function complete(job: Job, choice: PressChoice, layout: FlatLayout): Draft | Problem | string {
  const { area } = layout;
  const up = layout.pieces.length;
  const guillotine = guillotineFor(job.plant, Math.max(area.sheetWidthMm, area.sheetHeightMm));
  if (guillotine === null) return 'no guillotine takes the sheet';
  const held = job.previousOnPress?.press === choice.press.id ? job.previousOnPress : null;
  const draft = newDraft(held);
  addPrepress(draft, job);
  const sheets = Math.ceil(job.order.quantity / up);
  const goodSheets = piecesToFeed(sheets, guillotine.overs.runningPct, guillotine.overs.setupSheets);
  const print = addSheet(draft, job, choice, {
    number: 1,
    area,
    cells: flatCells(layout, job.order.pages, choice.way.turn, signature),
    copiesUp: up,
    goodSheets,
    next: 'cut',
  });
  if ('severity' in print) return print;
  const sheet = draft.sheets[0];
  if (sheet === undefined) return 'nothing was printed';
  const pieces = layout.pieces.map((piece, i) => ({
    ...piece,
    name: `S1-${i + 1}`,
    column: i % layout.columns,
    row: Math.floor(i / layout.columns),
  }));
  const cut = addCutting(draft, job, {
    guillotine,
    sheet,
    pieces,
    trimmed: true,
    print,
    outAmount: job.order.quantity,
    unit: 'copies',
    waitAfterS: 0,
  });
  if (typeof cut === 'string') return cut;
  const axis = grainAxis(area.sheetWidthMm, area.sheetHeightMm, job.stock.grain);
  draft.blocks.push(
    ...pieces.map(({ name, xMm, yMm, widthMm, heightMm }) => ({
      name,
      sheet: 'S1',
      xMm,
      yMm,
      widthMm,
      heightMm,
      signature,
      layEdges: [],
      grain: grainOfPiece(widthMm, heightMm, axis),
      next: null,
    })),
  );
  const pages = Array.from({ length: job.order.pages }, (_, i) => i + 1);
  draft.signatures.push({ name: signature, part: 'body', pages, foldCatalog: 'F2-1', creepMm: 0 });
  settlePrepress(draft, job);
  if (sheet.makereadySheets > sheet.goodSheets) {
    caution(
      draft,
      `Setting up takes ${sheet.makereadySheets} sheets for ${sheet.goodSheets} good ones: run it together with another job on this stock if one is waiting.`,
    );
  }
  return draft;
}

/** All complete ways to make flat work of one or two pages: presses, sheet orientations, pieces upright or turned. */
export function flatWays(job: Job): Found | Problem {
  const found: Found = { candidates: [], reasons: [] };
  const { choices, reasons } = pressChoices(job);
  found.reasons.push(...reasons);
  for (const choice of choices) {
    const layouts = choice.areas.flatMap((area) =>
      flatLayouts({
        area,
        trimWidthMm: job.order.trimWidthMm,
        trimHeightMm: job.order.trimHeightMm,
        bleedMm: job.bleedMm,
        minBleedMm: job.plant.defaults.minBleedMm,
      }),
    );
    if (layouts.length === 0) {
      const { sheetWidthMm: w, sheetHeightMm: h } = job.stock;
      found.reasons.push({
        path: '/trimWidthMm',
        text: `${job.order.trimWidthMm} × ${job.order.trimHeightMm} mm with bleed does not fit the printable area of a sheet of ${w} × ${h} mm on ${choice.press.name}`,
      });
    }
    for (const layout of layouts) {
      const draft = complete(job, choice, layout);
      if (typeof draft === 'string') found.reasons.push({ path: '/trimWidthMm', text: draft });
      else if ('severity' in draft) return draft;
      else {
        found.candidates.push({
          what: `${choice.press.name}, ${layout.columns} × ${layout.rows} up${layout.rotation === 0 ? '' : ', turned'}`,
          draft,
          binding,
          price: draftPrice(job, draft),
        });
      }
    }
  }
  return found;
}
