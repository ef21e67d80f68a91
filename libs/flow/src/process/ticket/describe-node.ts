import type { PlanStep } from '#libs/craft';
import { formatDuration } from '#libs/jdf';
import { isoTime, type Problem } from '#libs/kernel';
import type { Resource, Step, TicketFile } from '../../state/ticket.js';
import { madeBy } from '../build/exchange.js';
import { producersOf } from '../build/lookup.js';
import type { LinkDraft, ResourceDraft, StepScope } from '../process-type.js';
import { outputNameOf, processesOf, type Registry } from '../registry.js';
import { exchangedInput, madeAmounts } from './exchange-amounts.js';
import type { IndexedLink } from './write-link.js';

/** A node of a step before it is written: what it links, and what stands in the way of sending it to a device. */
export interface NodeDraft {
  readonly step: Step;
  readonly planStep: PlanStep;
  readonly links: readonly IndexedLink[];
  readonly problems: readonly Problem[];
}

export interface DescribeOptions {
  readonly file: TicketFile;
  readonly registry: Registry;
  scopeOf(planStep: PlanStep): StepScope;
  /** Where a device returns the ticket to. */
  readonly targetRoute?: string;
  /** Whether inputs are stated as they really are there rather than as they were planned. */
  readonly realInputs?: boolean;
}

/** Describes the node of a step: its processes' own resources, what it gets, what it makes, when and where it runs. */
export function describeNode(planStep: PlanStep, step: Step, options: DescribeOptions): NodeDraft {
  const { registry, scopeOf, file } = options;
  const scope = scopeOf(planStep);
  const processes = processesOf(registry, planStep);
  const several = processes.length > 1;
  const at = (index: number): readonly number[] => (several ? [index] : []);
  const own = processes.flatMap((process, index) =>
    process.resources(scope).map((link): IndexedLink => ({ ...ownTo(step, link), indexes: at(index) })),
  );
  const inputs = producersOf(scope.plan, planStep).flatMap((from): IndexedLink[] => {
    const name = outputNameOf(registry, from);
    const index = processes.findIndex((process) => process.takes(name, scope, from) !== undefined);
    const row = resourceOf(file, from.id);
    if (index < 0 || row === undefined) return [];
    const taking = processes[index]!.takes(name, scope, from)!;
    const resource = madeBy(scopeOf(from), name, row);
    const amounts = exchangedInput({ scope, step, from, row, name, real: options.realInputs ?? false });
    return [{ ...taking, resource, usage: 'Input', amounts, indexes: at(index) }];
  });
  const made = step.outputs.flatMap((id): IndexedLink[] => {
    const row = resourceOf(file, id);
    if (row === undefined) return [];
    const name = outputNameOf(registry, planStep);
    const resource = madeBy(scope, name, row);
    const index = processes.map((process) => process.makes).lastIndexOf(name);
    return [{ resource, usage: 'Output', amounts: madeAmounts(step, row, name), indexes: at(index) }];
  });
  return {
    step,
    planStep,
    links: joined([...general(file, step, options), ...own, ...inputs, ...made]),
    problems: processes.flatMap((process) => process.checks(scope.plan, planStep)),
  };
}

function resourceOf(file: TicketFile, id: string): Resource | undefined {
  return file.resources.find((row) => row.id === id);
}

/** What only this node uses has the step's name in its key, for other steps have the like. */
function ownTo(step: Step, link: LinkDraft): LinkDraft {
  const { resource } = link;
  return resource.shared ? link : { ...link, resource: { ...resource, key: `${step.id}-${resource.key}` } };
}

/** Key of a step's NodeInfo. */
export const infoKey = (stepId: string): string => `${stepId}-info`;

/** Schedule and device, which every process may have. */
function general(file: TicketFile, step: Step, options: DescribeOptions): readonly IndexedLink[] {
  const info: ResourceDraft = {
    key: infoKey(step.id),
    name: 'NodeInfo',
    class: 'Parameter',
    shared: false,
    attributes: {
      Start: step.plannedStart === null ? undefined : isoTime(step.plannedStart),
      End: step.plannedEnd === null ? undefined : isoTime(step.plannedEnd),
      SetupDuration: formatDuration(step.setupS),
      TotalDuration: formatDuration(step.setupS + step.runS),
      JobPriority: file.ticket.priority,
      TargetRoute: options.targetRoute,
    },
  };
  const links: IndexedLink[] = [{ resource: info, usage: 'Input', indexes: [] }];
  if (step.deviceId !== null) {
    const device: ResourceDraft = {
      key: `${step.id}-device`,
      name: 'Device',
      class: 'Implementation',
      shared: false,
      attributes: { DeviceID: step.deviceId },
    };
    links.push({ resource: device, usage: 'Input', indexes: [] });
  }
  return links;
}

/** Links of several processes to the same thing in the same way as one, with all their places. */
function joined(links: readonly IndexedLink[]): readonly IndexedLink[] {
  const found = new Map<string, IndexedLink>();
  for (const link of links) {
    const key = [link.usage, link.role ?? '', link.resource.key].join(' ');
    const known = found.get(key);
    found.set(key, known === undefined ? link : { ...known, indexes: [...known.indexes, ...link.indexes] });
  }
  return [...found.values()];
}
