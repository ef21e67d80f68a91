import { type Work, type WorkQueue, workId } from '#libs/flow';
import { queuePolicies } from './queue-policies.js';

export interface InlineQueue extends WorkQueue {
  /** Resolves once nothing waits and nothing is being handled; at once while nobody serves. */
  idle(): Promise<void>;
}

/**
 * A queue in memory that handles one piece of work after another, in the order offered, and never waits: for runs in
 * virtual time, where the same offers must always lead to the same order of doings.
 */
export function inlineQueue(
  onTrouble: (message: string, cause: unknown) => void = () => undefined,
): InlineQueue {
  const waiting = new Map<string, Work>();
  let handler: ((work: Work) => Promise<void>) | null = null;
  let running: Promise<void> | null = null;
  let isClosed = false;

  const handle = async (work: Work, serve: (work: Work) => Promise<void>): Promise<void> => {
    for (let attempt = 1; ; attempt++) {
      try {
        await serve(work);
        return;
      } catch (cause) {
        if (attempt < queuePolicies[work.kind].attempts) continue;
        onTrouble(`work ${workId(work)} is given up until it is offered again`, cause);
        return;
      }
    }
  };

  const run = async (): Promise<void> => {
    // Starts behind whoever offers, which has not returned yet.
    await Promise.resolve();
    for (;;) {
      const [next] = waiting;
      if (next === undefined || handler === null || isClosed) break;
      waiting.delete(next[0]);
      await handle(next[1], handler);
    }
    running = null;
  };

  const wake = (): void => {
    if (handler !== null && waiting.size > 0 && !isClosed) running ??= run();
  };

  return {
    async offer(work) {
      for (const each of work) {
        if (!waiting.has(workId(each))) waiting.set(workId(each), each);
      }
      wake();
    },
    async serve(serve) {
      handler = serve;
      wake();
    },
    async clear() {
      waiting.clear();
    },
    async close() {
      isClosed = true;
      await running;
    },
    async idle() {
      while (running !== null) await running;
    },
  };
}
