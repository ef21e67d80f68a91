import type { Plan, PlanStep } from '#libs/craft';
import { element, type XmlElement } from '#libs/jdf';
import type { ResourceDraft, StepScope } from '../process-type.js';
import { platesOf, sheetsOf } from './lookup.js';
import { plateMedia } from './media.js';
import { distinct, sideKey, token } from './values.js';

/** The plates that a step images: one leaf for each sheet, side, separation and, where there are versions, version. */
export function exposedPlates(scope: StepScope): Pick<ResourceDraft, 'attributes' | 'children' | 'refs'> {
  const { plan, step, plant, idOf } = scope;
  const versions = platesOf(plan, step).some((plate) => plate.version !== '');
  const media = distinct(sheetsOf(plan, step).map((sheet) => sheet.press)).map((press) =>
    plateMedia(press, plant),
  );
  return {
    attributes: {
      PartIDKeys: `SheetName Side Separation${versions ? ' PartVersion' : ''}`,
      PlateType: 'Exposed',
    },
    children: [
      ...(media.length === 1 ? [element('MediaRef', { rRef: idOf(media[0]!.key) })] : []),
      ...sheetsOf(plan, step).map((sheet) => sheetLeaf(plan, step, sheet.name, versions)),
    ],
    refs: media.length === 1 ? media : [],
  };
}

function sheetLeaf(plan: Plan, step: PlanStep, sheet: string, versions: boolean): XmlElement {
  const plates = platesOf(plan, step).filter((plate) => plate.sheet === sheet);
  const sides = distinct(plates.map((plate) => plate.side));
  return element(
    'ExposedMedia',
    { SheetName: sheet },
    sides.map((side) => {
      const own = plates.filter((plate) => plate.side === side);
      const leaves = distinct(own.map((plate) => plate.ink)).map((ink) => {
        const same = own.filter((plate) => plate.ink === ink);
        if (!versions) return element('ExposedMedia', { Separation: ink, ProductID: token(same[0]!.id) });
        return element(
          'ExposedMedia',
          { Separation: ink },
          same.map((plate) =>
            element('ExposedMedia', { PartVersion: plate.version || 'all', ProductID: token(plate.id) }),
          ),
        );
      });
      return element('ExposedMedia', { Side: sideKey(side) }, leaves);
    }),
  );
}
