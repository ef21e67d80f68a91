import { devicesOf, type Plan, type PlanSheet, type Plant } from '#libs/craft';
import type { ResourceDraft } from '../process-type.js';
import { points, shortText } from './values.js';

/** The paper of a sheet as it is fed: Dimension in points (x along the gripper edge), Weight in g/m², Thickness in µm. */
export function paper(plan: Plan, sheet: PlanSheet, plant: Plant | null): ResourceDraft {
  const part = plan.product.cover?.stock === sheet.stock ? plan.product.cover : plan.product;
  const stock = plant?.stocks.find((row) => row.id === sheet.stock);
  const alongX =
    sheet.grain === 'long'
      ? sheet.sheetWidthMm >= sheet.sheetHeightMm
      : sheet.sheetWidthMm < sheet.sheetHeightMm;
  return {
    key: `paper-${sheet.stock}-${sheet.sheetWidthMm}x${sheet.sheetHeightMm}`,
    name: 'Media',
    class: 'Consumable',
    shared: true,
    attributes: {
      MediaType: 'Paper',
      MediaUnit: 'Sheet',
      Unit: 'sheets',
      ProductID: shortText(sheet.stock),
      DescriptiveName: stock?.name,
      Dimension: points(sheet.sheetWidthMm, sheet.sheetHeightMm),
      Weight: part.stockGsm,
      Thickness: part.stockCaliperUm,
      GrainDirection: alongX ? 'XDirection' : 'YDirection',
    },
  };
}

/** Unexposed plates of a press. Their size is the plant's to know. */
export function plateMedia(press: string, plant: Plant | null): ResourceDraft {
  const definition = plant && devicesOf(plant, 'press').find((device) => device.id === press);
  const plate = plant?.plates.find((row) => row.id === definition?.plate);
  return {
    key: `plate-${plate?.id ?? press}`,
    name: 'Media',
    class: 'Consumable',
    shared: true,
    attributes: {
      MediaType: 'Plate',
      MediaUnit: 'Sheet',
      Unit: 'plates',
      ProductID: plate && shortText(plate.id),
      Dimension: plate && points(plate.widthMm, plate.heightMm),
    },
  };
}
