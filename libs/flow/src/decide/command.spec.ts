import type { Problem } from '#libs/kernel';
import { aFile, aStep, decideOn } from '../../../../test/kit/a-file.js';
import type { TicketFile } from '../state/ticket.js';
import { benchWork } from './bench.js';
import { bookPhase } from './book-phase.js';
import { commandStep, commandTicket } from './command.js';
import { mayDeliver, retryDelayS, settleDelivery } from './deliver.js';
import type { FileDraft } from './draft.js';
import { routeReadySteps } from './route.js';

const routed = (): TicketFile => decideOn(aFile(), 0, routeReadySteps).file;

function asked(file: TicketFile, ask: (draft: FileDraft) => Problem | null) {
  let problem: Problem | null = null;
  const made = decideOn(file, 1000, (draft) => {
    problem = ask(draft);
  });
  return { ...made, code: (problem as Problem | null)?.code ?? null };
}

const delivered = (): TicketFile =>
  decideOn(routed(), 10, (draft) =>
    settleDelivery(draft, 't-1', 1, { outcome: 'taken', deviceEntryId: 'q-7' }),
  ).file;

const running = (): TicketFile =>
  decideOn(delivered(), 20, (draft) =>
    bookPhase(draft, {
      stepId: 'print',
      deviceId: 'print-machine',
      start: 20,
      at: 20,
      status: 'InProgress',
      statusDetails: null,
      good: 5,
      waste: 0,
      source: 'machine',
    }),
  ).file;

describe('routing', () => {
  it('queues only what has all its inputs, and queues it once', () => {
    const file = routed();
    expect(file.entries.map((entry) => entry.stepId)).toEqual(['print']);
    expect(decideOn(file, 5, routeReadySteps).file.entries).toEqual(file.entries);
  });
});

describe('delivery', () => {
  it('is tried again later each time twice as late, five minutes at the most', () => {
    expect([1, 2, 3, 6, 7, 40].map(retryDelayS)).toEqual([5, 10, 20, 160, 300, 300]);
  });

  it('shows why the device did not take it, and waits its turn', () => {
    const { file } = decideOn(routed(), 1000, (draft) =>
      settleDelivery(draft, 't-1', 1, { outcome: 'later', reason: 'no answer', silent: true }),
    );
    expect(file.entries[0]).toMatchObject({ attempt: 2, notBefore: 6000, lastError: 'no answer' });
    expect(mayDeliver(file.entries[0], 2, 5999)).toBe(false);
    expect(mayDeliver(file.entries[0], 2, 6000)).toBe(true);
    expect(mayDeliver(file.entries[0], 1, 6000)).toBe(false);
  });

  it('ignores the late answer of an earlier try, unless the device took the job', () => {
    const tried = decideOn(routed(), 1000, (draft) =>
      settleDelivery(draft, 't-1', 1, { outcome: 'later', reason: 'no answer', silent: true }),
    ).file;
    const late = decideOn(tried, 2000, (draft) =>
      settleDelivery(draft, 't-1', 1, { outcome: 'refused', reason: 'late word' }),
    ).file;
    expect(late.entries).toEqual(tried.entries);
    const taken = decideOn(tried, 2000, (draft) =>
      settleDelivery(draft, 't-1', 1, { outcome: 'taken', deviceEntryId: 'q-1' }),
    ).file;
    expect(taken.entries[0]).toMatchObject({ delivery: 'delivered', deviceEntryId: 'q-1' });
  });

  it('holds a refused step with the reason until somebody resumes it', () => {
    const refused = decideOn(routed(), 1000, (draft) =>
      settleDelivery(draft, 't-1', 1, { outcome: 'refused', reason: 'sheet too large' }),
    ).file;
    expect(refused.steps[0]).toMatchObject({
      activation: 'Held',
      statusDetails: 'Refused',
      status: 'Waiting',
    });
    const resumed = asked(refused, (draft) => commandStep(draft, 'print', 'resume', 'Ada'));
    expect(resumed.file.entries.map((entry) => entry.status)).toEqual(['Aborted', 'Waiting']);
  });
});

