import type { Plan, PlanStep, Rotation } from '#libs/craft';
import { attributeOf, descendants, type XmlElement } from '#libs/jdf';
import { bookletPlan, cardPlan } from '../../../../test/kit/booklet-plan.js';
import { sectionsPlan } from '../../../../test/kit/sections-plan.js';
import { cutLines } from './build/cut-lines.js';
import { layout } from './build/layout.js';
import { folding } from './folding.process.js';
import { checkProcesses, checkSteps, processes, processNames, resourceNameOf } from './index.js';
import type { StepScope } from './process-type.js';
import { stitching } from './stitching.process.js';
import { stripping } from './stripping.process.js';
import { trimming } from './trimming.process.js';

const scope = (plan: Plan, id: string): StepScope => ({
  plan,
  step: plan.steps.find((step) => step.id === id)!,
  plant: null,
  uses: [],
  files: [],
  idOf: (key) => key,
});
const named = (elements: readonly XmlElement[], local: string): XmlElement[] =>
  elements.flatMap((el) => [...descendants(el)]).filter((el) => el.local === local);
const values = (elements: readonly XmlElement[], name: string) => elements.map((el) => attributeOf(el, name));

describe('the registry of processes', () => {
  it('has every process that a step may name once', () => {
    expect(processes.map(({ name }) => name).toSorted()).toEqual([...processNames].toSorted());
    expect(() => checkProcesses()).not.toThrow();
  });

  it('refuses to start with one missing or doubled', () => {
    expect(() => checkProcesses(processes.slice(1))).toThrow('Stripping');
    expect(() => checkProcesses([...processes, processes[0]!])).toThrow('twice');
  });

  it('names what a step makes by its last process', () => {
    expect(bookletPlan().steps.map(resourceNameOf)).toEqual([
      'RunList',
      'ExposedMedia',
      'Component',
      'Component',
      'Component',
    ]);
  });

  it('does not know a process that no plan has', () => {
    const step: PlanStep = { ...bookletPlan().steps[0]!, types: ['Laminating'] };
    expect(() => resourceNameOf(step)).toThrow('Laminating');
  });
});

describe('stripping', () => {
  // Source: the standard's sample processes/strippingComplexExample.jdf, BinderySignature B2x4.
  it('lists the pages of a 16-page section as the official sample does', () => {
    const [params] = stripping.resources(scope(bookletPlan(), 'prepress'));
    const cells = named(params!.resource.children!, 'SignatureCell');
    expect(values(cells, 'FrontPages')).toEqual(['15 0 3 12', '8 7 4 11']);
    expect(values(cells, 'BackPages')).toEqual(['14 1 2 13', '9 6 5 10']);
    expect(values(cells, 'Orientation')).toEqual(['Up', 'Down']);
    expect(values(named(params!.resource.children!, 'BinderySignature'), 'NumberUp')).toEqual(['4 2']);
  });

  // Source: the same sample, BinderySignature B2x2.
  it('lists the pages of 8-page sections by their place within the section, each section apart', () => {
    const [params] = stripping.resources(scope(sectionsPlan(), 'prepress'));
    const cells = named(params!.resource.children!, 'SignatureCell');
    expect(values(cells, 'FrontPages')).toEqual(['7 0', '4 3', '7 0', '4 3']);
    expect(values(cells, 'BackPages')).toEqual(['6 1', '5 2', '6 1', '5 2']);
    const ids = values(named(params!.resource.children!, 'StrippingParams'), 'AssemblyIDs');
    expect(ids.filter((id) => id !== undefined)).toEqual(['body-1', 'body-2']);
  });

  it('states the lip on the high folio as overfold of the back', () => {
    const [params] = stripping.resources(scope(sectionsPlan(), 'prepress'));
    const cells = named(params!.resource.children!, 'StripCellParams');
    // 8 mm at 72 points an inch.
    expect(values(cells, 'BackOverfold')).toEqual(['22.677', '22.677']);
    expect(values(cells, 'FrontOverfold')).toEqual([undefined, undefined]);
  });

  it('places equal flat pieces by one description with a position each', () => {
    const [params] = stripping.resources(scope(cardPlan(), 'prepress'));
    expect(named(params!.resource.children!, 'BinderySignature')).toHaveLength(1);
    expect(named(params!.resource.children!, 'Position')).toHaveLength(6);
  });

  it('keeps an empty place of a section as no page', () => {
    const plan = bookletPlan();
    plan.sheets[0]!.front[0]!.page = 0;
    const [params] = stripping.resources(scope(plan, 'prepress'));
    expect(values(named(params!.resource.children!, 'SignatureCell'), 'FrontPages')[0]).toBe('-1 0 3 12');
  });
});

