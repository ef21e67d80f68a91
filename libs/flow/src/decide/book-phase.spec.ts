import * as fc from 'fast-check';
import { aFile, aStep, aUse, decideOn } from '../../../../test/kit/a-file.js';
import type { TicketFile } from '../state/ticket.js';
import { bookPhase, type PhaseReport } from './book-phase.js';
import { routeReadySteps } from './route.js';

const report = (change: Partial<PhaseReport>): PhaseReport => ({
  stepId: 'print',
  deviceId: 'print-machine',
  start: 1000,
  at: 1000,
  status: 'InProgress',
  statusDetails: null,
  good: null,
  waste: null,
  source: 'machine',
  ...change,
});

const book = (file: TicketFile, ...reports: readonly Partial<PhaseReport>[]): TicketFile =>
  reports.reduce(
    (state, change) => decideOn(state, change.at ?? 1000, (draft) => bookPhase(draft, report(change))).file,
    file,
  );

const printOf = (file: TicketFile) => file.steps.find((step) => step.id === 'print')!;

describe('booking phases of a step', () => {
  it('follows the latest phase and sums the counts of all', () => {
    const file = book(
      aFile(),
      { start: 1000, status: 'Setup', waste: 120 },
      { start: 2000, status: 'InProgress', good: 100, waste: 2 },
      { start: 2000, status: 'InProgress', good: 311, waste: 5 },
    );
    expect(printOf(file)).toMatchObject({ status: 'InProgress', start: 1000, good: 311, waste: 125 });
    expect(file.phases.map(({ start, end }) => [start, end])).toEqual([
      [1000, 2000],
      [2000, null],
    ]);
    expect(file.ticket.status).toBe('InProgress');
  });

  it('counts a repeated report once, and never less than was counted', () => {
    const once = book(aFile(), { good: 200, waste: 3 });
    expect(book(once, { good: 200, waste: 3 }, { good: 150, waste: 1 }).phases).toEqual(once.phases);
  });

  it('lets a late report correct amounts but move no status back', () => {
    const file = book(
      aFile(),
      { start: 3000, status: 'InProgress', good: 10 },
      { start: 1000, status: 'Setup', waste: 80 },
    );
    expect(printOf(file)).toMatchObject({ status: 'InProgress', start: 1000, good: 10, waste: 80 });
    expect(file.phases.map(({ start, end }) => [start, end])).toEqual([
      [1000, 3000],
      [3000, null],
    ]);
  });

  it('takes totals of a device that does not count by phase, less what the other phases have', () => {
    const file = book(
      aFile(),
      { start: 1000, status: 'Setup', totalGood: 0, totalWaste: 100 },
      { start: 2000, status: 'InProgress', totalGood: 250, totalWaste: 104 },
    );
    expect(file.phases.map(({ good, waste }) => [good, waste])).toEqual([
      [0, 100],
      [250, 4],
    ]);
  });

  it('completes a step of which nothing but the end was heard', () => {
    const file = book(aFile(), { status: 'Completed', at: 5000, totalGood: 311, totalWaste: 125 });
    expect(printOf(file)).toMatchObject({ status: 'Completed', good: 311, waste: 125, end: 5000 });
  });

  it('makes what was made available and sends the next step to its queue when a step ends', () => {
    const routed = decideOn(aFile(), 0, routeReadySteps).file;
    const { file, change } = decideOn(book(routed, { good: 311 }), 9000, (draft) =>
      bookPhase(draft, report({ status: 'Completed', at: 9000 })),
    );
    expect(file.resources[0]).toMatchObject({ id: 'print', status: 'Available', produced: 311 });
    expect(file.entries.map(({ stepId, status }) => [stepId, status])).toEqual([
      ['print', 'PendingReturn'],
      ['fold', 'Waiting'],
    ]);
    expect(change.work).toHaveLength(1);
  });

  it('keeps the next step back until what was printed has dried', () => {
    const wet = aFile({ steps: [aStep('print', [], { waitAfterS: 3600 }), aStep('fold', ['print'])] });
    const done = book(wet, { status: 'Completed', at: 10_000, totalGood: 311 });
    expect(done.entries).toEqual([]);
    expect(decideOn(done, 10_000 + 3_599_999, routeReadySteps).file.entries).toEqual([]);
    expect(decideOn(done, 10_000 + 3_600_000, routeReadySteps).file.entries).toHaveLength(1);
  });

  it('completes the ticket with its last step', () => {
    const file = book(aFile({ steps: [aStep('print')] }), { status: 'Completed', at: 4000, totalGood: 300 });
    expect(file.ticket.status).toBe('Completed');
  });

  it('ends in the same state whatever order its reports come in, and however often', () => {
    const story: Partial<PhaseReport>[] = [
      { start: 1000, at: 1000, status: 'Setup', good: 0, waste: 60 },
      { start: 1000, at: 1900, status: 'Setup', good: 0, waste: 120 },
      { start: 2000, at: 2500, status: 'InProgress', good: 90, waste: 1 },
      { start: 2000, at: 3000, status: 'InProgress', good: 200, waste: 3 },
      { start: 3000, at: 3000, status: 'Stopped', good: 0, waste: 0 },
      { start: 4000, at: 5000, status: 'InProgress', good: 111, waste: 2 },
      { start: 4000, at: 5000, status: 'Completed', good: 111, waste: 2 },
    ];
    const clean = book(aFile(), ...story);
    return fc.assert(
      fc.property(fc.shuffledSubarray([...story, ...story], { minLength: story.length * 2 }), (disorder) => {
        const file = book(aFile(), ...disorder);
        expect(printOf(file)).toEqual(printOf(clean));
        expect(file.resources[0]!.produced).toBe(311);
        expect(file.phases.map(({ start, good, waste }) => [start, good, waste])).toEqual(
          clean.phases.map(({ start, good, waste }) => [start, good, waste]),
        );
      }),
      { numRuns: 300 },
    );
  });
});

