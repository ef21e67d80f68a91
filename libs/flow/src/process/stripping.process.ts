import type { Plan, PlanSheet } from '#libs/craft';
import { element, type XmlElement } from '#libs/jdf';
import { assembly } from './build/assembly.js';
import { type Place, patternsOf } from './build/bindery-signatures.js';
import { layout } from './build/layout.js';
import { paper, plateMedia } from './build/media.js';
import { distinct, points, token } from './build/values.js';
import type { ProcessType, ResourceDraft, StepScope } from './process-type.js';

/** Turns bindery signatures and their places into the layout of each sheet. */
export const stripping: ProcessType = {
  name: 'Stripping',
  takes: () => undefined,
  makes: null,
  resources: (scope) => [
    { resource: strippingParams(scope), usage: 'Input' },
    { resource: assembly(scope.plan), usage: 'Input' },
    { resource: layout(scope.plan), usage: 'Output' },
  ],
  checks: () => [],
};

function strippingParams({ plan, plant, idOf }: StepScope): ResourceDraft {
  const media = distinct(plan.sheets).map((sheet) => [
    paper(plan, sheet, plant),
    plateMedia(sheet.press, plant),
  ]);
  return {
    key: 'stripping',
    name: 'StrippingParams',
    class: 'Parameter',
    shared: false,
    attributes: { PartIDKeys: 'SheetName BinderySignatureName' },
    children: plan.sheets.map((sheet, at) =>
      element('StrippingParams', { SheetName: sheet.name, WorkStyle: sheet.workStyle }, [
        ...media[at]!.map(({ key }) => element('MediaRef', { rRef: idOf(key) })),
        ...patternsOf(plan, sheet).map((pattern, n) =>
          element('StrippingParams', leaf(plan, pattern.places, n), [
            pattern.element,
            ...pattern.places.map(position),
            cellParams(plan, sheet, pattern.places),
          ]),
        ),
      ]),
    ),
    refs: media.flat(),
  };
}

function leaf(plan: Plan, places: readonly Place[], at: number): Record<string, string | undefined> {
  const signatures = distinct(places.map((place) => place.signature)).filter((name) =>
    plan.binding.signatureOrder.includes(name),
  );
  return {
    BinderySignatureName: `B${at + 1}`,
    AssemblyIDs: signatures.length > 0 ? signatures.map(token).join(' ') : undefined,
  };
}

function position(place: Place): XmlElement {
  const { xMm, yMm, widthMm, heightMm } = place;
  return element('Position', { AbsoluteBox: points(xMm, yMm, xMm + widthMm, yMm + heightMm) });
}

function isEven(sheet: PlanSheet, signatures: readonly string[]): boolean {
  const cells = [...sheet.front, ...sheet.back].filter((cell) => signatures.includes(cell.signature));
  const sizes = cells.map((cell) => [cell.widthMm, cell.heightMm].sort((a, b) => a - b).join());
  return new Set(sizes).size <= 1;
}

function cellParams(plan: Plan, sheet: PlanSheet, places: readonly Place[]): XmlElement {
  const { headMm, footMm, faceMm } = plan.binding.trim;
  const names = places.map((place) => place.signature);
  const folding = plan.folding.find((row) => names.includes(row.signature));
  const cover = plan.signatures.some((row) => row.part === 'cover' && names.includes(row.name));
  const part = cover ? (plan.product.cover ?? plan.product) : plan.product;
  const bound = plan.binding.kind !== 'None';
  const lip = folding?.lipMm === undefined ? undefined : points(folding.lipMm);
  return element('StripCellParams', {
    // Panels of a leaflet that is wrapped differ; one size would be wrong for some of them.
    TrimSize: isEven(sheet, names) ? points(part.trimWidthMm, part.trimHeightMm) : undefined,
    BleedHead: points(sheet.bleedMm),
    BleedFoot: points(sheet.bleedMm),
    BleedFace: points(sheet.bleedMm),
    BleedSpine: points(bound ? 0 : sheet.bleedMm),
    TrimHead: points(headMm),
    TrimFoot: points(footMm),
    TrimFace: points(faceMm),
    FrontOverfold: folding?.lipOn === 'low' ? lip : undefined,
    BackOverfold: folding?.lipOn === 'high' ? lip : undefined,
  });
}
