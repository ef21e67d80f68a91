import type { Plan } from '#libs/craft';
import { element } from '#libs/jdf';
import type { ResourceDraft } from '../process-type.js';
import { inksOf } from './lookup.js';
import { distinct, processInkCmyk } from './values.js';

/** The separations of the job: which are printed, which of them are spot colours, and in which order they are laid down. */
export function colorantControl(plan: Plan): ResourceDraft {
  const inks = inksOf(plan);
  const spots = inks.filter((ink) => processInkCmyk(ink) === undefined);
  const laidDown = distinct(
    plan.sheets.flatMap((sheet) => [...sheet.units].sort((a, b) => a.unit - b.unit).map(({ ink }) => ink)),
  );
  const list = (name: string, names: readonly string[]) =>
    names.length === 0
      ? []
      : [
          element(
            name,
            {},
            names.map((Name) => element('SeparationSpec', { Name })),
          ),
        ];
  return {
    key: 'colorants',
    name: 'ColorantControl',
    class: 'Parameter',
    shared: true,
    attributes: { ProcessColorModel: spots.length < inks.length ? 'DeviceCMYK' : undefined },
    children: [
      ...list('ColorantParams', spots),
      ...list('ColorantOrder', inks),
      ...list('DeviceColorantOrder', laidDown),
      element(
        'ColorPool',
        {},
        inks.map((Name) => element('Color', { Name, CMYK: processInkCmyk(Name) })),
      ),
    ],
  };
}
