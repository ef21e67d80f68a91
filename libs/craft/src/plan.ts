/**
 * The plan document, which anybody may read: its fields are never renamed or dropped. Sheet coordinates:
 * origin at the lower-left corner of the side as it lies face up for its pass, gripper edge at the bottom, x to the
 * right, y up; rotations in degrees counter-clockwise.
 */
import type { Problem } from '#libs/kernel';
import type { Binding, FoldStep } from './order.js';

export type Side = 'front' | 'back';
export type Rotation = 0 | 90 | 180 | 270;
export type WorkStyle = 'Simplex' | 'Perfecting' | 'WorkAndBack' | 'WorkAndTurn' | 'WorkAndTumble';
export type Turn = 'none' | 'sideways' | 'headOverTail';
export type Grain = 'long' | 'short';
export type AmountUnit = 'sheets' | 'signatures' | 'blocks' | 'copies' | 'books' | 'boxes' | 'plates';

export interface PlanProductPart {
  trimWidthMm: number;
  trimHeightMm: number;
  pages: number;
  binding: Binding;
  inksFront: string[];
  inksBack: string[];
  stock: string;
  stockGsm: number;
  stockCaliperUm: number;
}

export interface PlanProduct extends PlanProductPart {
  cover?: PlanProductPart;
}

export interface PlanSignature {
  name: string;
  /** `body`, `cover`, or the name of a version. */
  part: string;
  /** Reader page numbers in the order in which the folded signature shows them. */
  pages: number[];
  foldCatalog: string;
  creepMm: number;
}

/** One page copy on one side of a sheet: lower-left corner and trimmed size after rotation. Page 0 is blank. */
export interface PlanCell {
  part: string;
  page: number;
  xMm: number;
  yMm: number;
  widthMm: number;
  heightMm: number;
  rotation: Rotation;
  signature: string;
}

/** Which ink hangs in which unit of the press. */
export interface PlanUnit {
  unit: number;
  side: Side;
  ink: string;
}

/** Something printed that is not a page; the corner and size as with cells. */
export interface PlanMark {
  kind: 'colourBar';
  side: Side;
  xMm: number;
  yMm: number;
  widthMm: number;
  heightMm: number;
}

export interface PlanSheet {
  name: string;
  press: string;
  workStyle: WorkStyle;
  turn: Turn;
  sheetWidthMm: number;
  sheetHeightMm: number;
  grain: Grain;
  gripperMm: number;
  /** The gripped tail: 0 where the tail is never gripped. */
  tailMm: number;
  copiesUp: number;
  stock: string;
  front: PlanCell[];
  back: PlanCell[];
  plates: number;
  goodSheets: number;
  makereadySheets: number;
  runningWasteSheets: number;
  sheetsToPress: number;
  impressions: number;
  bleedMm: number;
  units: PlanUnit[];
  /** Grams of each ink on the whole run; left out in plans of versions before 0.3.0. */
  inkG?: Record<string, number>;
  marks: PlanMark[];
  /** The side of the press against which the front is laid. */
  sideLay: 'operator' | 'drive';
}

export interface PlanInput {
  /** Id of the step whose output this is. */
  from: string;
  amount: number;
  unit: AmountUnit;
}

export interface PlanStep {
  id: string;
  /** The standard's process names, in their order of execution. */
  types: string[];
  device: string;
  after: string[];
  sheet?: string;
  side?: Side;
  pass?: number;
  signature?: string;
  setupS: number;
  runS: number;
  /** Drying or cooling before the next step may begin. */
  waitAfterS: number;
  inAmount: number;
  inUnit: AmountUnit;
  outAmount: number;
  unit: AmountUnit;
  inputs: PlanInput[];
}

export interface PlanPlate {
  id: string;
  sheet: string;
  side: Side;
  ink: string;
  /** Empty where the job has no versions. */
  version: string;
  /** Unit of the press, counted from 1 at the feeder. */
  unit: number;
}