describe('commands on tickets and steps', () => {
  it('holds what has not begun, and tells the device that has it', () => {
    const { file, change } = asked(delivered(), (draft) => commandTicket(draft, 'hold', 'Ada'));
    expect(file.ticket.activation).toBe('Held');
    expect(file.entries[0]).toMatchObject({ status: 'Held', wanted: 'Held' });
    expect(change.work).toEqual([{ kind: 'instruct', ticketId: 'ticket-1', entryId: 't-1' }]);
  });

  it('does not stop a machine: a running step goes on while its ticket is held', () => {
    const { file } = asked(running(), (draft) => commandTicket(draft, 'hold', 'Ada'));
    expect(file.entries[0]!.status).toBe('Running');
    expect(asked(running(), (draft) => commandStep(draft, 'print', 'hold', 'Ada')).code).toBe(
      'ENTRY_RUNNING',
    );
  });

  it('releases what was held', () => {
    const held = asked(routed(), (draft) => commandTicket(draft, 'hold', 'Ada')).file;
    const { file, change } = asked(held, (draft) => commandTicket(draft, 'resume', 'Ada'));
    expect(file.entries[0]!.status).toBe('Waiting');
    expect(change.work).toEqual([{ kind: 'dispatch', ticketId: 'ticket-1', entryId: 't-1', attempt: 1 }]);
  });

  it('aborts every open step and the ticket with them', () => {
    const { file } = asked(running(), (draft) => commandTicket(draft, 'abort', 'Ada'));
    expect(file.ticket.status).toBe('Aborted');
    expect(file.steps.map((step) => step.status)).toEqual(['Aborted', 'Aborted']);
    expect(file.entries[0]).toMatchObject({ status: 'Aborted', wanted: 'Aborted' });
  });

  it.each([
    [
      'hold twice',
      (draft: FileDraft) => commandTicket(draft, 'hold', 'A') ?? commandTicket(draft, 'hold', 'A'),
      'ENTRY_SAME_STATE',
    ],
    [
      'resume what is not held',
      (draft: FileDraft) => commandTicket(draft, 'resume', 'A'),
      'ENTRY_SAME_STATE',
    ],
    [
      'abort twice',
      (draft: FileDraft) => commandTicket(draft, 'abort', 'A') ?? commandTicket(draft, 'abort', 'A'),
      'ENTRY_FINAL',
    ],
    [
      'name a step that is not there',
      (draft: FileDraft) => commandStep(draft, 'bind', 'hold', 'A'),
      'STEP_UNKNOWN',
    ],
  ])('refuses to %s', (_what, ask, code) => {
    expect(asked(routed(), ask).code).toBe(code);
  });
});

describe('work at a bench', () => {
  const bench = (): TicketFile =>
    decideOn(aFile({ steps: [aStep('pack', [], { outAmount: 300, unit: 'copies' })] }), 0, routeReadySteps)
      .file;

  it('counts since the last call and finishes with the sum', () => {
    const made = asked(bench(), (draft) => {
      expect(benchWork(draft, 'pack', 'start', { good: 0, waste: 0 })).toBeNull();
      expect(benchWork(draft, 'pack', 'pause', { good: 120, waste: 1 })).toBeNull();
      expect(benchWork(draft, 'pack', 'start', { good: 0, waste: 0 })).toBeNull();
      return benchWork(draft, 'pack', 'finish', { good: 180, waste: 2 });
    });
    expect(made.code).toBeNull();
    expect(made.file.steps[0]).toMatchObject({ status: 'Completed', good: 300, waste: 3 });
    expect(made.file.ticket.status).toBe('Completed');
    expect(made.file.phases.map(({ status, source }) => [status, source])).toEqual([
      ['InProgress', 'person'],
      ['Stopped', 'person'],
      ['InProgress', 'person'],
    ]);
  });

  it('refuses to finish what was not started', () => {
    expect(asked(bench(), (draft) => benchWork(draft, 'pack', 'finish', { good: 1, waste: 0 })).code).toBe(
      'STATE_FORBIDS',
    );
  });
});
