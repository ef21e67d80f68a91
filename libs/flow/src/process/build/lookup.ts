import type { Plan, PlanSheet, PlanStep } from '#libs/craft';

/** The sheets that a step works on: its own, or all of the plan where it names none. */
export function sheetsOf(plan: Plan, step: PlanStep): readonly PlanSheet[] {
  if (step.sheet === undefined) return plan.sheets;
  return plan.sheets.filter((sheet) => sheet.name === step.sheet);
}

/** The steps before this one, in the order of the plan's inputs. */
export function producersOf(plan: Plan, step: PlanStep): readonly PlanStep[] {
  const ids = step.inputs.length > 0 ? step.inputs.map((input) => input.from) : step.after;
  return ids.flatMap((id) => plan.steps.find((other) => other.id === id) ?? []);
}

/** Whether nothing in the plan comes after the step. */
export function isLast(plan: Plan, step: PlanStep): boolean {
  return !plan.steps.some((other) => other.after.includes(step.id));
}

/** Which pass of its sheet a printing step is, counted from 1. */
export function passOf(plan: Plan, step: PlanStep): number {
  if (step.pass !== undefined) return step.pass;
  const same = plan.steps.filter(
    (other) => other.types.includes('ConventionalPrinting') && other.sheet === step.sheet,
  );
  return Math.max(0, same.indexOf(step)) + 1;
}

/** Plates that a step makes or prints from: those of its sheets, and of its side where each side has its own. */
export function platesOf(plan: Plan, step: PlanStep): Plan['plateList'] {
  const sheets = sheetsOf(plan, step);
  return plan.plateList.filter((plate) => {
    const sheet = sheets.find(({ name }) => name === plate.sheet);
    if (sheet === undefined) return false;
    // Turned work prints both passes from the same plates.
    const shared = sheet.workStyle === 'WorkAndTurn' || sheet.workStyle === 'WorkAndTumble';
    return step.side === undefined || shared || plate.side === step.side;
  });
}

/** Key of a resource that tells about the inks of some sheets: sheets with all inks of the job share one. */
export function inkKey(plan: Plan, sheets: readonly PlanSheet[], key: string): string {
  const all = inksOf(plan, sheets).length === inksOf(plan, plan.sheets).length;
  return all ? key : `${key}-${sheets.map(({ name }) => name).join('-')}`;
}

/** Every ink of the sheets, in the order of the plates. */
export function inksOf(plan: Plan, sheets: readonly PlanSheet[]): readonly string[] {
  const names = new Set(sheets.map(({ name }) => name));
  return [...new Set(plan.plateList.filter(({ sheet }) => names.has(sheet)).map(({ ink }) => ink))];
}

/** Pages of the Document RunList before those of a part: the body, or each version in turn, then the cover. */
export function pagesBefore(plan: Plan, part: string): number {
  const parts = [...new Set(plan.signatures.map((signature) => signature.part))].filter(
    (name) => name !== 'cover',
  );
  const before = part === 'cover' ? Math.max(1, parts.length) : Math.max(0, parts.indexOf(part));
  return before * plan.product.pages;
}
