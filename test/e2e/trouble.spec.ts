import {
  command,
  reconcileDevice,
  type TicketFile,
  ticketView,
  workAtBench,
} from '../../libs/flow/src/index.js';
import { type OwnDatabase, ownDatabase } from '../kit/own-database.js';
import { type VirtualPlant, virtualPlant } from '../kit/virtual-plant.js';

const MONDAY = Date.UTC(2026, 0, 5, 7);
const HOUR = 3_600_000;
const BOAT = 'tickets/paper-boat-300.jdf';

describe('what goes wrong at the machines becomes a state that people see, and no step is lost', () => {
  let database: OwnDatabase;
  let plant: VirtualPlant | null = null;
  let n = 0;

  beforeAll(async () => {
    database = await ownDatabase();
  }, 60_000);
  afterEach(async () => {
    await plant?.close();
    plant = null;
  });
  afterAll(() => database.drop());

  const open = async (faults: Readonly<Record<string, readonly string[]>> = {}): Promise<VirtualPlant> => {
    plant = await virtualPlant({
      databaseUrl: database.url,
      schema: `trouble_${++n}`,
      seed: n,
      start: MONDAY,
      faults,
    });
    return plant;
  };
  const fileOf = async (id: string): Promise<TicketFile> => (await plant!.store.ticketFile(id))!;
  const stepOf = async (id: string, step: string) => (await fileOf(id)).steps.find((row) => row.id === step)!;
  const untilStep = (id: string, step: string, status: string): Promise<boolean> =>
    plant!.clock.runUntilTrue(async () => (await stepOf(id, step)).status === status, MONDAY + 20 * HOUR);
  const untilEnd = (id: string): Promise<boolean> =>
    plant!.clock.runUntilTrue(
      async () => ['Completed', 'Aborted'].includes((await fileOf(id)).ticket.status),
      MONDAY + 48 * HOUR,
    );
  const shownOf = async (id: string, step: string): Promise<{ waitsFor: string | null }> =>
    (ticketView(await fileOf(id)).steps as { id: string; waitsFor: string | null }[]).find(
      (row) => row.id === step,
    )!;

  it('a refused job waits with the reason, and goes on once somebody resumes it', async () => {
    const { ports, submit, demoFile } = await open({ 'press-full': ['refuse@1'] });
    const { ticket } = await submit(demoFile(BOAT));
    await plant!.clock.runUntilTrue(
      async () => (await stepOf(ticket.id, 'print-1')).activation === 'Held',
      MONDAY + 5 * HOUR,
    );
    expect((await shownOf(ticket.id, 'print-1')).waitsFor).toMatch(
      /refused by press-full: .*This machine cannot do this job/,
    );
    expect((await command(ports, ticket.id, 'print-1', 'resume', 'Ada')).ok).toBe(true);
    expect(await untilEnd(ticket.id)).toBe(true);
    expect((await fileOf(ticket.id)).ticket.status).toBe('Completed');
  });

  it('a silent machine is shown as silent, and gets its job when another stands in its place', async () => {
    const { submit, demoFile, store } = await open({ 'folder-large': ['silent@1'] });
    const { ticket } = await submit(demoFile(BOAT));
    expect(await untilStep(ticket.id, 'print-1', 'Completed')).toBe(true);
    await plant!.clock.runUntil(plant!.clock.now() + HOUR);
    expect((await store.device('folder-large'))!.silentBecause).not.toBeNull();
    expect(await stepOf(ticket.id, 'fold-1')).toMatchObject({
      status: 'Waiting',
      statusDetails: 'WaitingForDevice',
    });
    await plant!.replaceDevice('folder-large');
    expect(await untilEnd(ticket.id)).toBe(true);
    expect((await store.device('folder-large'))!.silentBecause).toBeNull();
    expect((await fileOf(ticket.id)).steps.map((step) => step.status)).toEqual(Array(5).fill('Completed'));
  });

  it('a machine that lost its queue is given again what it had not begun', async () => {
    const { ports, submit, demoFile } = await open();
    const { ticket } = await submit(demoFile(BOAT));
    const delivered = async (): Promise<boolean> =>
      (await fileOf(ticket.id)).entries.some(
        (entry) => entry.stepId === 'plates-1' && entry.delivery === 'delivered',
      );
    await plant!.clock.runUntilTrue(delivered, MONDAY + 5 * HOUR);
    expect((await stepOf(ticket.id, 'plates-1')).status).toBe('Waiting');
    await plant!.replaceDevice('platesetter');
    await reconcileDevice(ports, 'platesetter');
    expect(await untilEnd(ticket.id)).toBe(true);
    const plates = await stepOf(ticket.id, 'plates-1');
    expect([plates.status, plates.good]).toEqual(['Completed', 8]);
  });

  it('work that a machine lost half way is not begun again until somebody has looked', async () => {
    const { ports, submit, demoFile } = await open();
    const { ticket } = await submit(demoFile(BOAT));
    expect(await untilStep(ticket.id, 'print-1', 'InProgress')).toBe(true);
    await plant!.replaceDevice('press-full');
    await reconcileDevice(ports, 'press-full');
    expect(await stepOf(ticket.id, 'print-1')).toMatchObject({
      activation: 'Held',
      statusDetails: 'LostByDevice',
    });
    expect((await command(ports, ticket.id, 'print-1', 'resume', 'Ada')).ok).toBe(true);
    expect(await untilEnd(ticket.id)).toBe(true);
    expect((await fileOf(ticket.id)).ticket.status).toBe('Completed');
  });

  it('a job that ends short says so, and the next step sees the real amount', async () => {
    const { submit, demoFile, log } = await open({ 'press-full': ['shortRun@1'] });
    const { ticket } = await submit(demoFile(BOAT));
    expect(await untilEnd(ticket.id)).toBe(true);
    const { steps, resources } = await fileOf(ticket.id);
    const print = steps.find((step) => step.id === 'print-1')!;
    expect(print.good).toBeLessThan(print.outAmount);
    expect(resources.find((row) => row.id === 'print-1')!.produced).toBe(print.good);
    expect(steps.find((step) => step.id === 'fold-1')!.good).toBeLessThanOrEqual(print.good);
    expect(
      (await log()).some((event) => event.type === 'notification.raised' && event.stepId === 'print-1'),
    ).toBe(true);
  });

  it('a hold reaches the machine that has the job, a resume lets it run, and an abort ends it there', async () => {
    const { ports, submit, demoFile } = await open();
    const { ticket } = await submit(demoFile(BOAT));
    const entryOf = async () =>
      (await fileOf(ticket.id)).entries.find((entry) => entry.stepId === 'plates-1');
    await plant!.clock.runUntilTrue(
      async () => (await entryOf())?.delivery === 'delivered',
      MONDAY + 5 * HOUR,
    );
    expect((await command(ports, ticket.id, null, 'hold', 'Ada')).ok).toBe(true);
    await plant!.clock.runUntil(plant!.clock.now() + 3 * HOUR);
    expect(await entryOf()).toMatchObject({ status: 'Held', wanted: null });
    expect((await stepOf(ticket.id, 'plates-1')).status).toBe('Waiting');
    expect((await command(ports, ticket.id, null, 'resume', 'Ada')).ok).toBe(true);
    expect(await untilStep(ticket.id, 'plates-1', 'InProgress')).toBe(true);
    expect((await command(ports, ticket.id, null, 'abort', 'Ada')).ok).toBe(true);
    await plant!.clock.runUntil(plant!.clock.now() + HOUR);
    expect((await fileOf(ticket.id)).ticket.status).toBe('Aborted');
    expect(await entryOf()).toMatchObject({ status: 'Aborted', wanted: null });
    expect((await plant!.store.device('platesetter'))!.status).toBe('Idle');
  });

  it('a queue that forgets everything costs time and nothing else', async () => {
    const { ports, submit, demoFile } = await open();
    const { ticket } = await submit(demoFile(BOAT));
    // Whatever hint waits is thrown away every half hour: only the sweep brings it back.
    for (let hour = 1; hour < 6; hour++) {
      plant!.clock.after(hour * 1800, () => ports.queue.clear());
    }
    expect(await untilEnd(ticket.id)).toBe(true);
    expect((await fileOf(ticket.id)).ticket.status).toBe('Completed');
  });

  it('a person at a bench is refused what has not come to the bench', async () => {
    const { ports, submit, demoFile } = await open();
    const { ticket } = await submit(demoFile(BOAT));
    const early = await workAtBench(ports, ticket.id, 'stitch', 'start', { good: 0, waste: 0 });
    expect(early.ok ? null : early.problems[0]!.code).toBe('STATE_FORBIDS');
  });
});
