import type { PlanStep } from '#libs/craft';
import { Fault } from '#libs/kernel';
import { type ExchangeName, type ProcessType, processNames } from './process-type.js';

/** Processes by their standard names. */
export type Registry = ReadonlyMap<string, ProcessType>;

/** Builds the registry; throws on an entry that is missing or doubled, so that no server starts half able. */
export function processRegistry(entries: readonly ProcessType[]): Registry {
  const registry = new Map<string, ProcessType>();
  for (const entry of entries) {
    if (registry.has(entry.name)) throw new Fault('BROKEN', `the process ${entry.name} is registered twice`);
    registry.set(entry.name, entry);
  }
  const missing = processNames.filter((name) => !registry.has(name));
  if (missing.length > 0) throw new Fault('BROKEN', `no process is registered for ${missing.join(', ')}`);
  return registry;
}

/** The processes of a step in their order. A plan with an unknown one was not made by this product. */
export function processesOf(registry: Registry, step: PlanStep): readonly ProcessType[] {
  return step.types.map((name) => {
    const process = registry.get(name);
    if (process === undefined) throw new Fault('BROKEN', `step ${step.id} names the unknown process ${name}`);
    return process;
  });
}

/** What the last process of the step that makes something makes: the element name of the step's output. */
export function outputNameOf(registry: Registry, step: PlanStep): ExchangeName {
  const makes = processesOf(registry, step).flatMap(({ makes }) => makes ?? []);
  return makes.at(-1) ?? 'Component';
}
