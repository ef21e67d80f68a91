import type { Clock } from './clock.js';
import type { Random } from './random.js';

/** Identifiers are a port, and time-ordered, so that a run can be replayed and an index stays compact. */
export interface IdSource {
  next(): string;
}

const hex = (value: number, digits: number): string => value.toString(16).padStart(digits, '0');

/**
 * UUID version 7 (RFC 9562 section 5.7): 48 bits of milliseconds, a 12-bit counter that keeps ids of one millisecond in
 * order (section 6.2, method 1), 62 bits of chance.
 */
export function uuidV7Source(clock: Pick<Clock, 'now'>, random: Random): IdSource {
  let lastMs = -1;
  let counter = 0;
  return {
    next() {
      const nowMs = clock.now();
      if (nowMs > lastMs) {
        lastMs = nowMs;
        counter = Math.floor(random.next() * 0x400);
      } else if (++counter > 0xfff) {
        // The counter is full: borrow the next millisecond rather than give an id out of order.
        lastMs += 1;
        counter = 0;
      }
      const variant = 0x8 | Math.floor(random.next() * 4);
      const time = hex(lastMs, 12);
      const tail = hex(Math.floor(random.next() * 2 ** 48), 12);
      return `${time.slice(0, 8)}-${time.slice(8)}-7${hex(counter, 3)}-${variant.toString(16)}${hex(Math.floor(random.next() * 0x1000), 3)}-${tail}`;
    },
  };
}
