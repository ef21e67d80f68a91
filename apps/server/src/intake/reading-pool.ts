import { Worker } from 'node:worker_threads';
import type { Plant, PressStates } from '#libs/craft';
import type { Reading, ToRead } from '#libs/flow';
import { error, Fault, type Problem, wallClock } from '#libs/kernel';
import { budgetMs, type ReadCost, usualReadCost } from './read-cost.js';
import type { ReadAnswer, ReadRequest, ReadWorkerData } from './read-worker.js';

/** What a worker may take to start, beside the budget of its first document: loading is no fault of the document. */
const START_MS = 60_000;

interface Waiting {
  readonly document: ToRead;
  readonly presses: PressStates;
  readonly settle: (reading: Reading) => void;
  readonly fail: (cause: unknown) => void;
}

export interface ReadingPool {
  read(document: ToRead, presses: PressStates): Promise<Reading>;
  close(): Promise<void>;
}

/**
 * Reads and plans documents beside the thread that serves: a costly document must not stall boards, devices and locks
 * (trust page: counts are the danger, not bytes). A document that takes more time than its size allows, or more memory
 * than a worker has, is refused, its worker ended and replaced.
 */
export function readingPool(plant: Plant, size: number, script: URL, cost = usualReadCost): ReadingPool {
  const line: Waiting[] = [];
  const hands = Array.from({ length: size }, () => new Hand(plant, script, cost, () => line.shift()));
  return {
    read: (document, presses) =>
      new Promise((settle, fail) => {
        line.push({ document, presses, settle, fail });
        hands.find((hand) => hand.isFree)?.next();
      }),
    async close() {
      for (const { fail } of line.splice(0)) fail(new Fault('BROKEN', 'the server stops'));
      await Promise.all(hands.map((hand) => hand.close()));
    },
  };
}

/** One worker, started when it is first needed and again after each end. */
class Hand {
  #worker: Worker | null = null;
  #task: Waiting | null = null;
  #number = 0;
  #cancelBudget = (): void => undefined;

  constructor(
    private readonly plant: Plant,
    private readonly script: URL,
    private readonly cost: ReadCost,
    private readonly take: () => Waiting | undefined,
  ) {}

  get isFree(): boolean {
    return this.#task === null;
  }

  next(): void {
    const task = this.take();
    if (task === undefined) return;
    this.#task = task;
    this.#worker ??= this.#start();
    const { document, presses } = task;
    this.#worker.postMessage({ number: ++this.#number, document, presses } satisfies ReadRequest);
    this.#allow(START_MS);
  }

  /** From now on the document has its budget, and so much more. */
  #allow(moreMs: number): void {
    if (this.#task === null) return;
    const budget = budgetMs(this.cost, this.#task.document.bytes.length);
    this.#cancelBudget();
    this.#cancelBudget = wallClock.setTimeout(() => this.#giveUp(budget), budget + moreMs);
  }

  async close(): Promise<void> {
    this.#end((task) => task.fail(new Fault('BROKEN', 'the server stops')));
    await this.#worker?.terminate();
  }

  #start(): Worker {
    const worker = new Worker(this.script, {
      workerData: { plant: this.plant, limits: this.cost.limits } satisfies ReadWorkerData,
      resourceLimits: { maxOldGenerationSizeMb: this.cost.memoryMb },
    });
    worker.unref();
    worker.on('message', (answer: ReadAnswer) => {
      if ('begun' in answer) {
        if (answer.number === this.#number) this.#allow(0);
        return;
      }
      if (answer.number === this.#number) this.#end((task) => task.settle(answer.reading));
      this.next();
    });
    worker.on('error', (cause) =>
      this.#replace(worker, (task) => {
        if (isOutOfMemory(cause)) task.settle(overMemory(this.cost.memoryMb));
        else task.fail(cause);
      }),
    );
    return worker;
  }

  #giveUp(budget: number): void {
    const worker = this.#worker;
    if (worker === null) return;
    this.#replace(worker, ({ settle }) => settle(overBudget(budget)));
    void worker.terminate();
  }

  #replace(worker: Worker, tell: (task: Waiting) => void): void {
    if (this.#worker === worker) this.#worker = null;
    this.#end(tell);
    this.next();
  }

  #end(tell: (task: Waiting) => void): void {
    this.#cancelBudget();
    const task = this.#task;
    this.#task = null;
    if (task !== null) tell(task);
  }
}

const isOutOfMemory = (cause: unknown): boolean =>
  (cause as { code?: unknown }).code === 'ERR_WORKER_OUT_OF_MEMORY';

function overBudget(budget: number): Reading {
  const seconds = Math.round(budget / 100) / 10;
  return refused(
    error('PLAN_TOO_LONG', `Reading and planning took longer than ${seconds} s.`, {
      hint: 'Send fewer pieces on a sheet, fewer sections or a smaller document, or raise SIDELAY_READ_SECONDS or SIDELAY_READ_SECONDS_PER_MB.',
    }),
  );
}

function overMemory(memoryMb: number): Reading {
  return refused(
    error('XML_LIMIT', `Reading and planning needed more than ${memoryMb} MB of memory.`, {
      hint: 'Split the document, or raise SIDELAY_READ_MEMORY_MB.',
    }),
  );
}

function refused(problem: Problem): Reading {
  return {
    kind: 'unknown',
    jobId: '',
    name: '',
    order: null,
    plan: null,
    pressStates: [],
    problems: [problem],
  };
}
