import type { Plan, PlanStep } from '#libs/craft';
import { element } from '#libs/jdf';
import type { PartKeys, ResourceDraft, StepScope } from '../process-type.js';
import { pagesBefore, platesOf, sheetsOf } from './lookup.js';
import { distinct, sideKey } from './values.js';

/** The pages as supplied. Without an address they are taken in at the workstation, and the ticket says Incomplete. */
export function documentPages({ plan, files }: StepScope): ResourceDraft {
  const pages = pagesBefore(plan, 'cover') + (plan.product.cover?.pages ?? 0);
  return {
    key: 'pages',
    name: 'RunList',
    class: 'Parameter',
    shared: false,
    status: files.length === 0 ? 'Incomplete' : 'Available',
    attributes: {
      NPage: pages,
      Pages: files.length === 1 ? `0 ~ ${pages - 1}` : undefined,
      PartIDKeys: files.length > 1 ? 'Run' : undefined,
    },
    children:
      files.length > 1
        ? files.map((url, at) => element('RunList', { Run: String(at + 1) }, [source(url)]))
        : files.map(source),
  };
}

const source = (url: string) => element('LayoutElement', {}, [element('FileSpec', { URL: url })]);

/** Which parts of a partitioned thing belong to a step: its sheet, and its side where the sides differ. */
export function partsOf(plan: Plan, step: PlanStep): readonly PartKeys[] {
  if (step.sheet === undefined) return [];
  const plates = platesOf(plan, step);
  const sides = distinct(plates.map((plate) => plate.side));
  const all = distinct(plan.plateList.filter((p) => p.sheet === step.sheet).map((plate) => plate.side));
  const SheetName = step.sheet;
  return sides.length === all.length ? [{ SheetName }] : sides.map((s) => ({ SheetName, Side: sideKey(s) }));
}

/** Partition of a RunList of separations: one leaf for each side of each sheet, NPage its separations. */
export function separationRuns(plan: Plan, step: PlanStep): Pick<ResourceDraft, 'attributes' | 'children'> {
  return {
    attributes: { PartIDKeys: 'SheetName Side' },
    children: sheetsOf(plan, step).map((sheet) => {
      const plates = plan.plateList.filter((plate) => plate.sheet === sheet.name);
      const sides = distinct(plates.map((plate) => plate.side));
      return element(
        'RunList',
        { SheetName: sheet.name },
        sides.map((side) =>
          element('RunList', {
            Side: sideKey(side),
            NPage: plates.filter((plate) => plate.side === side).length,
          }),
        ),
      );
    }),
  };
}
