import type { Plan, PlanStep } from '#libs/craft';
import type { Result } from '#libs/kernel';
import type { StoredDocument } from '../ports.js';
import type { TicketFile } from '../state/ticket.js';
import { collecting } from './collecting.process.js';
import { conventionalPrinting } from './conventional-printing.process.js';
import { coverApplication } from './cover-application.process.js';
import { creasing } from './creasing.process.js';
import { cutting } from './cutting.process.js';
import { folding } from './folding.process.js';
import { gathering } from './gathering.process.js';
import { imageSetting } from './image-setting.process.js';
import { imposition } from './imposition.process.js';
import { interpreting } from './interpreting.process.js';
import type { ExchangeName, ProcessType } from './process-type.js';
import { outputNameOf, processRegistry } from './registry.js';
import { rendering } from './rendering.process.js';
import { screening } from './screening.process.js';
import { spinePreparation } from './spine-preparation.process.js';
import { stitching } from './stitching.process.js';
import { stripping } from './stripping.process.js';
import { type ExportOptions, writeTicket } from './ticket/export-ticket.js';
import { type ProcessTicketOptions, writeProcessTicket } from './ticket/process-ticket.js';
import { trimming } from './trimming.process.js';

export { type ExchangeName, type ProcessName, type ProcessType, processNames } from './process-type.js';
export type { ExportOptions } from './ticket/export-ticket.js';
export type { ProcessTicketOptions } from './ticket/process-ticket.js';
export {
  type ReturnedPhase,
  type ReturnedTicket,
  type ReturnedUse,
  returnedAudits,
} from './ticket/returned-audits.js';
export { type UseItem, useItems } from './ticket/use-items.js';

/** Every process this product can plan, one file and one line each. */
export const processes: readonly ProcessType[] = [
  stripping,
  imposition,
  interpreting,
  rendering,
  screening,
  imageSetting,
  conventionalPrinting,
  cutting,
  creasing,
  folding,
  collecting,
  stitching,
  gathering,
  spinePreparation,
  coverApplication,
  trimming,
];

const registry = processRegistry(processes);

/** Throws when a process is missing or doubled. Called once at start; `entries` lets an outside package try its own. */
export function checkProcesses(entries: readonly ProcessType[] = processes): void {
  processRegistry(entries);
}

/** Element name of the standard for what a step makes. */
export function resourceNameOf(step: PlanStep): ExchangeName {
  return outputNameOf(registry, step);
}

/** What stands in the way of sending each step of a plan to its device; empty for a plan that is whole. */
export function checkSteps(plan: Plan): ReturnType<ProcessType['checks']> {
  return plan.steps.flatMap((step) =>
    step.types.flatMap((type) => registry.get(type)?.checks(plan, step) ?? []),
  );
}

/** The ticket as JDF, with a node for each step and the audits of what happened; see `writeTicket`. */
export function exportTicket(
  file: TicketFile,
  original: StoredDocument | null,
  options: ExportOptions,
): Result<string> {
  return writeTicket(registry, file, original, options);
}

/** What a device is sent for one step; see `writeProcessTicket`. */
export function processTicket(
  file: TicketFile,
  original: StoredDocument | null,
  stepId: string,
  options: ProcessTicketOptions,
): Result<string> {
  return writeProcessTicket(registry, file, original, stepId, options);
}
