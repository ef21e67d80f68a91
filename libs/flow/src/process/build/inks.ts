import type { Plan, PlanSheet } from '#libs/craft';
import { element } from '#libs/jdf';
import type { ResourceDraft } from '../process-type.js';
import { inkKey, inksOf } from './lookup.js';

/** The name of the ink in the stock item `SET/INK`. */
export function inkOf(item: string): string {
  return item.slice(item.lastIndexOf('/') + 1);
}

/** The inks of some sheets of the job, one leaf for each separation; amounts in kilograms, as the books keep them. */
export function inks(plan: Plan, sheets: readonly PlanSheet[]): ResourceDraft {
  return {
    key: inkKey(plan, sheets, 'inks'),
    name: 'Ink',
    class: 'Consumable',
    shared: true,
    attributes: { PartIDKeys: 'Separation', Unit: 'kg' },
    children: inksOf(plan, sheets).map((ink) => element('Ink', { Separation: ink, InkName: ink })),
  };
}
