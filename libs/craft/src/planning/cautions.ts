import type { Stock } from '../plant.js';
import { devicesOf, type PressDefinition } from '../plant.js';
import { caution, type Draft } from './draft.js';
import type { Job } from './job.js';

/**
 * Usual cautions for the machines that a plan sends work to. General only: the machine's manual, local rules and trained
 * people come first (after the handbook's safety sheet, reworded).
 */
const machineCautions: Record<string, string> = {
  guillotine:
    'Guillotine: trained people only. Try the light barrier and the two-hand release at the start of the shift; never reach under knife or clamp. The manual and local rules come first.',
  folder:
    'Folder: stop and isolate it before clearing a jam; keep hands, hair and sleeves off the rollers. The manual and local rules come first.',
  stitcher:
    'Stitcher: guards closed while it runs; isolate it before reaching the heads or the trimmer knives. The manual and local rules come first.',
};

const curingCautions: Record<PressDefinition['curing'], string> = {
  instant:
    'Press: ink that is not cured yet irritates the skin; wear gloves, and keep hands off rollers in motion while washing. Do not look into the lamps. The safety data sheets and local rules come first.',
  none: 'Press: wear gloves and air the room when washing with solvent, keep wipes in a closed bin, and keep hands off rollers in motion. The safety data sheets and local rules come first.',
};

function pressCaution(draft: Draft, press: PressDefinition): void {
  caution(draft, curingCautions[press.curing]);
}

/** Cautions that follow from the machines used, the assumed ink and the stock on hand. */
export function addCautions(draft: Draft, job: Job): void {
  const used = new Set(draft.steps.map((step) => step.device));
  for (const device of job.plant.devices.filter((d) => used.has(d.id))) {
    if (device.kind === 'press') pressCaution(draft, device);
    const text = machineCautions[device.kind];
    if (text !== undefined) caution(draft, text);
  }
  caution(
    draft,
    `Ink is worked out from an assumed coverage of ${job.plant.defaults.assumedCoveragePct} % of every page and ink, not from the pages themselves.`,
  );
  const stocks = new Map(
    [job.body, ...(job.cover === null ? [] : [job.cover])].map((p) => [p.stock.id, p.stock]),
  );
  for (const stock of stocks.values()) stockCaution(draft, stock);
  for (const lift of draft.lifts) {
    const guillotine = devicesOf(job.plant, 'guillotine').find((d) => used.has(d.id));
    if (guillotine !== undefined && lift.kg > guillotine.handLiftMaxKg) {
      const hands = Math.ceil(lift.kg / guillotine.handLiftMaxKg);
      caution(
        draft,
        `A lift of ${lift.sheet} weighs ${lift.kg.toFixed(0)} kg: load it in ${hands} parts of ${guillotine.handLiftMaxKg} kg at most, or with a lifting aid.`,
      );
    }
  }
}

function stockCaution(draft: Draft, stock: Stock): void {
  const needed = draft.sheets
    .filter((sheet) => sheet.stock === stock.id)
    .reduce((sum, sheet) => sum + sheet.sheetsToPress, 0);
  if (needed > stock.onHand) {
    caution(
      draft,
      `The store has ${stock.onHand} sheets of ${stock.name} by the plant definition, the job needs ${needed}: order or move paper first.`,
    );
  }
}
