import type { JobPhase } from '#libs/jdf';
import { elementsIn, Hall, MORNING, ticketIn } from '../../../../test/kit/plant-hall.js';
import { cutting, plates, printing } from '../../../../test/kit/plant-tickets.js';

const ended = (phases: readonly JobPhase[]): JobPhase[] => {
  const last = new Map(phases.map((phase) => [phase.phaseStartTime, phase]));
  return [...last.values()];
};

/** The last word of the use of a resource. */
function used(hall: Hall, id: string) {
  const infos = hall.heard.flatMap((message) =>
    message.kind === 'SignalResource' ? (message.body.resources ?? []) : [],
  );
  return infos.filter(({ resourceId }) => resourceId === id).at(-1);
}

describe('a run on the press', () => {
  it('begins only when somebody has pressed the button', async () => {
    const hall = new Hall();
    const id = await hall.entry(printing());
    await hall.pass(19);
    expect(await hall.statusOf(id)).toBe('Waiting');
    expect(hall.phases).toEqual([]);
    await hall.pass(80);
    expect(await hall.statusOf(id)).toBe('Running');
    expect(hall.phases[0]).toMatchObject({
      status: 'Setup',
      statusDetails: 'FormChange',
      amount: 0,
      waste: 0,
    });
  });

  it('counts every sheet once: phases add up to the totals, good and waste to what was fed', async () => {
    const hall = new Hall();
    await hall.entry(printing());
    await hall.pass(2 * 3600);
    const final = hall.phases.at(-1)!;
    const sums = ended(hall.phases).reduce(
      (sum, { phaseAmount = 0, phaseWaste = 0 }) => ({
        good: sum.good + phaseAmount,
        waste: sum.waste + phaseWaste,
      }),
      { good: 0, waste: 0 },
    );
    expect(final).toMatchObject({
      status: 'Completed',
      amount: 3500,
      totalAmount: 3500,
      percentCompleted: 100,
    });
    expect(sums).toEqual({ good: final.amount, waste: final.waste });
    expect(final.waste).toBeGreaterThan(0);
    const paper = used(hall, 'paper')!;
    expect(paper.actualAmount).toBe(final.amount! + final.waste!);
    expect(paper.partAmounts?.map(({ actualAmount }) => actualAmount)).toEqual([final.amount, final.waste]);
    expect(used(hall, 'plates')).toMatchObject({ resourceName: 'ExposedMedia', actualAmount: 8 });
    const counters = hall.heard.flatMap((message) =>
      message.kind === 'SignalStatus' ? message.body.devices!.map((info) => info.productionCounter!) : [],
    );
    expect(counters).toEqual([...counters].sort((a, b) => a - b));
    expect(counters.at(-1)).toBe(paper.actualAmount);
  });

  it('reports phases that follow each other without gap, the same in signals and audits', async () => {
    const hall = new Hall();
    const id = await hall.entry(printing());
    await hall.pass(2 * 3600);
    const letter = hall.letters.find(({ contentType }) => contentType.startsWith('multipart'))!;
    const audits = elementsIn(ticketIn(letter), 'PhaseTime');
    for (let i = 1; i < audits.length; i++) expect(audits[i]!.Start).toBe(audits[i - 1]!.End);
    const told = [
      ...new Set(hall.phases.map(({ phaseStartTime }) => new Date(phaseStartTime!).toISOString())),
    ];
    expect(audits.map(({ Start }) => Start)).toEqual(told);
    const [run] = elementsIn(ticketIn(letter), 'ProcessRun');
    expect(run).toMatchObject({ Start: audits[0]!.Start, End: audits.at(-1)!.End, EndStatus: 'Completed' });
    expect(elementsIn(ticketIn(letter), 'JDF')[0]).toMatchObject({ Status: 'Completed' });
    expect(await hall.statusOf(id)).toBe('Completed');
  });

  it('takes about as long as the ticket plans for set-up and run', async () => {
    const hall = new Hall();
    await hall.entry(printing({ cleanup: 'PT1M', total: 'PT38M' }));
    await hall.pass(2 * 3600);
    const final = hall.phases.at(-1)!;
    const setup = ended(hall.phases).filter(({ status }) => status === 'Setup');
    const run = hall.phases.find(({ status }) => status === 'InProgress')!;
    const setupS = (run.phaseStartTime! - setup[0]!.phaseStartTime!) / 1000;
    // The crew's variation is ours: set-up 92 to 112 %, running 97 to 105 % and the waste.
    expect(setupS).toBeGreaterThan(0.9 * 420);
    expect(setupS).toBeLessThan(1.15 * 420);
    const allS = (final.endTime! - final.startTime!) / 1000;
    expect(allS).toBeGreaterThan(0.92 * 38 * 60);
    expect(allS).toBeLessThan(1.12 * 38 * 60);
  });

  it('runs at the speed of the parameters where the ticket plans no time', async () => {
    const hall = new Hall();
    await hall.entry(printing({ total: null }));
    await hall.pass(3 * 3600);
    const speeds = hall.phases
      .filter(({ status }) => status === 'InProgress')
      .map(({ speedPerHour }) => speedPerHour!);
    // 9,000 an hour, less or more 5 %.
    expect(Math.max(...speeds)).toBeGreaterThan(8500);
    expect(Math.max(...speeds)).toBeLessThan(9400);
  });

  it('never gets more good sheets out than the input without the waste, whatever the chance', async () => {
    for (const [outAmount, inAmount] of [
      [300, 460],
      [300, 301],
      [300, 300],
      [500, 400],
      [7, 9],
    ] as const) {
      const hall = new Hall();
      await hall.entry(printing({ outAmount, inAmount }));
      await hall.pass(3 * 3600);
      const { amount = -1, waste = -1 } = hall.phases.at(-1)!;
      expect(amount).toBeLessThanOrEqual(outAmount);
      expect(amount + waste).toBeLessThanOrEqual(inAmount);
      expect(amount).toBe(Math.min(outAmount, inAmount - waste));
    }
  });

  it('says so when the paper is used up before the amount is reached, and ends', async () => {
    const hall = new Hall({ faults: ['shortRun'] });
    const id = await hall.entry(printing());
    await hall.pass(2 * 3600);
    const final = hall.phases.at(-1)!;
    expect(final.status).toBe('Completed');
    expect(final.amount! + final.waste!).toBe(Math.floor(3700 * 0.6));
    const notices = hall.heard.flatMap((message) =>
      message.kind === 'SignalNotification' ? [message.body.notification] : [],
    );
    expect(notices).toMatchObject([{ class: 'Warning', jobId: 'nine-umbrellas', queueEntryId: id }]);
    const letter = hall.letters.find(({ contentType }) => contentType.startsWith('multipart'))!;
    expect(elementsIn(ticketIn(letter), 'Notification')).toMatchObject([{ Class: 'Warning' }]);
  });

  it('stands still after a breakdown in the middle and goes on where it was', async () => {
    const hall = new Hall({ faults: ['breakdown'] });
    await hall.entry(printing());
    await hall.pass(2 * 3600);
    const stop = hall.phases.find(({ statusDetails }) => statusDetails === 'BreakDown')!;
    expect(stop).toMatchObject({ status: 'Stopped', phaseAmount: 0 });
    expect(stop.amount).toBe(1750);
    const down = hall.heard.some(
      (message) => message.kind === 'SignalStatus' && message.body.devices![0]!.deviceStatus === 'Down',
    );
    expect(down).toBe(true);
    expect(hall.phases.at(-1)).toMatchObject({ status: 'Completed', amount: 3500 });
  });

  it('spoils a few sheets in a jam, out of what is to spare', async () => {
    const hall = new Hall({ faults: ['jam'] });
    await hall.entry(printing());
    await hall.pass(2 * 3600);
    const final = hall.phases.at(-1)!;
    expect(hall.phases.some(({ statusDetails }) => statusDetails === 'PaperJam')).toBe(true);
    expect(final.amount).toBe(3500);
    expect(final.amount! + final.waste!).toBeLessThanOrEqual(3700);
  });

  it('waits for the button again after it was suspended and resumed', async () => {
    const hall = new Hall();
    const id = await hall.entry(printing());
    await hall.pass(1200);
    await hall.command('CommandSuspendQueueEntry', id);
    await hall.pass(600);
    const before = hall.phases.at(-1)!;
    expect(before.status).toBe('Suspended');
    await hall.command('CommandResumeQueueEntry', id);
    await hall.pass(1);
    expect(hall.phases.at(-1)).toMatchObject({
      status: 'Stopped',
      statusDetails: 'Pause',
      amount: before.amount,
    });
    await hall.pass(2 * 3600);
    expect(hall.phases.at(-1)).toMatchObject({ status: 'Completed', amount: 3500 });
    const letter = hall.letters.find(({ contentType }) => contentType.startsWith('multipart'))!;
    const audits = elementsIn(ticketIn(letter), 'PhaseTime');
    for (let i = 1; i < audits.length; i++) expect(audits[i]!.Start).toBe(audits[i - 1]!.End);
  });

  it('takes the next job by priority, then by order', async () => {
    const hall = new Hall();
    const wishes = [
      ['a', 10],
      ['b', 60],
      ['c', 10],
      ['d', 60],
    ] as const;
    for (const [jobPartId, priority] of wishes)
      await hall.entry(printing({ jobPartId, total: 'PT8M' }), { priority });
    await hall.pass(4 * 3600);
    const starts = hall.phases
      .filter(({ status }) => status === 'Completed')
      .map(({ jobPartId }) => jobPartId);
    expect(starts).toEqual(['b', 'd', 'a', 'c']);
  });

  it('says that it is idle when it becomes so and every sixty seconds after', async () => {
    const hall = new Hall();
    await hall.pass(181);
    const idle = hall.heard.map((message) =>
      message.kind === 'SignalStatus'
        ? [message.time! - MORNING, message.body.devices![0]!.deviceStatus]
        : [],
    );
    expect(idle).toEqual([
      [0, 'Idle'],
      [60_000, 'Idle'],
      [120_000, 'Idle'],
      [180_000, 'Idle'],
    ]);
  });

  it('writes the same wire log for the same seed, and another one for another', async () => {
    const log = async (start: number) => {
      const hall = new Hall({}, start);
      await hall.entry(printing({ jobPartId: 'a' }));
      await hall.entry(printing({ jobPartId: 'b' }), { priority: 90 });
      await hall.pass(3 * 3600);
      return hall.letters;
    };
    const first = await log(MORNING);
    expect(first.length).toBeGreaterThan(100);
    expect(await log(MORNING)).toEqual(first);
    expect(await log(MORNING + 1)).not.toEqual(first);
  });
});

describe('a run on other machines', () => {
  it('images as many plates as the ticket names and needs nobody to start it', async () => {
    const hall = new Hall({ kind: 'platesetter' });
    await hall.entry(plates());
    await hall.pass(3600);
    expect(hall.phases.at(-1)).toMatchObject({ status: 'Completed', amount: 8, waste: 0, totalAmount: 8 });
    expect(used(hall, 'blank')).toMatchObject({ resourceName: 'Media', unit: 'plates', actualAmount: 8 });
  });

  it('counts pieces that come out and sheets that go in', async () => {
    const hall = new Hall({ kind: 'guillotine' });
    await hall.entry(cutting());
    await hall.pass(2 * 3600);
    const { amount, waste } = hall.phases.at(-1)!;
    expect(amount).toBe(4000);
    expect(used(hall, 'sheets')).toMatchObject({
      unit: 'sheets',
      actualAmount: Math.ceil((4000 + waste!) / 4),
    });
    expect(used(hall, 'sheets')!.actualAmount).toBeLessThanOrEqual(1006);
  });
});