describe('the layout', () => {
  // Source: the standard's orientation matrices; x' = a·x + c·y + e, y' = b·x + d·y + f.
  it.each<[Rotation, [number, number]]>([
    [0, [0, 0]],
    [90, [100, 0]],
    [180, [100, 50]],
    [270, [0, 50]],
  ])('turned by %d degrees puts the corner of a page where the matrix says', (rotation, [dx, dy]) => {
    const plan = cardPlan();
    const cell = { ...plan.sheets[0]!.front[0]!, rotation, xMm: 10, yMm: 20, widthMm: 100, heightMm: 50 };
    plan.sheets[0]!.front = [cell];
    const [object] = named(layout(plan).children!, 'ContentObject');
    const [a, b, c, d, e, f] = attributeOf(object!, 'CTM')!.split(' ').map(Number) as [
      number,
      number,
      number,
      number,
      number,
      number,
    ];
    const pointsPerMm = 72 / 25.4;
    expect(e).toBeCloseTo((10 + dx) * pointsPerMm, 2);
    expect(f).toBeCloseTo((20 + dy) * pointsPerMm, 2);
    // The far corner of the trimmed page lands inside the cell too.
    const [w, h] = attributeOf(object!, 'TrimSize')!.split(' ').map(Number) as [number, number];
    const far = { x: a * w + c * h + e, y: b * w + d * h + f };
    const xs = [e, far.x].sort((m, n) => m - n);
    const ys = [f, far.y].sort((m, n) => m - n);
    expect(xs[0]).toBeCloseTo(10 * pointsPerMm, 2);
    expect(xs[1]).toBeCloseTo(110 * pointsPerMm, 2);
    expect(ys[0]).toBeCloseTo(20 * pointsPerMm, 2);
    expect(ys[1]).toBeCloseTo(70 * pointsPerMm, 2);
  });

  it('places every page of both sides once', () => {
    const objects = named(layout(bookletPlan()).children!, 'ContentObject');
    expect(
      values(objects, 'Ord')
        .map(Number)
        .toSorted((a, b) => a - b),
    ).toEqual([...Array(16).keys()]);
  });
});

describe('cutting', () => {
  it('draws each cut across the piece that is divided, not across the sheet', () => {
    const plan = cardPlan();
    const lines = cutLines(plan, plan.sheets[0]!);
    expect(values(lines, 'StartPosition')).toEqual(['0 898.583', '680.315 898.583']);
    expect(values(lines, 'WorkingPath')).toEqual(['2551.181 0', '0 915.591']);
  });

  it('is not sent to a machine without cuts or with a block outside the sheet', () => {
    const plan = cardPlan();
    expect(checkSteps(plan)).toEqual([]);
    expect(checkSteps({ ...plan, cuts: [] }).map(({ code }) => code)).toEqual(['PLAN_MISSING']);
    plan.blocks[0]!.xMm = 800;
    expect(checkSteps(plan).map(({ code }) => code)).toEqual(['PLAN_IMPOSSIBLE']);
  });
});

describe('folding', () => {
  it('gives the fold list in points beside the code', () => {
    const [params] = folding.resources(scope(bookletPlan(), 'fold-1'));
    expect(params!.resource.attributes).toMatchObject({
      FoldCatalog: 'F16-6',
      FoldSheetIn: '2551.181 1814.173',
    });
    expect(values(params!.resource.children!, 'From')).toEqual(['Left', 'Front', 'Left']);
    expect(values(params!.resource.children!, 'Travel')).toEqual(['1275.591', '907.087', '637.795']);
  });

  // Source: the standard's orientation matrices; turned over sideways is Flip180, then counter-clockwise.
  it.each([
    ['front', 90, 'Rotate90'],
    ['back', 0, 'Flip180'],
    ['back', 90, 'Flip90'],
    ['back', 180, 'Flip0'],
    ['back', 270, 'Flip270'],
  ] as const)(
    'feeds a piece with its %s up, turned by %d, as %s',
    (startSide, startRotationDeg, orientation) => {
      const plan = bookletPlan();
      Object.assign(plan.folding[0]!, { startSide, startRotationDeg });
      const [, , print] = plan.steps;
      expect(folding.takes('Component', scope(plan, 'fold-1'), print!)?.orientation).toBe(orientation);
    },
  );

  it('takes every block of its signature from a sheet that was cut', () => {
    const plan = bookletPlan();
    const [block] = plan.blocks;
    const half = { ...block!, widthMm: 450 };
    plan.blocks = [
      { ...half, name: 'left' },
      { ...half, name: 'right', xMm: 450 },
    ];
    const cut: PlanStep = { ...plan.steps[2]!, id: 'cut-1', types: ['Cutting'] };
    expect(folding.takes('Component', scope(plan, 'fold-1'), cut)?.parts).toEqual([
      { BlockName: 'left' },
      { BlockName: 'right' },
    ]);
  });

  it('is not sent to a machine without its fold list or with a fold outside the piece', () => {
    const plan = bookletPlan();
    expect(checkSteps({ ...plan, folding: [] }).map(({ code }) => code)).toEqual(['PLAN_MISSING']);
    plan.folding[0]!.folds[0]!.fold.travelMm = 900;
    expect(checkSteps(plan).map(({ code }) => code)).toEqual(['PLAN_IMPOSSIBLE']);
  });
});

describe('stitching and trimming', () => {
  it('give positions and finished size in points', () => {
    const [stitches] = stitching.resources(scope(bookletPlan(), 'stitch'));
    const [trim] = trimming.resources(scope(bookletPlan(), 'stitch'));
    expect(stitches!.resource.attributes).toMatchObject({
      StitchType: 'Saddle',
      NumberOfStitches: 2,
      StitchPositions: '210.472 631.417',
    });
    // A4 in points: ISO 216 sizes at 72 points an inch.
    expect(trim!.resource.attributes).toMatchObject({ Width: 595.276, Height: 841.89 });
  });
});
