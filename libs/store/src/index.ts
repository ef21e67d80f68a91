export { type EmbeddedOptions, type EmbeddedPostgres, startEmbeddedPostgres } from './embedded/index.js';
export { exportDatabase } from './export-database.js';
export { importDatabase } from './import-database.js';
export { type OpenStore, openStore, type StoreOptions } from './open-store.js';
export { type InlineQueue, inlineQueue } from './queue/inline-queue.js';
export { openQueue, type QueueOptions } from './queue/open-queue.js';
export { type QueuePolicies, type QueuePolicy, queuePolicies } from './queue/queue-policies.js';
