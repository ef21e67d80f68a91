import {
  createPostgresBackend,
  type Job,
  type JobsOptions,
  Queue,
  Worker,
  type WorkerOptions,
  withBackend,
} from 'bullmq';
import { Redis } from 'ioredis';
import pg from 'pg';
import type { Work } from '#libs/flow';
import type { QueuePolicy } from './queue-policies.js';

interface Part {
  waitUntilReady(): Promise<unknown>;
  close(): Promise<void>;
  on(event: 'error', listener: (cause: Error) => void): unknown;
}

/** What we use of a BullMQ queue, whatever is behind it. */
export interface Producer extends Part {
  addBulk(jobs: { name: string; data: Work; opts: JobsOptions }[]): Promise<unknown>;
  drain(delayed: boolean): Promise<void>;
}

export interface Consumer extends Part {
  on(event: 'error', listener: (cause: Error) => void): unknown;
  on(event: 'failed', listener: (job: Job<Work> | undefined, cause: Error) => void): unknown;
}

/** The two things that keep queues for us: one library, chosen by the kind of URL. */
export interface BackEnd {
  /** Fails with the reason when nothing answers: BullMQ itself would go on trying for ever. */
  reach(): Promise<void>;
  producer(name: string): Producer;
  consumer(name: string, handler: (work: Work) => Promise<void>, policy: QueuePolicy): Consumer;
}

const workerOptions = (policy: QueuePolicy): Omit<WorkerOptions, 'connection'> => ({
  concurrency: policy.concurrency,
  lockDuration: policy.lockMs,
  stalledInterval: policy.stalledCheckMs,
  maxStalledCount: policy.stalledLimit,
  // After a failure to reach the back end.
  runRetryDelay: 1000,
});

export function redisBackEnd(url: string, prefix: string): BackEnd {
  return {
    async reach() {
      const redis = new Redis(url, { lazyConnect: true, retryStrategy: () => null, maxRetriesPerRequest: 0 });
      // The reason comes with the rejection too.
      redis.on('error', () => undefined);
      try {
        await redis.connect();
        await redis.ping();
      } finally {
        if (redis.status !== 'end') redis.disconnect();
      }
    },
    producer: (name) =>
      // Who offers hints must not wait for a Redis that is away: it fails at once, and the sweep offers them again.
      new Queue<Work>(name, {
        connection: { url, enableOfflineQueue: false, maxRetriesPerRequest: 1 },
        prefix,
      }),
    consumer: (name, handler, policy) =>
      new Worker<Work>(name, (job) => handler(job.data), {
        ...workerOptions(policy),
        connection: { url, maxRetriesPerRequest: null },
        prefix,
      }),
  };
}

export function postgresBackEnd(url: string, schema: string): BackEnd {
  const classes = withBackend(createPostgresBackend);
  const answerMs = 10_000;
  const connection = {
    connectionString: url,
    schema,
    migrate: true,
    // Hints may be lost with the power, the truth may not: only these connections do without waiting for the disk.
    options: '-c synchronous_commit=off',
    application_name: 'sidelay queue',
    connectionTimeoutMillis: answerMs,
    max: 3,
  };
  return {
    async reach() {
      const client = new pg.Client({ connectionString: url, connectionTimeoutMillis: answerMs });
      client.on('error', () => undefined);
      try {
        await client.connect();
      } finally {
        await client.end();
      }
    },
    producer: (name) => new classes.Queue<Work>(name, { connection }),
    consumer: (name, handler, policy) =>
      new classes.Worker<Work>(name, (job) => handler(job.data), { ...workerOptions(policy), connection }),
  };
}
