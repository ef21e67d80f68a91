import { checkMachines, entryStatus, isFinal, machines, mayMove, nodeStatus } from './index.js';
import { checkMachine } from './machine.js';

describe('state machines as tables', () => {
  it('are sound: every status can be reached', () => {
    expect(() => checkMachines()).not.toThrow();
    expect(machines).toHaveLength(4);
  });

  it('refuse a table with a status that nothing leads to', () => {
    const island = { name: 'island', initial: 'a', moves: { a: ['b'], b: [], c: ['a'] } };
    expect(() => checkMachine(island)).toThrow(/c cannot be reached/);
  });

  it('refuse a move to a status without a row', () => {
    const hole = { name: 'hole', initial: 'a', moves: { a: ['b'] } as Record<string, string[]> };
    expect(() => checkMachine(hole)).toThrow(/"b" is reached but has no row/);
  });

  it('end a node only with Completed or Aborted', () => {
    expect(Object.keys(nodeStatus.moves).filter((status) => isFinal(nodeStatus, status as never))).toEqual([
      'Completed',
      'Aborted',
    ]);
  });

  // JDF 1.4 specification, table of queue entry commands against states: the moves that commands make.
  it.each([
    ['Waiting', 'Held', true],
    ['Held', 'Waiting', true],
    ['Running', 'Suspended', true],
    ['Suspended', 'Running', true],
    ['Running', 'PendingReturn', true],
    ['Running', 'Held', false],
    ['Completed', 'Running', false],
  ] as const)('lets a queue entry go from %s to %s: %s', (from, to, may) => {
    expect(mayMove(entryStatus, from, to)).toBe(may);
  });
});
