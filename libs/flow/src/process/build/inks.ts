import type { Plan } from '#libs/craft';
import { element } from '#libs/jdf';
import type { ResourceDraft } from '../process-type.js';
import { inksOf } from './lookup.js';

/** The name of the ink in the stock item `SET/INK`. */
export function inkOf(item: string): string {
  return item.slice(item.lastIndexOf('/') + 1);
}

/** The inks of the job, one leaf for each separation; amounts in kilograms, as the books keep them. */
export function inks(plan: Plan): ResourceDraft {
  return {
    key: 'inks',
    name: 'Ink',
    class: 'Consumable',
    shared: true,
    attributes: { PartIDKeys: 'Separation', Unit: 'kg' },
    children: inksOf(plan).map((ink) => element('Ink', { Separation: ink, InkName: ink })),
  };
}