export interface PlanChangeoverTask {
  name: string;
  durationS: number;
  /** Seconds after the stop; negative for external tasks, which end before it. */
  startS: number;
  after: string[];
  /** `press` for what the press does by itself, otherwise a person's role. */
  who: string;
  external?: boolean;
  /** Sheets run during the task. */
  runsSheets?: number;
}

export interface PlanDifference {
  what: string;
  from: string;
  to: string;
}

export interface PlanChangeover {
  step: string;
  /** Null from a clean press. */
  fromJob: string | null;
  toJob: string;
  differs: PlanDifference[];
  tasks: PlanChangeoverTask[];
  criticalPath: string[];
  durationS: number;
}

export interface PlanBlock {
  name: string;
  sheet: string;
  xMm: number;
  yMm: number;
  widthMm: number;
  heightMm: number;
  /** The signature folded from it; for flat work the printed piece. */
  signature: string;
  /** Edges that register may be taken from: `gripper`, `lay`, or `cut N`. */
  layEdges: string[];
  grain: Grain;
  /** Id of the next step, or null where the block is finished. */
  next: string | null;
  /** What is written on the pile where piles of one sheet must be told apart. */
  pileLabel?: string;
}

export interface PlanCut {
  sheet: string;
  order: number;
  piece: string;
  /** The cut line is parallel to this axis of the sheet. */
  axis: 'x' | 'y';
  positionMm: number;
  gaugeMm: number;
  /** `gripper`, `tail`, `lay`, `offLay`, or `cut N`. */
  edgeAtGauge: string;
  turnDeg: number;
  fallsInFront: string;
  /** Lower or left piece first; waste begins with `waste`. */
  yields: [string, string];
  note: string;
}

export interface PlanLift {
  sheet: string;
  count: number;
  sheets: number;
  heightMm: number;
  kg: number;
}

export interface PlanFold {
  order: number;
  axis: 'x' | 'y';
  positionMm: number;
  moves: 'lower' | 'upper' | 'left' | 'right';
  direction: 'over' | 'under';
  fold: FoldStep;
  /** Leading edge to crease. */
  stopMm: number;
  /** Folding unit of the machine, e.g. `plate 1`, `knife 2`. */
  unit: string;
  perforate?: boolean;
}

export interface PlanFolding {
  signature: string;
  block: string;
  startSide: Side;
  startRotationDeg: Rotation;
  sheetInMm: [number, number];
  lipMm?: number;
  lipOn?: 'high' | 'low';
  folds: PlanFold[];
}

export interface PlanStation {
  n: number;
  signature: string;
  firstPage: number;
}

export interface PlanBinding {
  kind: Binding;
  spineMm?: number;
  /** From the outside in where signatures are nested. */
  signatureOrder: string[];
  stations?: PlanStation[];
  /** From the foot of the trimmed copy. */
  stitchPositionsMm?: number[];
  coverScoresMm?: number[];
  trim: { headMm: number; footMm: number; faceMm: number };
}

export interface PlanOversLine {
  step: string;
  setupSheets: number;
  runningPct: number;
}

export interface PlanCost {
  amount: number;
  currency: string;
  lines: { name: string; amount: number }[];
}

export interface PlanTotals {
  sheetsToPress: number;
  plates: number;
  paperKg: number;
  inkG: Record<string, number>;
  setupS: number;
  runS: number;
  cost: PlanCost;
  perRun?: { quantity: number; amount: number }[];
}

export interface PlanAlternative {
  what: string;
  /** Price of this way, or null where it cannot be made at all. */
  amount: number | null;
  why: string;
}

export interface Plan {
  jobId: string;
  name: string;
  quantity: number;
  product: PlanProduct;
  signatures: PlanSignature[];
  sheets: PlanSheet[];
  steps: PlanStep[];
  plateList: PlanPlate[];
  changeovers: PlanChangeover[];
  blocks: PlanBlock[];
  cuts: PlanCut[];
  lifts: PlanLift[];
  folding: PlanFolding[];
  binding: PlanBinding;
  overs: { convention: 'onInput'; lines: PlanOversLine[] };
  totals: PlanTotals;
  alternatives: PlanAlternative[];
  cautions: string[];
  problems: Problem[];
}
