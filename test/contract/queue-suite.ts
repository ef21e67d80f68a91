import type { Work, WorkQueue } from '#libs/flow';

/** Queues over a place of their own. */
export interface QueuePlace {
  /** One server's queue over that place; `onTrouble` hears of what is given up. */
  open(onTrouble?: (message: string, cause: unknown) => void): Promise<WorkQueue>;
  /** Resolves once all that was offered is handled, where the implementation can tell. */
  settle?(queue: WorkQueue): Promise<void>;
  /** Takes one waiting delivery in another process, and kills that process while it holds it. */
  takeAndDie?(): Promise<void>;
  drop(): Promise<void>;
}

const dispatch = (entryId: string, attempt = 1): Work => ({
  kind: 'dispatch',
  ticketId: 't',
  entryId,
  attempt,
});
const instruct = (entryId: string): Work => ({ kind: 'instruct', ticketId: 't', entryId });

/** A gate that handlers wait at until the test opens it. */
function gate(): { readonly passed: Promise<void>; open(): void } {
  let open = (): void => undefined;
  const passed = new Promise<void>((resolve) => {
    open = resolve;
  });
  return { passed, open };
}

/** Collects what a handler was given, and resolves when so many came. */
class Log {
  readonly seen: Work[] = [];
  #waiters: { count: number; resolve: () => void }[] = [];

  readonly add = (work: Work): void => {
    this.seen.push(work);
    for (const waiter of this.#waiters) if (this.seen.length >= waiter.count) waiter.resolve();
  };

  reached(count: number): Promise<void> {
    if (this.seen.length >= count) return Promise.resolve();
    return new Promise((resolve) => this.#waiters.push({ count, resolve }));
  }

  get ids(): string[] {
    return this.seen.map((work) => work.entryId).sort();
  }
}

/** What every implementation of the work queue must do, whatever keeps its hints. */
export function exerciseQueue(make: () => Promise<QueuePlace>): void {
  let place: QueuePlace;
  const opened: WorkQueue[] = [];
  const open = async (onTrouble?: (message: string, cause: unknown) => void): Promise<WorkQueue> => {
    const queue = await place.open(onTrouble);
    opened.push(queue);
    return queue;
  };

  beforeEach(async () => {
    place = await make();
  });
  afterEach(async () => {
    await Promise.all(opened.splice(0).map((queue) => queue.close()));
    await place.drop();
  });

  it('hands out all that is offered, of both kinds, before and after it is served', async () => {
    const queue = await open();
    const log = new Log();
    await queue.offer([dispatch('e1'), instruct('e2'), dispatch('e3', 4)]);
    await queue.serve(async (work) => log.add(work));
    await queue.offer([dispatch('e4')]);
    await queue.offer([]);
    await log.reached(4);
    expect(log.ids).toEqual(['e1', 'e2', 'e3', 'e4']);
    expect(log.seen.find((work) => work.entryId === 'e3')).toEqual(dispatch('e3', 4));
    expect(log.seen.find((work) => work.entryId === 'e2')).toEqual(instruct('e2'));
  });

  it('hands out five hundred at once, each of them once', async () => {
    const queue = await open();
    const log = new Log();
    await queue.serve(async (work) => log.add(work));
    await queue.offer(Array.from({ length: 500 }, (_, at) => dispatch(`e${at}`)));
    await log.reached(500);
    expect(new Set(log.ids).size).toBe(500);
  });

  it('handles work once that was offered twice while it waited, and another attempt of it apart', async () => {
    const queue = await open();
    await queue.offer([dispatch('e1'), dispatch('e1')]);
    await queue.offer([dispatch('e1'), dispatch('e1', 2), instruct('e1')]);
    const log = new Log();
    await queue.serve(async (work) => log.add(work));
    await queue.offer([dispatch('last')]);
    await log.reached(4);
    await place.settle?.(queue);
    expect(log.ids).toEqual(['e1', 'e1', 'e1', 'last']);
  });

  it('takes work again that was handled before', async () => {
    const queue = await open();
    const log = new Log();
    await queue.serve(async (work) => log.add(work));
    for (let round = 1; round <= 3; round++) {
      // The handler has returned some time before the queue has noted it: offered again until it is taken.
      while (log.seen.length < round) {
        await queue.offer([instruct('e1')]);
        await Promise.race([log.reached(round), new Promise((resolve) => setTimeout(resolve, 50))]);
      }
    }
    expect(log.seen.length).toBeGreaterThanOrEqual(3);
  });

  it('tries work again whose handler threw, gives it up after a few times, and takes it when offered again', async () => {
    const troubles: string[] = [];
    const givenUp = gate();
    const queue = await open((message) => {
      troubles.push(message);
      givenUp.open();
    });
    const log = new Log();
    let isBroken = true;
    await queue.serve(async (work) => {
      log.add(work);
      if (isBroken) throw new Error('the handler broke');
    });
    await queue.offer([dispatch('e1')]);
    await givenUp.passed;
    expect(log.seen).toHaveLength(3);
    expect(troubles[0]).toContain('dispatch-e1-1');
    isBroken = false;
    while (log.seen.length < 4) {
      await queue.offer([dispatch('e1')]);
      await Promise.race([log.reached(4), new Promise((resolve) => setTimeout(resolve, 50))]);
    }
    expect(log.seen.at(-1)).toEqual(dispatch('e1'));
  });

  it('goes on with other work while one handler throws', async () => {
    const queue = await open();
    const log = new Log();
    await queue.serve(async (work) => {
      if (work.entryId === 'bad') throw new Error('the handler broke');
      log.add(work);
    });
    await queue.offer([dispatch('bad'), dispatch('e1'), dispatch('e2'), instruct('e3')]);
    await log.reached(3);
    expect(log.ids).toEqual(['e1', 'e2', 'e3']);
  });

  it('forgets everything when cleared, and takes new work', async () => {
    const queue = await open();
    await queue.offer([dispatch('e1'), instruct('e2')]);
    await queue.clear();
    const log = new Log();
    await queue.serve(async (work) => log.add(work));
    await queue.offer([dispatch('e3')]);
    await log.reached(1);
    await place.settle?.(queue);
    expect(log.ids).toEqual(['e3']);
  });

  it('waits when closed for what is being handled', async () => {
    const queue = await open();
    const started = gate();
    const finish = gate();
    let isDone = false;
    await queue.serve(async () => {
      started.open();
      await finish.passed;
      isDone = true;
    });
    await queue.offer([dispatch('e1')]);
    await started.passed;
    const closing = queue.close();
    finish.open();
    await closing;
    expect(isDone).toBe(true);
  });

  it('hands out again what a killed worker held', async () => {
    // Memory ends with its process: then the sweep alone brings work back, and there is nothing to show here.
    if (place.takeAndDie === undefined) {
      expect(place.settle).toBeDefined();
      return;
    }
    const queue = await open();
    await queue.offer([dispatch('e1')]);
    await place.takeAndDie();
    const log = new Log();
    await queue.serve(async (work) => log.add(work));
    await log.reached(1);
    expect(log.seen[0]).toEqual(dispatch('e1'));
  });
}
