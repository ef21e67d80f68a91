import type { Device, DeviceKind, Parcel } from '#libs/flow';
import type { DeviceDriver } from '#libs/wire';

/** A device in the test, as its operator sees it, and the driver that speaks to it. */
export interface DriverWorld {
  readonly driver: DeviceDriver;
  readonly device: Device;
  /** Tickets that lie at the device, by entry; null where nothing is sent (bench). */
  tickets(): Promise<ReadonlyMap<string, string>> | null;
  /** The next answer is lost on its way, though the device has done what it was asked; null where nothing can be lost. */
  loseAnswer: (() => void) | null;
  /** Takes the device away, or brings it back; null where it cannot be away. */
  away: ((gone: boolean) => Promise<void>) | null;
  close(): Promise<void>;
}

export function aDevice(kind: DeviceKind, driver: string, url: string | null): Device {
  return {
    id: `${kind}-1`,
    kind,
    name: `The ${kind}`,
    driver,
    url,
    status: 'Unknown',
    statusDetails: null,
    job: null,
    ticketId: null,
    stepId: null,
    speed: null,
    since: 0,
    source: 'assumed',
    lastSeen: null,
    silentBecause: null,
  };
}

export function aParcel(n: number): Parcel {
  return {
    ticketId: 'T1',
    stepId: `step-${n}`,
    entryId: `0190a5b0-0000-7000-8000-00000000000${n}`,
    jobId: 'Festival/7 "Größe"',
    jobPartId: `step-${n}`,
    name: 'Programme ../..',
    priority: 50,
    document: `<?xml version="1.0" encoding="UTF-8"?>\n<JDF ID="n${n}" DescriptiveName="Größe &amp; Maß"/>\n--boundary\n`,
    returnUrl: 'http://127.0.0.1:7420/jmf',
  };
}

/** What the engine relies on, whatever way a device is spoken to. Run over every driver in drivers.spec.ts. */
export function exerciseDriver(name: string, make: () => Promise<DriverWorld>): void {
  describe(`the device driver ${name}`, () => {
    let world: DriverWorld;
    beforeEach(async () => {
      world = await make();
    });
    afterEach(() => world.close());
    const submit = (n: number) => world.driver.submit(world.device, aParcel(n));
    const entryOf = async (n: number): Promise<string> => {
      const outcome = await submit(n);
      if (outcome.outcome !== 'taken') throw new Error(`not taken: ${outcome.reason}`);
      return outcome.deviceEntryId;
    };

    it('delivers a ticket byte for byte and names the entry', async () => {
      const entry = await entryOf(1);
      expect(entry).not.toBe('');
      const tickets = await world.tickets();
      if (tickets !== null) expect([...tickets]).toEqual([[entry, aParcel(1).document]]);
    });

    it('gives each step an entry of its own', async () => {
      expect(await entryOf(1)).not.toBe(await entryOf(2));
      const tickets = await world.tickets();
      if (tickets !== null) expect(tickets.size).toBe(2);
    });

    it('takes a repeated delivery for the first one', async () => {
      const first = await entryOf(1);
      expect(await entryOf(1)).toBe(first);
      const tickets = await world.tickets();
      if (tickets !== null) expect(tickets.size).toBe(1);
    });

    it('delivers once when the first answer was lost', async () => {
      world.loseAnswer?.();
      const first = await submit(1);
      if (world.loseAnswer !== null) expect(first).toMatchObject({ outcome: 'later', silent: true });
      await entryOf(1);
      const tickets = await world.tickets();
      if (tickets !== null) expect(tickets.size).toBe(1);
    });

    it('lets work wait for a device that is away, with a reason, and delivers when it is back', async () => {
      await world.away?.(true);
      const outcome = await submit(1);
      if (world.away !== null) {
        expect(outcome).toMatchObject({
          outcome: 'later',
          silent: true,
          reason: expect.stringMatching(/\w/),
        });
      }
      await world.away?.(false);
      await entryOf(1);
    });

    it('never throws at a faulty address', async () => {
      for (const url of [
        null,
        '',
        'nonsense',
        'http://10.255.0.1/jmf',
        'file:///etc',
        'file:///nowhere/at/all',
      ]) {
        const outcome = await world.driver.submit({ ...world.device, url }, aParcel(1));
        expect([url, outcome.outcome]).toEqual([url, world.away === null ? 'taken' : 'later']);
        expect(['silent', 'unknown']).toContain(
          (await world.driver.queueStatus({ ...world.device, url })).kind,
        );
      }
    });

    it('holds and resumes if it says it can, else refuses in words', async () => {
      const entry = await entryOf(1);
      const held = await world.driver.instruct(world.device, entry, 'Held');
      if (!world.driver.abilities.hold) {
        expect(held).toMatchObject({ outcome: 'refused', reason: expect.stringMatching(/\w+ \w+/) });
        return;
      }
      expect(held.outcome).toBe('taken');
      expect((await world.driver.instruct(world.device, entry, 'Held')).outcome).toBe('taken');
      expect((await world.driver.instruct(world.device, entry, 'Waiting')).outcome).toBe('taken');
    });

    it('aborts an entry that has not begun', async () => {
      const entry = await entryOf(1);
      expect(world.driver.abilities.abort).toBe(true);
      expect((await world.driver.instruct(world.device, entry, 'Aborted')).outcome).toBe('taken');
      const tickets = await world.tickets();
      if (tickets !== null) expect(tickets.size).toBe(0);
    });

    it('lists the queue if it says it can', async () => {
      const entry = await entryOf(1);
      const answer = await world.driver.queueStatus(world.device);
      if (!world.driver.abilities.queueStatus) expect(answer).toEqual({ kind: 'unknown' });
      else expect(answer).toMatchObject({ kind: 'entries', entries: [{ queueEntryId: entry }] });
    });
  });
}
