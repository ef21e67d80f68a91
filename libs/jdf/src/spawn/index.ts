export { type Act, auditStamp } from './agent.js';
export { checkReturned } from './check-returned.js';
export { merge } from './merge.js';
export { type NodeChoice, type Spawned, type SpawnOptions, spawn } from './spawn.js';
export { unspawn } from './unspawn.js';
