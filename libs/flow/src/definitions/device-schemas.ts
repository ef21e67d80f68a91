import { z } from 'zod';
import { changeConditions, reportable } from '#libs/craft';

const id = z.string().regex(/^[a-z0-9][a-z0-9-]*$/i, 'letters, digits and hyphens');
const text = z.string().min(1);
const mm = z.number().positive();
const marginMm = z.number().min(0);
const gsm = z.number().positive();
const seconds = z.number().min(0);
const rate = z.number().positive();
const pct = z.number().min(0).lt(100);
const whole = z.int().min(0);
const factor = z.number().positive().max(1);

const device = {
  id,
  name: text,
  reports: z
    .array(z.enum(reportable))
    .describe('What the device tells by itself; the rest is asked of the crew.'),
  hourRate: z.number().min(0),
};

const overs = z.strictObject({ setupSheets: whole, runningPct: pct });

const setupTask = z.strictObject({
  name: text,
  durationS: seconds.optional(),
  perPlateS: seconds.optional(),
  darkToLightS: seconds.optional(),
  after: z.array(text),
  who: text.optional().describe('Role of the person; left out: the press by itself.'),
  uses: z.array(text).optional().describe('What two tasks cannot use at once, e.g. a common drive.'),
  external: z.boolean().optional().describe('Done before the stop.'),
  when: z.array(z.enum(changeConditions)).optional(),
  runsSheets: z.boolean().optional(),
  sheets: whole.optional(),
});

export const pressSchema = z.strictObject({
  kind: z.literal('press').default('press'),
  ...device,
  maxSheetWidthMm: mm,
  maxSheetHeightMm: mm,
  minSheetWidthMm: mm,
  minSheetHeightMm: mm,
  maxImageWidthMm: mm,
  maxImageHeightMm: mm,
  gripperMm: marginMm,
  freeEdgeMm: marginMm,
  colourBarMm: marginMm,
  units: z.int().min(1),
  unitsFront: whole,
  unitsBack: whole,
  unitInks: z.array(text.nullable()).describe('Ink that stays in each unit from the feeder; null: free.'),
  inkZones: z.int().min(1),
  inkZoneMm: mm,
  zoneOne: z.enum(['operatorSide', 'driveSide']),
  bothSides: z.enum(['none', 'perfecting', 'onePass']),
  plate: id,
  curing: z.enum(['none', 'instant']),
  minGsm: gsm,
  maxGsm: gsm,
  speedPerHour: rate.describe('Rated ceiling; never planned with.'),
  planSpeedPerHour: z.array(z.strictObject({ gsmFrom: gsm, gsmTo: gsm, perHour: rate })).min(1),
  shortRun: z.strictObject({ belowSheets: whole, speedFactor: factor }),
  makereadySpeedPerHour: rate,
  setupTasks: z.array(setupTask).min(1).max(20),
  overs: z
    .array(
      z.strictObject({
        coloursUpTo: z.int().min(1),
        bothSides: z.boolean(),
        setupSheets: whole,
        runningPct: pct,
      }),
    )
    .min(1),
});

export const platesetterSchema = z.strictObject({
  kind: z.literal('platesetter').default('platesetter'),
  ...device,
  plates: z.array(z.strictObject({ plate: id, perHour: rate })).min(1),
  firstPlateOutS: seconds,
  setupS: seconds,
});

export const prepressSchema = z.strictObject({
  kind: z.literal('prepress').default('prepress'),
  ...device,
  setupS: seconds,
  perPageS: seconds,
  perPlateS: seconds,
});

export const guillotineSchema = z.strictObject({
  kind: z.literal('guillotine').default('guillotine'),
  ...device,
  cutWidthMm: mm,
  minGaugeMm: marginMm,
  maxClampMm: mm,
  workingLiftMm: z.record(text, mm).describe('Height of a lift by class of stock; board from 200 g/m².'),
  handLiftMaxKg: z.number().positive(),
  setupS: seconds,
  perLiftS: seconds,
  perCutS: seconds,
  perTurnS: seconds.describe('A quarter turn.'),
  overs,
});

export const folderSchema = z.strictObject({
  kind: z.literal('folder').default('folder'),
  ...device,
  maxSheetWidthMm: mm,
  maxSheetLengthMm: mm,
  minSheetWidthMm: mm,
  minSheetLengthMm: mm,
  units: z
    .array(z.strictObject({ kind: z.enum(['plate', 'knife']), count: z.int().min(1) }))
    .min(1)
    .describe('Groups of folding units; each folds at right angles to the one before.'),
  plateStopMaxMm: mm,
  infeedMPerMin: rate,
  gapMm: marginMm,
  speedFactor: factor,
  setupS: z.record(z.string().regex(/^(parallel|rightAngle)[1-9]$/), seconds),
  repeatSetupS: seconds,
  scoring: z.boolean().optional().describe('Creases heavier paper before it folds it.'),
  maxGsmByFolds: z.array(gsm).min(1),
  overs,
});

export const stitcherSchema = z.strictObject({
  kind: z.literal('stitcher').default('stitcher'),
  ...device,
  stations: z.int().min(1),
  coverFeeder: z.boolean(),
  opening: z.array(z.enum(['lip', 'suckers'])).min(1),
  lipMm: marginMm,
  minTrimWidthMm: mm,
  minTrimHeightMm: mm,
  maxTrimWidthMm: mm,
  maxTrimHeightMm: mm,
  maxThicknessMm: mm,
  wireMm: mm,
  stitches: z.int().min(1),
  trim: z.strictObject({ headMm: marginMm, footMm: marginMm, faceMm: marginMm }),
  perHour: rate,
  shortRun: z.strictObject({ belowCopies: whole, speedFactor: factor }),
  setupS: seconds,
  setupPerSectionS: seconds,
  coverSetupS: seconds,
  repeatSetupS: seconds,
  overs: z.strictObject({ setupSheets: whole, runningPct: pct, setupPerSection: whole }),
});

export const binderSchema = z.strictObject({
  kind: z.literal('binder').default('binder'),
  ...device,
  minBlockMm: mm,
  maxBlockMm: mm,
  millMm: marginMm,
  sideGlueMm: marginMm,
  trim: z.strictObject({ headMm: marginMm, footMm: marginMm, faceMm: marginMm }),
  perHour: rate,
  setupS: seconds,
  warmUpS: seconds,
  coolBeforeTrimS: seconds,
  overs,
});

export const benchSchema = z.strictObject({
  kind: z.literal('bench').default('bench'),
  ...device,
  does: z.array(text).min(1).describe('Processes of the standard, or words where it has none.'),
  perHour: rate,
  overs: overs.default({ setupSheets: 0, runningPct: 0 }),
});
