import { measureDispatch } from './dispatching.mjs';

export const name = 'dispatch-redis';
export const unit = 'steps/s';
export const better = 'higher';
export const target = 0.05;
export const note = 'as dispatch, with the hints in Redis (SIDELAY_TEST_REDIS_URL or the usual local port)';

export const run = () => measureDispatch(process.env.SIDELAY_TEST_REDIS_URL || 'redis://127.0.0.1:6379');
