import { consumptionView, type Device, deviceView } from '#libs/flow';
import { at, files, NOW } from './recorded-plant.js';

const device = (id: string, kind: Device['kind'], name: string, more: Partial<Device>): Device => ({
  id,
  kind,
  name,
  driver: 'jmf',
  url: 'http://127.0.0.1:1',
  status: 'Idle',
  statusDetails: null,
  job: null,
  ticketId: null,
  stepId: null,
  speed: null,
  since: at(-30),
  source: 'machine',
  lastSeen: NOW - 4000,
  silentBecause: null,
  ...more,
});

export const devices: readonly Device[] = [
  device('folder-large', 'folder', 'Large folder', {
    status: 'Running',
    job: 'D1-01',
    ticketId: '0195a001',
    stepId: 'fold-body-1',
    speed: 7200,
    since: at(-11),
  }),
  device('guillotine', 'guillotine', 'Guillotine', { since: at(-23) }),
  device('pack-bench', 'bench', 'Packing bench', {
    driver: 'bench',
    url: null,
    source: 'person',
    since: at(-42),
    lastSeen: at(-42),
  }),
  device('platesetter', 'platesetter', 'Platesetter', {
    status: 'Setup',
    job: 'D1-04',
    ticketId: '0195a004',
    stepId: 'prepress',
    since: at(-3),
  }),
  device('press-full', 'press', 'Full-size eight-unit', {
    status: 'Running',
    statusDetails: null,
    job: 'D1-02',
    ticketId: '0195a002',
    stepId: 'print-body-1',
    speed: 13_860,
    since: at(-10),
  }),
  device('stitcher', 'stitcher', 'Stitcher', {
    since: at(-75),
    lastSeen: at(-9),
    silentBecause: 'nothing answered at its address for 9 min',
  }),
];

export const deviceViews = (): Record<string, unknown>[] => devices.map(deviceView);

const use = (
  stepId: string,
  item: string,
  unit: 'sheets' | 'plates' | 'kg',
  planned: number,
  actual: number,
  waste: number,
) => ({
  ticketId: '0195a001',
  stepId,
  deviceId: null,
  item,
  unit,
  planned,
  reserved: 0,
  actual,
  waste,
  source: unit === 'kg' ? ('assumed' as const) : ('machine' as const),
});
export const consumption = consumptionView({
  ...files[0]!,
  uses: [
    use('prepress', 'plate-full', 'plates', 8, 8, 0),
    use('print-body-1', 'silk-115-full-sg', 'sheets', 436, 441, 125),
    use('print-body-1', 'Black', 'kg', 0.082, 0.083, 0.021),
  ],
});

const told = (min: number, type: string, step: string | null, sentence: string, n: number) => ({
  id: String(100 + n),
  time: new Date(at(min)).toISOString(),
  type,
  step,
  device: null,
  sentence,
  data: {},
});
/** As the server tells it. */
export const story = [
  told(
    -95,
    'ticket.accepted',
    null,
    'Job D1-01, "Programme: The Salt Harbour", came in by demo: 250 copies in 6 steps.',
    1,
  ),
  told(
    -94,
    'step.queued',
    'prepress',
    'Step prepress has all it needs and waits in the queue of platesetter.',
    2,
  ),
  told(-88, 'step.statusChanged', 'prepress', 'Step prepress is InProgress on platesetter.', 3),
  told(
    -64,
    'step.statusChanged',
    'prepress',
    'Step prepress is done on platesetter: 8 plates good, 0 waste.',
    4,
  ),
  told(-58, 'step.statusChanged', 'print-body-1', 'Step print-body-1 is Setup on press-full.', 5),
  told(
    -50,
    'step.counted',
    'print-body-1',
    'Step print-body-1 counts 100 sheets good, 121 waste of 311 planned.',
    6,
  ),
  told(
    -45,
    'step.counted',
    'print-body-1',
    'Step print-body-1 counts 250 sheets good, 124 waste of 311 planned.',
    7,
  ),
  told(
    -41,
    'step.statusChanged',
    'print-body-1',
    'Step print-body-1 is done on press-full: 311 sheets good, 125 waste.',
    8,
  ),
  told(-19, 'step.statusChanged', 'fold-body-1', 'Step fold-body-1 is InProgress on folder-large.', 9),
];
