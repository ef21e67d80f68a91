/**
 * A worker that takes one piece of work and never ends it: to be killed by the test. It is BullMQ alone, so that the
 * suite does not depend on a build. Says "taken" once it holds the work.
 */
import { createPostgresBackend, Worker, withBackend } from 'bullmq';

const { name, redis, postgres, lockMs } = JSON.parse(process.argv[2]);
const hold = () => {
  process.stdout.write('taken\n');
  return new Promise(() => undefined);
};
const options = { lockDuration: lockMs, stalledInterval: lockMs };
if (redis) {
  new Worker(name, hold, {
    ...options,
    connection: { url: redis.url, maxRetriesPerRequest: null },
    prefix: redis.prefix,
  });
} else {
  const classes = withBackend(createPostgresBackend);
  new classes.Worker(name, hold, {
    ...options,
    connection: { connectionString: postgres.url, schema: postgres.schema },
  });
}
