import type { Ticket } from '#libs/flow';
import { PlanMemory } from './plan-memory.js';

const plan = (name: string) => ({ jobId: name }) as unknown as NonNullable<Ticket['plan']>;

describe('the memory of plans', () => {
  it('knows a plan under the revision that wrote it, and under no other', () => {
    const memory = new PlanMemory();
    const kept = plan('a');
    memory.keep('t', 4, kept);
    expect(memory.recall('t', 4)).toBe(kept);
    expect(memory.recall('t', 5)).toBeUndefined();
    expect(memory.recall('u', 4)).toBeUndefined();
  });

  it('forgets first what was used longest ago', () => {
    const memory = new PlanMemory(2);
    memory.keep('a', 1, plan('a'));
    memory.keep('b', 1, plan('b'));
    memory.recall('a', 1);
    memory.keep('c', 1, plan('c'));
    expect(['a', 'b', 'c'].filter((id) => memory.recall(id, 1) !== undefined)).toEqual(['a', 'c']);
  });
});
