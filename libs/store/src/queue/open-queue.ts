import { type Work, type WorkKind, type WorkQueue, workId } from '#libs/flow';
import { Fault } from '#libs/kernel';
import { type BackEnd, type Consumer, type Producer, postgresBackEnd, redisBackEnd } from './back-ends.js';
import { type QueuePolicies, type QueuePolicy, queuePolicies, workKinds } from './queue-policies.js';

export interface QueueOptions {
  /** `redis://…`, `rediss://…`, `postgres://…` or `postgresql://…`. */
  readonly url: string;
  /** Where the queues lie in PostgreSQL. Default `sidelay_queue`. */
  readonly schema?: string;
  /** What their keys begin with in Redis. Default `sidelay`. */
  readonly prefix?: string;
  /** Other waits than the usual, for tests. */
  readonly policies?: QueuePolicies;
  /** Told of connections that broke and of work that was given up. */
  readonly onTrouble?: (message: string, cause: unknown) => void;
}

/** Opens the queues. Throws a `Fault`: SETTING for a URL of another kind, DATABASE when nothing answers. */
export async function openQueue(options: QueueOptions): Promise<WorkQueue> {
  const backEnd = backEndOf(options);
  try {
    await backEnd.reach();
  } catch (cause) {
    throw new Fault('DATABASE', `the queue at ${withoutPassword(options.url)} does not answer`, { cause });
  }
  const queue = new BullQueue(backEnd, options.policies ?? queuePolicies, options.onTrouble);
  await queue.ready();
  return queue;
}

function backEndOf({ url, schema = 'sidelay_queue', prefix = 'sidelay' }: QueueOptions): BackEnd {
  if (/^rediss?:/.test(url)) return redisBackEnd(url, prefix);
  if (/^postgres(ql)?:/.test(url)) return postgresBackEnd(url, schema);
  throw new Fault('SETTING', 'the queue URL begins with neither redis:// nor postgres://');
}

const withoutPassword = (url: string): string => url.replace(/\/\/[^@/]*@/, '//…@');

class BullQueue implements WorkQueue {
  readonly #producers: ReadonlyMap<WorkKind, Producer>;
  #consumers: readonly Consumer[] = [];
  #isClosing = false;

  constructor(
    private readonly backEnd: BackEnd,
    private readonly policies: QueuePolicies,
    private readonly onTrouble: (message: string, cause: unknown) => void = () => undefined,
  ) {
    this.#producers = new Map(workKinds.map((kind) => [kind, backEnd.producer(kind)]));
    for (const producer of this.#producers.values()) this.#watch(producer);
  }

  async ready(): Promise<void> {
    await Promise.all([...this.#producers.values()].map((producer) => producer.waitUntilReady()));
  }

  async offer(work: readonly Work[]): Promise<void> {
    await Promise.all(
      [...this.#producers].map(async ([kind, producer]) => {
        const jobs = work.filter((each) => each.kind === kind).map((each) => this.#job(each));
        if (jobs.length > 0) await producer.addBulk(jobs);
      }),
    );
  }

  /** Nothing is kept of work that is over, done or given up: it may be offered again under the same name. */
  #job(work: Work) {
    const { attempts, backoffMs } = this.policies[work.kind];
    return {
      name: work.kind,
      data: work,
      opts: {
        jobId: workId(work),
        attempts,
        backoff: { type: 'exponential', delay: backoffMs },
        removeOnComplete: true,
        removeOnFail: true,
      },
    };
  }

  async serve(handler: (work: Work) => Promise<void>): Promise<void> {
    if (this.#consumers.length > 0) throw new Fault('BROKEN', 'the queue is served already');
    this.#consumers = workKinds.map((kind) => this.#consumer(kind, handler, this.policies[kind]));
    await Promise.all(this.#consumers.map((consumer) => consumer.waitUntilReady()));
  }

  #consumer(kind: WorkKind, handler: (work: Work) => Promise<void>, policy: QueuePolicy): Consumer {
    const consumer = this.backEnd.consumer(kind, handler, policy);
    this.#watch(consumer);
    consumer.on('failed', (job, cause) => {
      if (job !== undefined && job.attemptsMade < policy.attempts) return;
      this.onTrouble(`work ${job?.id ?? kind} is given up until it is offered again`, cause);
    });
    return consumer;
  }

  #watch(part: { on(event: 'error', listener: (cause: Error) => void): unknown }): void {
    part.on('error', (cause) => {
      if (!this.#isClosing) this.onTrouble('the queue has trouble', cause);
    });
  }

  /** What is being handled goes on; it will find that there is nothing to do. */
  async clear(): Promise<void> {
    await Promise.all([...this.#producers.values()].map((producer) => producer.drain(true)));
  }

  /** Waits for what is being handled, then lets go of all connections. */
  async close(): Promise<void> {
    this.#isClosing = true;
    await Promise.all(this.#consumers.map((consumer) => consumer.close()));
    await Promise.all([...this.#producers.values()].map((producer) => producer.close()));
  }
}
