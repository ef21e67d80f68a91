import { done, error, type Problem, type Refused, type Result, refuse } from '#libs/kernel';
import { type BenchCommand, type BenchCounts, benchWork } from '../decide/bench.js';
import { commandStep, commandTicket, type TicketCommand } from '../decide/command.js';
import type { Decision } from '../ports.js';
import type { Device } from '../state/device.js';
import type { StockMove } from '../state/stock.js';
import type { TicketFile } from '../state/ticket.js';
import { changeFile } from './change-file.js';
import { contextOf, type EnginePorts } from './ports.js';

/** Holds, resumes or aborts a ticket, or one step of it. `revision` is the If-Match precondition. */
export function command(
  ports: EnginePorts,
  ticketId: string,
  stepId: string | null,
  verb: TicketCommand,
  by: string,
  revision: number | null = null,
): Promise<Result<TicketFile>> {
  return changeFile(
    ports,
    ticketId,
    (draft) => (stepId === null ? commandTicket(draft, verb, by) : commandStep(draft, stepId, verb, by)),
    { revision },
  );
}

/** A person starts, pauses or finishes a step at a bench. */
export function workAtBench(
  ports: EnginePorts,
  ticketId: string,
  stepId: string,
  verb: BenchCommand,
  counts: BenchCounts,
  revision: number | null = null,
): Promise<Result<TicketFile>> {
  return changeFile(ports, ticketId, (draft) => benchWork(draft, stepId, verb, counts), { revision });
}

export type DeviceWish = Pick<Device, 'id' | 'kind' | 'name' | 'driver' | 'url'>;

/** Registers a device, or changes the address of one that is known. What it does now is kept. */
export async function registerDevice(ports: EnginePorts, wish: DeviceWish): Promise<Device> {
  const { result } = await ports.store.change({ devices: [wish.id] }, (slice): Decision<Device> => {
    const now = ports.clock.now();
    const known = slice.devices.get(wish.id);
    const device: Device = known
      ? { ...known, ...wish, silentBecause: null }
      : {
          ...wish,
          status: wish.driver === 'bench' ? 'Idle' : 'Unknown',
          statusDetails: null,
          job: null,
          ticketId: null,
          stepId: null,
          speed: null,
          since: now,
          source: 'assumed',
          lastSeen: null,
          silentBecause: null,
        };
    const same =
      known !== undefined &&
      known.url === wish.url &&
      known.driver === wish.driver &&
      known.silentBecause === null;
    if (same && known.kind === wish.kind && known.name === wish.name) return { result: known };
    return {
      devices: [device],
      events: [
        {
          type: 'device.registered',
          time: now,
          ticketId: null,
          stepId: null,
          deviceId: device.id,
          data: { kind: device.kind, driver: device.driver, url: device.url },
        },
      ],
      result: device,
    };
  });
  return result;
}

export type MoveWish = Pick<StockMove, 'item' | 'unit' | 'amount' | 'from' | 'to' | 'reason'> & {
  readonly lot?: string;
};

/** Books a move of stock by hand: a delivery from the supplier, a count, a correction. */
export async function moveStock(ports: EnginePorts, wish: MoveWish, by: string): Promise<Result<StockMove>> {
  const fault = moveFault(wish);
  if (fault !== null) return refuse(fault) as Refused;
  const { result } = await ports.store.change(
    { stock: [wish.item] },
    (slice): Decision<Result<StockMove>> => {
      const context = contextOf(ports);
      const there = slice.balances.get(wish.item)?.store ?? 0;
      if (wish.to === 'reserved' && wish.from === 'store' && wish.amount > there) {
        const problem = error(
          'STATE_FORBIDS',
          `Only ${there} ${wish.unit} of ${wish.item} are in the store; no more can be reserved.`,
        );
        return { result: refuse(problem) };
      }
      const move: StockMove = {
        ...wish,
        id: context.ids.next(),
        time: context.now,
        lot: wish.lot ?? '',
        ticketId: null,
        stepId: null,
      };
      const { item, unit, amount, from, to, reason } = move;
      return {
        moves: [move],
        events: [
          {
            type: 'stock.moved',
            time: context.now,
            ticketId: null,
            stepId: null,
            deviceId: null,
            data: { item, unit, amount, from, to, reason, by },
          },
        ],
        result: done(move),
      };
    },
  );
  return result;
}

function moveFault(wish: MoveWish): Problem | null {
  if (!(wish.amount > 0)) return error('REQUEST_INVALID', 'amount must be more than 0.', { path: '/amount' });
  if (wish.from === wish.to)
    return error('REQUEST_INVALID', 'from and to must be two accounts.', { path: '/to' });
  if (wish.from === 'spoils' && wish.to === 'good') {
    return error('REQUEST_INVALID', 'Spoils may be fed again, but are never good.', {
      path: '/to',
      hint: 'Book them to process.',
    });
  }
  return null;
}
