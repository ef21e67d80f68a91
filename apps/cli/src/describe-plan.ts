import type { JobSequence, Plan } from '#libs/craft';

const minutes = (seconds: number): string => {
  const whole = Math.round(seconds);
  return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, '0')} min`;
};

/** A plan on one screen, for people. */
export function describePlan(plan: Plan): string {
  const { product, totals } = plan;
  const lines = [
    `${plan.name} (${plan.jobId})`,
    `  ${plan.quantity} copies, ${product.pages} pages, ${product.trimWidthMm} × ${product.trimHeightMm} mm, ${product.binding}, ${product.stock}`,
    '',
    ...plan.sheets.map(
      (sheet) =>
        `  ${sheet.name}: ${sheet.press}, ${sheet.workStyle}, ${sheet.sheetWidthMm} × ${sheet.sheetHeightMm} mm, ${sheet.copiesUp} up, ${sheet.plates} plates; ` +
        `${sheet.goodSheets} good + ${sheet.makereadySheets} make-ready + ${sheet.runningWasteSheets} running waste = ${sheet.sheetsToPress} sheets`,
    ),
    '',
    ...plan.steps.map((step) => {
      const after = step.after.length === 0 ? '' : `  after ${step.after.join(', ')}`;
      return `  ${step.id.padEnd(10)} ${step.device.padEnd(13)} set-up ${minutes(step.setupS)}, run ${minutes(step.runS)}, ${step.inAmount} ${step.inUnit} → ${step.outAmount} ${step.unit}${after}`;
    }),
    '',
    ...plan.changeovers.flatMap((change) => [
      `  Change-over ${change.step}: ${change.fromJob ?? 'clean press'} → ${change.toJob}, ${minutes(change.durationS)} to the first good sheet`,
      ...change.differs.map(({ what, from, to }) => `    ${what}: ${from} → ${to}`),
      `    the chain that decides: ${change.criticalPath.join(' → ')}`,
    ]),
    '',
    `  Paper ${totals.paperKg.toFixed(1)} kg, ${totals.plates} plates, set-up ${minutes(totals.setupS)}, run ${minutes(totals.runS)}, ${totals.cost.amount.toFixed(2)} ${totals.cost.currency}`,
    ...plan.alternatives.map(
      ({ what, amount, why }) =>
        `  Other way: ${what}${amount === null ? '' : `, ${amount.toFixed(2)} ${totals.cost.currency}`} (${why})`,
    ),
    ...plan.cautions.map((caution) => `  ! ${caution}`),
  ];
  return lines.join('\n');
}

/** The orders of several jobs on their presses, the least change-over first. */
export function describeSequences(sequences: readonly JobSequence[]): string {
  const least = sequences[0]?.changeoverS ?? 0;
  return sequences
    .map(({ jobs, changeoverS }) => {
      const more = changeoverS === least ? '' : `, ${minutes(changeoverS - least)} more`;
      return `  ${jobs.join(' → ')}: ${minutes(changeoverS)} of change-over${more}`;
    })
    .join('\n');
}
