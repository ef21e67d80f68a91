/**
 * A moment in the demo plant, put together from the rows that the server keeps and turned into JSON by the server's own
 * views, so that the console is tested on exactly what it will get. All of it is invented.
 */
import {
  type QueueEntry,
  type Resource,
  type Step,
  type Ticket,
  type TicketFile,
  ticketView,
} from '#libs/flow';

/** Thursday, 12 March 2026, 10:42 UTC. */
export const NOW = Date.UTC(2026, 2, 12, 10, 42);
const MIN = 60_000;
export const at = (minutes: number): number => NOW + minutes * MIN;

type StepSketch = Pick<Step, 'id' | 'types' | 'deviceId' | 'setupS' | 'runS' | 'outAmount' | 'unit'>;
const way: readonly StepSketch[] = [
  {
    id: 'prepress',
    types: ['Stripping', 'Imposition', 'RIPing', 'ImageSetting'],
    deviceId: 'platesetter',
    setupS: 480,
    runS: 960,
    outAmount: 8,
    unit: 'plates',
  },
  {
    id: 'print-body-1',
    types: ['ConventionalPrinting'],
    deviceId: 'press-full',
    setupS: 238,
    runS: 720,
    outAmount: 311,
    unit: 'sheets',
  },
  {
    id: 'cut-body-1',
    types: ['Cutting'],
    deviceId: 'guillotine',
    setupS: 120,
    runS: 600,
    outAmount: 307,
    unit: 'blocks',
  },
  {
    id: 'fold-body-1',
    types: ['Folding'],
    deviceId: 'folder-large',
    setupS: 900,
    runS: 900,
    outAmount: 280,
    unit: 'signatures',
  },
  {
    id: 'stitch',
    types: ['Collecting', 'Stitching', 'Trimming'],
    deviceId: 'stitcher',
    setupS: 1200,
    runS: 600,
    outAmount: 250,
    unit: 'copies',
  },
  {
    id: 'pack',
    types: ['Packing'],
    deviceId: 'pack-bench',
    setupS: 0,
    runS: 900,
    outAmount: 250,
    unit: 'copies',
  },
];

type Fact = Partial<
  Pick<Step, 'status' | 'statusDetails' | 'start' | 'end' | 'good' | 'waste' | 'activation'>
>;

interface JobSketch {
  readonly id: string;
  readonly jobId: string;
  readonly name: string;
  readonly cameMin: number;
  readonly due: number | null;
  readonly quantity: number;
  readonly facts: readonly Fact[];
  readonly ticket?: Partial<Ticket>;
  /** Share of the usual run. */
  readonly scale?: number;
  readonly entries?: readonly Partial<QueueEntry>[];
}

const done = (from: number, to: number, good: number, waste: number): Fact => ({
  status: 'Completed',
  start: at(from),
  end: at(to),
  good,
  waste,
});

const sketches: readonly JobSketch[] = [
  {
    id: '0195a001',
    jobId: 'D1-01',
    name: 'Programme: The Salt Harbour',
    cameMin: -95,
    due: at(130),
    quantity: 250,
    facts: [
      done(-88, -64, 8, 0),
      done(-58, -41, 311, 125),
      done(-36, -23, 307, 4),
      { status: 'InProgress', start: at(-19), good: 96, waste: 31 },
    ],
  },
  {
    id: '0195a002',
    jobId: 'D1-02',
    name: 'Programme: Nine Umbrellas',
    cameMin: -90,
    due: at(75),
    quantity: 350,
    scale: 1.4,
    facts: [done(-63, -34, 8, 0), { status: 'InProgress', start: at(-14), good: 260, waste: 121 }],
  },
  {
    id: '0195a003',
    jobId: 'D1-03',
    name: 'Song booklet: Songs from the Ferry',
    cameMin: -70,
    due: at(400),
    quantity: 600,
    scale: 2,
    facts: [done(-33, -4, 8, 0)],
    entries: [{ stepId: 'print-body-1', deviceId: 'press-full', delivery: 'delivered' }],
  },
  {
    id: '0195a004',
    jobId: 'D1-04',
    name: 'Evening sheet: Tide Table Cabaret',
    cameMin: -55,
    due: at(240),
    quantity: 1200,
    scale: 1.2,
    facts: [{ status: 'Setup', start: at(-3) }],
  },
  {
    id: '0195a005',
    jobId: 'D1-05',
    name: 'Libretto: The Lamplighter’s Daughter',
    cameMin: -40,
    due: at(320),
    quantity: 400,
    facts: [{ activation: 'Held' }],
    entries: [
      {
        stepId: 'prepress',
        deviceId: 'platesetter',
        status: 'Aborted',
        delivery: 'refused',
        lastError: 'the file of page 9 has no bleed',
      },
    ],
  },
  {
    id: '0195a006',
    jobId: 'D1-06',
    name: 'Season brochure',
    cameMin: -20,
    due: null,
    quantity: 900,
    scale: 1.6,
    facts: [],
    ticket: { activation: 'Held' },
  },
];

