/**
 * The plant definition: what the plant has, how fast it works and what it wastes. Its field names are
 * an outside interface; sheet width runs across the press (x), sheet height in feed direction (y).
 */
import type { Binding } from './order.js';
import type { Grain } from './plan.js';

/** Kinds of devices; the first six also exist as simulated devices. */
export const deviceKinds = [
  'press',
  'platesetter',
  'guillotine',
  'folder',
  'stitcher',
  'binder',
  'bench',
  'prepress',
] as const;
export type DeviceKind = (typeof deviceKinds)[number];

/** What a device tells by itself; what is missing is asked of the crew. */
export const reportable = ['status', 'jobName', 'total', 'good', 'waste', 'phases', 'speed'] as const;
export type Reportable = (typeof reportable)[number];

export interface DeviceBase {
  id: string;
  name: string;
  reports: Reportable[];
  hourRate: number;
}

/** Set-up waste is a count, running waste a share of what is fed (convention onInput). */
export interface Overs {
  setupSheets: number;
  runningPct: number;
}

/** Row of a press's waste table: the first row whose colours cover the side with most inks is taken. */
export interface PressOvers extends Overs {
  /** Inks on the fuller side, at most. */
  coloursUpTo: number;
  bothSides: boolean;
}

/** When a set-up task is due. A press whose last job is unknown counts as clean: every task is due. */
export const changeConditions = [
  'everyChange',
  'platesDiffer',
  'sizeOrCaliperDiffers',
  'stockDiffers',
  'stockClassDiffers',
  'largerSheet',
  'extraInkDiffers',
  'extraInkToWash',
  'everyThirdChange',
  'everySixthChange',
] as const;
export type ChangeCondition = (typeof changeConditions)[number];

export interface SetupTask {
  name: string;
  durationS?: number;
  /** Instead of `durationS` where the time grows with the plates to be changed. */
  perPlateS?: number;
  /** Instead of `durationS` after a dark ink. */
  darkToLightS?: number;
  after: string[];
  /** Role of the person who does it; left out: the press by itself. */
  who?: string;
  /** Names of what two tasks cannot use at once, e.g. a common drive. */
  uses?: string[];
  /** Done before the stop. */
  external?: boolean;
  /** Any of them makes the task due; left out: always. */
  when?: ChangeCondition[];
  /** The press runs sheets during the task. */
  runsSheets?: boolean;
  /** At most so many sheets are run in it. */
  sheets?: number;
}

export interface SpeedBand {
  gsmFrom: number;
  gsmTo: number;
  perHour: number;
}

export interface PressDefinition extends DeviceBase {
  kind: 'press';
  maxSheetWidthMm: number;
  maxSheetHeightMm: number;
  minSheetWidthMm: number;
  minSheetHeightMm: number;
  maxImageWidthMm: number;
  maxImageHeightMm: number;
  gripperMm: number;
  freeEdgeMm: number;
  colourBarMm: number;
  units: number;
  unitsFront: number;
  unitsBack: number;
  /** Ink that stays in each unit, by position from the feeder; null: free for any ink. */
  unitInks: (string | null)[];
  inkZones: number;
  inkZoneMm: number;
  zoneOne: 'operatorSide' | 'driveSide';
  bothSides: 'none' | 'perfecting' | 'onePass';
  plate: string;
  curing: 'none' | 'instant';
  minGsm: number;
  maxGsm: number;
  /** Rated ceiling; never planned with. */
  speedPerHour: number;
  planSpeedPerHour: SpeedBand[];
  shortRun: { belowSheets: number; speedFactor: number };
  makereadySpeedPerHour: number;
  setupTasks: SetupTask[];
  overs: PressOvers[];
}

export interface PlatesetterDefinition extends DeviceBase {
  kind: 'platesetter';
  plates: { plate: string; perHour: number }[];
  firstPlateOutS: number;
  setupS: number;
}

/** An automatic workstation that imposes pages and turns them into separations. */
export interface PrepressDefinition extends DeviceBase {
  kind: 'prepress';
  setupS: number;
  perPageS: number;
  perPlateS: number;
}

export interface GuillotineDefinition extends DeviceBase {
  kind: 'guillotine';
  cutWidthMm: number;
  minGaugeMm: number;
  maxClampMm: number;
  /** Height of a lift that is worked with, by class of stock. */
  workingLiftMm: Record<string, number>;
  handLiftMaxKg: number;
  setupS: number;
  perLiftS: number;
  perCutS: number;
  /** A quarter turn. */
  perTurnS: number;
  overs: Overs;
}

export interface FolderDefinition extends DeviceBase {
  kind: 'folder';
  /** Across and along the feed. */
  maxSheetWidthMm: number;
  maxSheetLengthMm: number;
  minSheetWidthMm: number;
  minSheetLengthMm: number;
  /** Groups of folding units in their order; each group folds at right angles to the one before. */
  units: { kind: 'plate' | 'knife'; count: number }[];
  plateStopMaxMm: number;
  infeedMPerMin: number;
  gapMm: number;
  /** Share of the infeed speed that is planned with. */
  speedFactor: number;
  /** Seconds by scheme: `parallelN` or `rightAngleN` with N folds. */
  setupS: Record<string, number>;
  repeatSetupS: number;
  /** Heaviest paper by number of folds; the last entry holds for more. */
  maxGsmByFolds: number[];
  /** Creases heavier paper before it folds it. */
  scoring?: boolean;
  overs: Overs;
}

