import type { Plan } from '#libs/craft';
import { bookletPlan } from '../../../../../test/kit/booklet-plan.js';
import { coveredPlan, versionsPlan } from '../../../../../test/kit/planned-jobs.js';
import { smallPlant } from '../../../../../test/kit/small-plant.js';
import { useItems } from './use-items.js';

/** The booklet printed sheetwise on the other press: one side a pass, with fewer inks on the back. */
function twoPasses(): Plan {
  const plan = bookletPlan();
  const sheet = {
    ...plan.sheets[0]!,
    press: 'press-half',
    workStyle: 'WorkAndBack' as const,
    turn: 'sideways' as const,
    units: plan.sheets[0]!.units.filter((unit) => unit.side === 'front' || unit.ink === 'Black'),
  };
  const print = plan.steps.find((step) => step.id === 'print-1')!;
  return {
    ...plan,
    sheets: [sheet],
    steps: plan.steps.flatMap((step) =>
      step === print
        ? [
            { ...print, id: 'print-1-front', side: 'front' as const, pass: 1 },
            { ...print, id: 'print-1-back', side: 'back' as const, pass: 2, after: ['print-1-front'] },
          ]
        : [step],
    ),
    plateList: plan.plateList.filter((plate) => plate.side === 'front' || plate.ink === 'Black'),
  };
}

const of = (plan: Plan, unit: string) => useItems(plan, smallPlant).filter((use) => use.unit === unit);

describe('what a plan uses up', () => {
  it('is the paper of each sheet, with its first pass', () => {
    expect(of(bookletPlan(), 'sheets')).toEqual([
      { stepId: 'print-1', item: 'silk-115', unit: 'sheets', planned: 436 },
    ]);
    expect(of(twoPasses(), 'sheets')).toEqual([
      { stepId: 'print-1-front', item: 'silk-115', unit: 'sheets', planned: 436 },
    ]);
  });

  it('is plates of the kind that the press takes', () => {
    expect(of(bookletPlan(), 'plates')).toEqual([
      { stepId: 'plates-1', item: 'plate-full', unit: 'plates', planned: 8 },
    ]);
    expect(of(twoPasses(), 'plates')).toMatchObject([{ item: 'plate-half', planned: 5 }]);
  });

  it('is ink from the set of the press, in kilograms', () => {
    expect(of(bookletPlan(), 'kg').map(({ item, planned }) => [item, planned])).toEqual([
      ['instant/Cyan', 0.3],
      ['instant/Magenta', 0.3],
      ['instant/Yellow', 0.3],
      ['instant/Black', 0.4],
    ]);
  });

  it('is that of the sheet where parts of a job share an ink', () => {
    const plan = coveredPlan();
    const used = of(plan, 'kg').filter(({ item }) => item.endsWith('/Black'));
    const [body, cover] = plan.sheets.map((sheet) => (sheet.inkG?.Black ?? 0) / 1000);
    expect(used.map(({ stepId, planned }) => [stepId, planned])).toEqual([
      ['print-1', expect.closeTo(body!, 6)],
      ['print-2', expect.closeTo(cover!, 6)],
    ]);
    expect(body! + cover!).toBeCloseTo(plan.totals.inkG.Black! / 1000, 3);
  });

  it('counts inks whose plates hang since the version before', () => {
    const plan = versionsPlan('two forms');
    const inks = of(plan, 'kg').map(({ stepId, item }) => `${stepId} ${item.split('/')[1]}`);
    for (const sheet of plan.sheets) {
      for (const { ink } of sheet.units) expect(inks).toContain(`print-${sheet.name.slice(1)} ${ink}`);
    }
  });

  it('shares an ink among the passes that carry it', () => {
    const black = of(twoPasses(), 'kg').filter(({ item }) => item === 'conventional/Black');
    expect(black.map(({ stepId, planned }) => [stepId, planned])).toEqual([
      ['print-1-front', 0.2],
      ['print-1-back', 0.2],
    ]);
    expect(of(twoPasses(), 'kg').filter(({ item }) => item === 'conventional/Cyan')).toMatchObject([
      { stepId: 'print-1-front', planned: 0.3 },
    ]);
  });
});
