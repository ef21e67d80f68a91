export type { BenchCommand, BenchCounts } from './decide/bench.js';
export type { TicketCommand } from './decide/command.js';
export * from './definitions/index.js';
export { calendarsOf, instantOf, type OpenHours } from './engine/calendars.js';
export {
  command,
  type DeviceWish,
  type MoveWish,
  moveStock,
  registerDevice,
  workAtBench,
} from './engine/commands.js';
export { doWork } from './engine/dispatch.js';
export { readDocument } from './engine/intake.js';
export { plannedFile } from './engine/planned-file.js';
export type { EnginePorts, Log } from './engine/ports.js';
export type { PartsBeside, Reading, ToRead } from './engine/reading.js';
export { receiveJmf, refusalJmf } from './engine/receive.js';
export { reconcileDevice } from './engine/reconcile.js';
export { keepSweeping, sweep } from './engine/sweep.js';
export { type Incoming, type TakenIn, takeIn } from './engine/take-in.js';
export { checkMachines, machines, ticketStatuses } from './machines/index.js';
export { type Answer, checkHandlers, type Fetched, type Reception } from './on-message/index.js';
export * from './ports.js';
export { checkProcesses, exportTicket, processTicket } from './process/index.js';
export { checkProfile } from './profile/index.js';
export * from './state/device.js';
export * from './state/event.js';
export * from './state/stock.js';
export * from './state/ticket.js';
export * from './views/index.js';