describe('booking stock with the counts', () => {
  const paper = { steps: [aStep('print')], uses: [aUse('print', 'silk-115', { reserved: 436 })] };

  it('closes the books: all that was drawn leaves as good or spoils, and what was not needed goes back', () => {
    const { change } = decideOn(aFile(paper), 5000, (draft) =>
      bookPhase(draft, report({ status: 'Completed', at: 5000, totalGood: 311, totalWaste: 119 })),
    );
    const moves = change.moves!.map(({ amount, from, to }) => [amount, from, to]);
    expect(moves).toEqual([
      [430, 'reserved', 'process'],
      [119, 'process', 'spoils'],
      [311, 'process', 'good'],
      [6, 'reserved', 'store'],
    ]);
    expect(change.tickets![0]!.uses[0]).toMatchObject({ actual: 430, waste: 119, reserved: 0 });
  });

  it('never refuses a draw beyond the book, but books it against difference and asks for a count', () => {
    const { change } = decideOn(
      aFile({ steps: [aStep('print')], uses: [aUse('print', 'silk-115', { reserved: 400 })] }),
      5000,
      (draft) => bookPhase(draft, report({ status: 'Completed', at: 5000, totalGood: 311, totalWaste: 119 })),
      { balances: new Map([['silk-115', { item: 'silk-115', store: 10, reserved: 400 }]]) },
    );
    const draws = change
      .moves!.filter((move) => move.to === 'process')
      .map(({ amount, from }) => [amount, from]);
    expect(draws).toEqual([
      [400, 'reserved'],
      [10, 'store'],
      [20, 'difference'],
    ]);
    expect(change.events!.find((event) => event.type === 'stock.short')?.data).toMatchObject({
      beyondTheBook: 20,
      countDue: true,
    });
  });

  it('corrects the books when counts come after the end', () => {
    const first = decideOn(aFile(paper), 5000, (draft) =>
      bookPhase(draft, report({ status: 'Completed', at: 5000, totalGood: 200, totalWaste: 3 })),
    );
    const late = decideOn(
      first.file,
      6000,
      (draft) => bookPhase(draft, report({ start: 500, at: 900, status: 'Setup', good: 111, waste: 116 })),
      {
        balances: new Map([['silk-115', { item: 'silk-115', store: 233, reserved: 0 }]]),
      },
    );
    const net = (account: string): number =>
      [...first.change.moves!, ...late.change.moves!].reduce(
        (sum, move) =>
          sum + (move.to === account ? move.amount : 0) - (move.from === account ? move.amount : 0),
        0,
      );
    expect({ good: net('good'), spoils: net('spoils'), process: net('process') }).toEqual({
      good: 311,
      spoils: 119,
      process: 0,
    });
    expect(late.file.uses[0]).toMatchObject({ actual: 430, waste: 119 });
  });

  it('moves as much out of the process as went into it, whatever was counted', () => {
    return fc.assert(
      fc.property(fc.nat(1000), fc.nat(1000), fc.nat(1000), (good, waste, reserved) => {
        const { change } = decideOn(
          aFile({ steps: [aStep('print')], uses: [aUse('print', 'silk-115', { reserved })] }),
          5000,
          (draft) =>
            bookPhase(draft, report({ status: 'Completed', at: 5000, totalGood: good, totalWaste: waste })),
          { balances: new Map([['silk-115', { item: 'silk-115', store: 300, reserved }]]) },
        );
        const sum = (side: 'from' | 'to', account: string): number =>
          change
            .moves!.filter((move) => move[side] === account)
            .reduce((total, move) => total + move.amount, 0);
        expect(sum('to', 'process')).toBe(sum('from', 'process'));
        expect(sum('from', 'reserved')).toBe(reserved);
        // Of what was never counted the plan is assumed.
        expect(sum('to', 'good')).toBe(good + waste > 0 ? good : aStep('print').outAmount);
      }),
    );
  });
});
