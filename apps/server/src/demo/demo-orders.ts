import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type EnginePorts, takeIn } from '#libs/flow';
import { isoTime } from '#libs/kernel';
import { sha256 } from '../intake/unpack.js';

/** Plant seconds between two orders once the first ones are in. */
const EVERY_S = 1800;
const AT_ONCE = 4;

/** The demo's orders, in the order of their file names. */
function readOrders(folders: readonly string[]): readonly { name: string; bytes: Uint8Array }[] {
  return folders.flatMap((folder) =>
    readdirSync(folder)
      .filter((name) => /\.(json|jdf)$/.test(name))
      .sort()
      .map((name) => ({ name, bytes: readFileSync(join(folder, name)) })),
  );
}

const HALF_HOUR_MS = 1_800_000;

/** An order with a due time some hours from now, on the half hour; tickets of the standard are sent as they are. */
function withDue(order: { name: string; bytes: Uint8Array }, n: number, now: number): Uint8Array {
  if (!order.name.endsWith('.json')) return order.bytes;
  const hours = 3 + 2 * (n % 4);
  const due = isoTime(Math.ceil((now + hours * 2 * HALF_HOUR_MS) / HALF_HOUR_MS) * HALF_HOUR_MS);
  const json = JSON.parse(Buffer.from(order.bytes).toString('utf8')) as Record<string, unknown>;
  return Buffer.from(JSON.stringify({ ...json, due }, null, 2));
}

/**
 * Sends the demo's orders in, some at once and the rest as the day goes on, again from the start when all are through.
 * Each has a key of its own, so a restart sends none twice and goes on where it was. Returns the way to stop.
 */
export function sendDemoOrders(ports: EnginePorts, folders: readonly string[]): () => void {
  const orders = readOrders(folders);
  let cancel = (): void => undefined;
  let off = false;
  const send = async (n: number): Promise<boolean> => {
    const key = { scope: 'demo', key: String(n) };
    // Its bytes differ with the time of day, so a restart asks for the key alone.
    if ((await ports.store.receipt(key.scope, key.key)) !== null) return true;
    const order = orders[n % orders.length]!;
    const bytes = withDue(order, n, ports.clock.now());
    const taken = await takeIn(ports, {
      bytes,
      sha256: sha256(bytes),
      mediaType: order.name.endsWith('.json') ? 'application/json' : 'application/vnd.cip4-jdf+xml',
      name: order.name,
      intake: 'demo',
      ticket: { bytes, part: null, beside: null },
      problems: [],
      key,
    });
    return taken.ok && taken.value.repeated;
  };
  const next = async (n: number): Promise<void> => {
    if (off || orders.length === 0) return;
    const repeated = await send(n).catch((cause) => {
      ports.log('warn', 'a demo order could not be sent in', { cause: String(cause) });
      return false;
    });
    // What an earlier run sent takes no time to skip.
    cancel = ports.clock.after(repeated || n + 1 < AT_ONCE ? 1 : EVERY_S, () => next(n + 1));
  };
  void next(0);
  return () => {
    off = true;
    cancel();
  };
}