export interface StitcherDefinition extends DeviceBase {
  kind: 'stitcher';
  stations: number;
  coverFeeder: boolean;
  opening: ('lip' | 'suckers')[];
  lipMm: number;
  minTrimWidthMm: number;
  minTrimHeightMm: number;
  maxTrimWidthMm: number;
  maxTrimHeightMm: number;
  maxThicknessMm: number;
  wireMm: number;
  stitches: number;
  trim: { headMm: number; footMm: number; faceMm: number };
  perHour: number;
  shortRun: { belowCopies: number; speedFactor: number };
  setupS: number;
  setupPerSectionS: number;
  coverSetupS: number;
  repeatSetupS: number;
  overs: Overs & { setupPerSection: number };
}

export interface BinderDefinition extends DeviceBase {
  kind: 'binder';
  minBlockMm: number;
  maxBlockMm: number;
  /** Ground off the spine so that the glue reaches every leaf. */
  millMm: number;
  /** Width of the glue on the sides of the block, beside the spine. */
  sideGlueMm: number;
  /** Trimmed on the guillotine afterwards. */
  trim: { headMm: number; footMm: number; faceMm: number };
  perHour: number;
  setupS: number;
  warmUpS: number;
  coolBeforeTrimS: number;
  overs: Overs;
}

export interface BenchDefinition extends DeviceBase {
  kind: 'bench';
  /** Processes of the standard, or words where it has none. */
  does: string[];
  /** Sections gathered, or copies packed. */
  perHour: number;
  overs: Overs;
}

export type DeviceDefinition =
  | PressDefinition
  | PlatesetterDefinition
  | PrepressDefinition
  | GuillotineDefinition
  | FolderDefinition
  | StitcherDefinition
  | BinderDefinition
  | BenchDefinition;

export interface PlateType {
  id: string;
  widthMm: number;
  heightMm: number;
  price: number;
  onHand: number;
  reorderAt: number;
}

export interface Stock {
  id: string;
  /** The paper one sells; one row per size and grain. */
  family: string;
  name: string;
  class: string;
  gsm: number;
  caliperUm: number;
  sheetWidthMm: number;
  sheetHeightMm: number;
  grain: Grain;
  price: number;
  priceBasis: 'per1000' | 'per100kg';
  onHand: number;
  location: string;
}

export interface InkSet {
  id: string;
  press: string;
  names: string[];
  /** Ink on a full solid by class of stock. */
  solidGPerM2: Record<string, number>;
  pricePerKg: number;
  onHandKg: Record<string, number>;
  metallic?: boolean;
  dark?: boolean;
}

export interface DryingWait {
  press: string;
  /** Left out: any class. */
  class?: string;
  metallic?: boolean;
  backUpS: number;
  cutS: number;
  foldS: number;
}

export interface PlantDefaults {
  binding: { onePage: Binding; twoPages: Binding; more: Binding };
  inksFront: string[];
  inksBack: string[];
  stock: string;
  bleedMm: number;
  /** Outer bleed may shrink to this beside the colour bar. */
  minBleedMm: number;
  /** Share of the page area that each ink is assumed to cover until the pages are measured. */
  assumedCoveragePct: number;
}

export interface Plant {
  id: string;
  name: string;
  timeZone: string;
  currency: string;
  defaults: PlantDefaults;
  devices: DeviceDefinition[];
  plates: PlateType[];
  stocks: Stock[];
  inks: InkSet[];
  inkRules: { lostPerWashUpKg: number };
  waits: DryingWait[];
  costs: { materialHandlingPct: number; overheadPct: number; marginPct: number; minimumOrder: number };
  /** Opening hours by device id; a device without a row is always open. */
  calendars: Record<string, CalendarRow[]>;
}

export interface CalendarRow {
  days: ('Mon' | 'Tue' | 'Wed' | 'Thu' | 'Fri' | 'Sat' | 'Sun')[];
  /** HH:MM in plant time. */
  from: string;
  to: string;
}

/** What hangs and lies in a press after its last job. */
export interface PressState {
  press: string;
  jobId: string;
  stock: string;
  stockClass: string;
  stockCaliperUm: number;
  sheetWidthMm: number;
  sheetHeightMm: number;
  /** Inks by unit, units without ink left out. */
  unitInks: { unit: number; ink: string }[];
  /** Ids of the plates hung. */
  plates: string[];
  changesSinceBlanketWash: number;
  changesSinceCylinderWash: number;
}

/** What each press was left with by the job before, by its id; a press that is not in it is clean. */
export type PressStates = ReadonlyMap<string, PressState>;

export function devicesOf<K extends DeviceKind>(
  plant: Plant,
  kind: K,
): Extract<DeviceDefinition, { kind: K }>[] {
  return plant.devices.filter((d): d is Extract<DeviceDefinition, { kind: K }> => d.kind === kind);
}
