import type { Plan, PlanCell, PlanStep, Rotation } from '#libs/craft';

/**
 * A small plan made by hand: 300 stitched A4 copies of 16 pages, one sheet of 900 × 640 mm printed on both sides in one
 * pass. The page order is the standard's own for three right-angle folds (sample processes/strippingComplexExample,
 * there counted from 0); trims, overs and seconds are invented.
 */
export function bookletPlan(): Plan {
  const front = sideOf([
    { pages: [16, 1, 4, 13], rotation: 0 },
    { pages: [9, 8, 5, 12], rotation: 180 },
  ]);
  const back = sideOf([
    { pages: [14, 3, 2, 15], rotation: 0 },
    { pages: [11, 6, 7, 10], rotation: 180 },
  ]);
  const inks = ['Cyan', 'Magenta', 'Yellow', 'Black'];
  return {
    jobId: 'J-300',
    name: 'Programme of the harbour play',
    quantity: 300,
    product: {
      trimWidthMm: 210,
      trimHeightMm: 297,
      pages: 16,
      binding: 'SaddleStitch',
      inksFront: inks,
      inksBack: inks,
      stock: 'silk-115',
      stockGsm: 115,
      stockCaliperUm: 101,
    },
    signatures: [{ name: 'body-1', part: 'body', pages: range(16), foldCatalog: 'F16-6', creepMm: 0.303 }],
    sheets: [
      {
        name: 'sheet-1',
        press: 'press-full',
        workStyle: 'Perfecting',
        turn: 'none',
        sheetWidthMm: 900,
        sheetHeightMm: 640,
        grain: 'short',
        gripperMm: 10,
        tailMm: 0,
        copiesUp: 1,
        stock: 'silk-115',
        front,
        back,
        plates: 8,
        goodSheets: 311,
        makereadySheets: 120,
        runningWasteSheets: 5,
        sheetsToPress: 436,
        impressions: 436,
        bleedMm: 3,
        units: [...inks, ...inks].map((ink, at) => ({ unit: at + 1, side: at < 4 ? 'front' : 'back', ink })),
        marks: [{ kind: 'colourBar', side: 'front', xMm: 20, yMm: 628, widthMm: 860, heightMm: 6 }],
        sideLay: 'operator',
      },
    ],
    steps: bookletSteps(),
    plateList: (['front', 'back'] as const).flatMap((side, s) =>
      inks.map((ink, at) => ({
        id: `sheet-1-${side}-${ink}`,
        sheet: 'sheet-1',
        side,
        ink,
        version: '',
        unit: s * 4 + at + 1,
      })),
    ),
    changeovers: [],
    blocks: [
      {
        name: 'sheet-1',
        sheet: 'sheet-1',
        xMm: 0,
        yMm: 0,
        widthMm: 900,
        heightMm: 640,
        signature: 'body-1',
        layEdges: ['gripper', 'lay'],
        grain: 'short',
        next: 'fold-1',
      },
    ],
    cuts: [],
    lifts: [],
    folding: [
      {
        signature: 'body-1',
        block: 'sheet-1',
        startSide: 'back',
        startRotationDeg: 180,
        sheetInMm: [900, 640],
        folds: [
          {
            order: 1,
            axis: 'y',
            positionMm: 450,
            moves: 'left',
            direction: 'under',
            fold: { from: 'Left', to: 'Down', travelMm: 450 },
            stopMm: 450,
            unit: 'plate 1',
          },
          {
            order: 2,
            axis: 'x',
            positionMm: 320,
            moves: 'lower',
            direction: 'over',
            fold: { from: 'Front', to: 'Up', travelMm: 320 },
            stopMm: 320,
            unit: 'knife 1',
          },
          {
            order: 3,
            axis: 'y',
            positionMm: 225,
            moves: 'left',
            direction: 'under',
            fold: { from: 'Left', to: 'Down', travelMm: 225 },
            stopMm: 225,
            unit: 'knife 2',
          },
        ],
      },
    ],
    binding: {
      kind: 'SaddleStitch',
      signatureOrder: ['body-1'],
      stitchPositionsMm: [74.25, 222.75],
      trim: { headMm: 3, footMm: 3, faceMm: 3 },
    },
    overs: { convention: 'onInput', lines: [] },
    totals: {
      sheetsToPress: 436,
      plates: 8,
      paperKg: 28.88,
      inkG: { Cyan: 300, Magenta: 300, Yellow: 300, Black: 400 },
      setupS: 2638,
      runS: 1000,
      cost: { amount: 700, currency: 'EUR', lines: [] },
    },
    alternatives: [],
    cautions: [],
    problems: [],
  };
}

const range = (count: number): number[] => Array.from({ length: count }, (_, at) => at + 1);

function sideOf(rows: readonly { pages: readonly number[]; rotation: Rotation }[]): PlanCell[] {
  return rows.flatMap(({ pages, rotation }, row) =>
    pages.map((page, column) => ({
      part: 'body',
      page,
      xMm: 30 + column * 210,
      yMm: 20 + row * 305,
      widthMm: 210,
      heightMm: 297,
      rotation,
      signature: 'body-1',
    })),
  );
}

