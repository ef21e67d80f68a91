import { deviceStatus } from './device-status.js';
import { entryStatus } from './entry-status.js';
import { checkMachine, type Machine } from './machine.js';
import { nodeStatus, ticketStatuses } from './node-status.js';
import { resourceStatus } from './resource-status.js';

export { isFinal, type Machine, mayMove } from './machine.js';
export { deviceStatus, entryStatus, nodeStatus, resourceStatus, ticketStatuses };

/** All tables, for the start-up check and the drawings in docs/states.md. */
export const machines: readonly Machine<string>[] = [nodeStatus, entryStatus, resourceStatus, deviceStatus];

/** Throws on the first table that is not sound. Called once at start. */
export function checkMachines(): void {
  for (const machine of machines) checkMachine(machine);
}
