import { FileDraft } from '../decide/draft.js';
import { routeReadySteps } from '../decide/route.js';
import type { Decision } from '../ports.js';
import { AUTOMATIC, moveAutomatic } from './automatic.js';
import { contextOf, type EnginePorts, offerWork } from './ports.js';
import { reconcileDevices } from './reconcile.js';

/** Plant seconds between sweeps. */
const SWEEP_EVERY_S = 30;
/** Every so many sweeps the devices are asked what they have. */
const ASK_EVERY = 10;

/**
 * Offers everything that is due to the queues again, and wakes steps for which time alone was missing. Queues may forget
 * everything, at any moment: what the truth still has open comes back with the next sweep.
 */
export async function sweep(ports: EnginePorts): Promise<void> {
  const now = ports.clock.now();
  for (const ticketId of await ports.store.ticketsToWake(now)) {
    const { work } = await ports.store.change({ tickets: [ticketId] }, (slice): Decision<null> => {
      const file = slice.tickets.get(ticketId);
      if (file === undefined) return { result: null };
      const draft = new FileDraft(file, contextOf(ports), slice.balances);
      routeReadySteps(draft);
      return { ...draft.change(), result: null };
    });
    await offerWork(ports, work);
  }
  await offerWork(ports, await ports.store.openWork(now));
  // After a restart nobody holds the appointments of our own workstations any more: look at each.
  for (const device of await ports.store.devices()) {
    if (device.driver === AUTOMATIC) await moveAutomatic(ports, device.id);
  }
}

/** Sweeps again and again until called off. A sweep that fails is logged; the next one tries again. */
export function keepSweeping(ports: EnginePorts, everyS = SWEEP_EVERY_S): () => void {
  let off = false;
  let turn = 0;
  let cancel = (): void => undefined;
  const next = (): void => {
    cancel = ports.clock.after(everyS, async () => {
      if (off) return;
      try {
        await sweep(ports);
        if (++turn % ASK_EVERY === 0) await reconcileDevices(ports);
      } catch (cause) {
        ports.log('error', 'a sweep failed', { cause: String(cause) });
      }
      if (!off) next();
    });
  };
  next();
  return () => {
    off = true;
    cancel();
  };
}