function fileOf(sketch: JobSketch): TicketFile {
  const scale = sketch.scale ?? 1;
  const rows = way.map((plan, ordinal) => stepOf(sketch, plan, ordinal, scale));
  const working = rows.some((row) => row.status !== 'Waiting');
  const over = rows.every((row) => row.status === 'Completed');
  const ticket: Ticket = {
    id: sketch.id,
    jobId: sketch.jobId,
    jobPartId: null,
    name: sketch.name,
    customer: 'Lantern Quarter Players',
    status: over ? 'Completed' : working ? 'InProgress' : 'Waiting',
    statusDetails: null,
    activation: 'Active',
    quantity: sketch.quantity,
    due: sketch.due,
    priority: 50,
    kind: 'order',
    documentId: 'doc',
    documentPart: null,
    intake: 'demo',
    returnUrl: null,
    plan: null,
    problems: [],
    createdAt: at(sketch.cameMin),
    updatedAt: NOW,
    revision: 7,
    ...sketch.ticket,
  };
  return {
    ticket,
    steps: rows,
    resources: rows.map((row, n) => resourceOf(row, n)),
    entries: (sketch.entries ?? []).map((entry, n) => entryOf(sketch.id, n, entry)),
    phases: rows
      .filter((row) => row.start !== null)
      .map((row) => ({
        ticketId: row.ticketId,
        stepId: row.id,
        deviceId: row.deviceId!,
        start: row.start!,
        end: row.end,
        status: row.status,
        statusDetails: null,
        good: row.good,
        waste: row.waste,
        source: row.id === 'pack' ? 'person' : 'machine',
      })),
    uses: [],
  };
}

function stepOf(sketch: JobSketch, plan: StepSketch, ordinal: number, scale: number): Step {
  const before = way[ordinal - 1];
  return {
    ticketId: sketch.id,
    ...plan,
    ordinal,
    status: 'Waiting',
    statusDetails: null,
    activation: 'Active',
    after: before === undefined ? [] : [before.id],
    inputs: before === undefined ? [] : [`out-${before.id}`],
    outputs: [`out-${plan.id}`],
    runS: Math.round(plan.runS * scale),
    waitAfterS: 0,
    inAmount: plan.outAmount,
    inUnit: 'sheets',
    plannedStart: null,
    plannedEnd: null,
    start: null,
    end: null,
    good: 0,
    waste: 0,
    samples: 0,
    ...sketch.facts[ordinal],
  };
}

const resourceOf = (row: Step, n: number): Resource => ({
  ticketId: row.ticketId,
  id: row.outputs[0] ?? String(n),
  name: 'Component',
  status: row.status === 'Completed' ? 'Available' : 'Unavailable',
  unit: row.unit,
  planned: row.outAmount,
  produced: row.good,
  usableFrom: null,
});

const entryOf = (ticketId: string, n: number, more: Partial<QueueEntry>): QueueEntry => ({
  id: `entry-${ticketId}-${n}`,
  ticketId,
  stepId: '',
  deviceId: '',
  status: 'Waiting',
  delivery: 'pending',
  deviceEntryId: null,
  attempt: 1,
  notBefore: null,
  lastError: null,
  returned: false,
  wanted: null,
  priority: 50,
  submitted: at(-4),
  start: null,
  end: null,
  ...more,
});

export const files: readonly TicketFile[] = sketches.map(fileOf);

/** A finished job, and a refused document with its reasons. */
export const finished = fileOf({
  id: '0195a000',
  jobId: 'D0-09',
  name: 'Programme: Harbour Lights',
  cameMin: -240,
  due: at(-20),
  quantity: 250,
  facts: [
    done(-230, -205, 8, 0),
    done(-200, -180, 311, 118),
    done(-174, -162, 306, 5),
    done(-150, -118, 277, 29),
    done(-110, -75, 250, 22),
    done(-60, -42, 250, 0),
  ],
});

export const refused: TicketFile = {
  ...fileOf({
    id: '0195a0ff',
    jobId: 'D1-99',
    name: 'flyer-final-2.jdf',
    cameMin: -12,
    due: null,
    quantity: 0,
    facts: [],
  }),
  steps: [],
};
export const refusedView = ticketView({
  ...refused,
  ticket: {
    ...refused.ticket,
    status: 'Rejected',
    intake: 'hotFolder',
    problems: [
      {
        severity: 'error',
        code: 'JDF_DANGLING',
        line: 41,
        path: '/JDF/ResourceLinkPool/MediaLink',
        message: 'The link refers to Media_7, which is not in the ticket.',
        hint: 'Add the resource with this ID, or take the link out.',
      },
    ],
  },
});

export const ticketViews = (): Record<string, unknown>[] =>
  [...files, finished].map(ticketView).concat(refusedView);