/** Prepress, plates, press, folder, stitcher: one step each, amounts chained from the last to the first. */
function bookletSteps(): PlanStep[] {
  const step = (
    own: Pick<PlanStep, 'id' | 'types' | 'device' | 'after' | 'inAmount' | 'inUnit' | 'outAmount' | 'unit'>,
  ): PlanStep => ({
    setupS: 200,
    runS: 300,
    waitAfterS: 0,
    inputs: own.after.map((from) => ({ from, amount: own.inAmount, unit: own.inUnit })),
    ...own,
  });
  return [
    step({
      id: 'prepress',
      types: ['Stripping', 'Imposition', 'Interpreting', 'Rendering', 'Screening'],
      device: 'prepress',
      after: [],
      inAmount: 0,
      inUnit: 'plates',
      outAmount: 8,
      unit: 'plates',
    }),
    {
      ...step({
        id: 'plates-1',
        types: ['ImageSetting'],
        device: 'platesetter',
        after: ['prepress'],
        inAmount: 8,
        inUnit: 'plates',
        outAmount: 8,
        unit: 'plates',
      }),
      sheet: 'sheet-1',
    },
    {
      ...step({
        id: 'print-1',
        types: ['ConventionalPrinting'],
        device: 'press-full',
        after: ['plates-1'],
        inAmount: 436,
        inUnit: 'sheets',
        outAmount: 311,
        unit: 'sheets',
      }),
      sheet: 'sheet-1',
      pass: 1,
      inputs: [{ from: 'plates-1', amount: 8, unit: 'plates' }],
    },
    {
      ...step({
        id: 'fold-1',
        types: ['Folding'],
        device: 'folder-large',
        after: ['print-1'],
        inAmount: 311,
        inUnit: 'sheets',
        outAmount: 305,
        unit: 'signatures',
      }),
      sheet: 'sheet-1',
      signature: 'body-1',
    },
    step({
      id: 'stitch',
      types: ['Collecting', 'Stitching', 'Trimming'],
      device: 'stitcher',
      after: ['fold-1'],
      inAmount: 305,
      inUnit: 'signatures',
      outAmount: 300,
      unit: 'copies',
    }),
  ];
}

/** Flat work beside it: 1,000 cards printed on one side, six up, cut apart; the same plates and inks. */
export function cardPlan(): Plan {
  const plan = bookletPlan();
  const cards = [0, 1, 2].flatMap((column) =>
    [0, 1].map((row) => ({ xMm: 30 + column * 280, yMm: 20 + row * 300, at: column * 2 + row + 1 })),
  );
  const sheet = {
    ...plan.sheets[0]!,
    workStyle: 'Simplex' as const,
    copiesUp: 6,
    front: cards.map(({ xMm, yMm, at }) => ({
      part: 'body',
      page: 1,
      xMm,
      yMm,
      widthMm: 210,
      heightMm: 297,
      rotation: 0 as const,
      signature: `card-${at}`,
    })),
    back: [],
  };
  const [prepress, plates, print] = plan.steps as [PlanStep, PlanStep, PlanStep];
  return {
    ...plan,
    quantity: 1000,
    product: { ...plan.product, pages: 1, binding: 'None', inksBack: [] },
    signatures: [],
    sheets: [sheet],
    steps: [
      prepress,
      plates,
      print,
      {
        ...print,
        id: 'cut-1',
        types: ['Cutting'],
        device: 'guillotine',
        after: ['print-1'],
        inAmount: 311,
        outAmount: 1000,
        unit: 'copies',
        inputs: [{ from: 'print-1', amount: 311, unit: 'sheets' }],
      },
    ],
    plateList: plan.plateList.filter((plate) => plate.side === 'front'),
    blocks: cards.map(({ xMm, yMm, at }) => ({
      name: `card-${at}`,
      sheet: 'sheet-1',
      xMm,
      yMm,
      widthMm: 210,
      heightMm: 297,
      signature: `card-${at}`,
      layEdges: ['cut 1'],
      grain: 'short',
      next: null,
    })),
    cuts: [
      {
        sheet: 'sheet-1',
        order: 1,
        piece: 'sheet-1',
        axis: 'x',
        positionMm: 317,
        gaugeMm: 317,
        edgeAtGauge: 'gripper',
        turnDeg: 0,
        fallsInFront: 'upper',
        yields: ['lower', 'upper'],
        note: '',
      },
      {
        sheet: 'sheet-1',
        order: 2,
        piece: 'upper',
        axis: 'y',
        positionMm: 240,
        gaugeMm: 240,
        edgeAtGauge: 'lay',
        turnDeg: 90,
        fallsInFront: 'rest',
        yields: ['waste-1', 'rest'],
        note: '',
      },
    ],
    folding: [],
    binding: { kind: 'None', signatureOrder: [], trim: { headMm: 0, footMm: 0, faceMm: 0 } },
  };
}
