import { measureDispatch } from './dispatching.mjs';

export const name = 'dispatch';
export const unit = 'steps/s';
export const better = 'higher';
export const target = 0.1;
export const note =
  'steps read, their ticket written for the device, delivered and booked, against BullMQ on the same PostgreSQL with a handler that does nothing';

export const run = () => measureDispatch(null);
