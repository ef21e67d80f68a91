import fc from 'fast-check';
import { nodeStatuses } from '../enumerations.js';
import { rollUpStatus, statusOfParts } from './index.js';

const status = fc.constantFrom(...nodeStatuses);
const statuses = fc.array(status, { minLength: 1, maxLength: 8 });
const runs = { seed: 20260511, numRuns: 500 };

describe('the status of a whole', () => {
  // Derived from the meanings of JDF/@Status: the standard has no table.
  it.each([
    ['all completed', ['Completed', 'Completed'], 'Completed'],
    ['one in progress', ['Waiting', 'InProgress', 'Completed', 'Stopped'], 'InProgress'],
    ['all ended, one aborted', ['Completed', 'Aborted'], 'Aborted'],
    ['some done, others not begun', ['Completed', 'Waiting'], 'InProgress'],
    ['one being set up, one waiting', ['Waiting', 'Setup'], 'Setup'],
    ['one stopped, one waiting', ['Stopped', 'Waiting'], 'Stopped'],
    ['not all ready', ['Ready', 'Waiting'], 'Waiting'],
    ['one elsewhere, one waiting', ['Spawned', 'Waiting'], 'Waiting'],
    ['one elsewhere, one done', ['Spawned', 'Completed'], 'InProgress'],
  ] as const)('with %s', (_what, parts, whole) => {
    expect(rollUpStatus(parts)).toBe(whole);
  });

  it('of nothing is not known', () => {
    expect([rollUpStatus([]), statusOfParts([])]).toEqual([undefined, undefined]);
  });

  it('does not depend on order, repetition or grouping', () => {
    fc.assert(
      fc.property(statuses, statuses, (some, others) => {
        const whole = rollUpStatus([...some, ...others]);
        expect(rollUpStatus([...others, ...some])).toBe(whole);
        expect(rollUpStatus([...some, ...others, ...some])).toBe(whole);
        expect(rollUpStatus([rollUpStatus(some)!, rollUpStatus(others)!])).toBe(whole);
      }),
      runs,
    );
  });

  it('is an end only when every part has ended, and Completed only when all are', () => {
    fc.assert(
      fc.property(statuses, (parts) => {
        const whole = rollUpStatus(parts);
        const ended = parts.every((part) => part === 'Completed' || part === 'Aborted');
        expect(whole === 'Completed' || whole === 'Aborted').toBe(ended);
        expect(whole === 'Completed').toBe(parts.every((part) => part === 'Completed'));
      }),
      runs,
    );
  });

  it('of partitions is Part as soon as they differ', () => {
    fc.assert(
      fc.property(statuses, (parts) => {
        expect(statusOfParts(parts)).toBe(new Set(parts).size === 1 ? parts[0] : 'Part');
      }),
      runs,
    );
  });
});
