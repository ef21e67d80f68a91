import type { Plan, PlanSheet } from '#libs/craft';
import { element } from '#libs/jdf';
import type { ResourceDraft } from '../process-type.js';
import { inkKey, inksOf } from './lookup.js';
import { distinct, processInkCmyk } from './values.js';

/**
 * The separations of some sheets of the job, all of them where none are named: which are printed, which of them are spot
 * colours, and in which order they are laid down. Sheets with all inks of the job share one resource.
 */
export function colorantControl(plan: Plan, sheets: readonly PlanSheet[] = plan.sheets): ResourceDraft {
  const inks = inksOf(plan, sheets);
  const key = inkKey(plan, sheets, 'colorants');
  const sharing = plan.sheets.filter((sheet) => inkKey(plan, [sheet], 'colorants') === key);
  const spots = inks.filter((ink) => processInkCmyk(ink) === undefined);
  const laidDown = distinct(
    (sharing.length > 0 ? sharing : sheets).flatMap((sheet) =>
      [...sheet.units].sort((a, b) => a.unit - b.unit).map(({ ink }) => ink),
    ),
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
    key,
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
