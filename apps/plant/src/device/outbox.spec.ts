import { Hall, type Letter } from '../../../../test/kit/plant-hall.js';
import { printing } from '../../../../test/kit/plant-tickets.js';

/** What a message says, without what differs between two sendings if it were written anew. */
const bodies = (letters: readonly Letter[]): string[] => letters.map(({ body }) => body);

describe('messages to a hub that is away', () => {
  it('arrive later, each once, in the order in which they were said', async () => {
    const hall = new Hall();
    await hall.entry(printing());
    await hall.pass(900);
    hall.hubIsThere = () => false;
    await hall.pass(1200);
    const before = hall.letters.length;
    hall.hubIsThere = () => true;
    await hall.pass(120);
    const times = hall.heard.map(({ time }) => time!);
    expect(hall.letters.length).toBeGreaterThan(before);
    expect(times).toEqual([...times].sort((a, b) => a - b));
    expect(new Set(bodies(hall.letters)).size).toBe(hall.letters.length);
    await hall.pass(2 * 3600);
    expect(hall.phases.at(-1)).toMatchObject({ status: 'Completed', amount: 3500 });
  });

  it('keep beginnings and ends of phases, and of the reports between only the last', async () => {
    const hall = new Hall();
    hall.hubIsThere = () => false;
    await hall.entry(printing());
    await hall.pass(3 * 3600);
    expect(hall.kept!.outbox.length).toBeLessThan(40);
    hall.hubIsThere = () => true;
    await hall.pass(120);
    const ends = hall.phases.filter(({ status }) => status !== 'Completed');
    const sums = new Map(ends.map(({ phaseStartTime, phaseAmount }) => [phaseStartTime, phaseAmount!]));
    expect([...sums.values()].reduce((sum, amount) => sum + amount, 0)).toBe(3500);
  });

  it('are tried again after a growing wait, at most a minute', async () => {
    const hall = new Hall({ heartbeatS: 100_000 });
    const tries: number[] = [];
    hall.hubIsThere = ({ at }) => {
      tries.push(at);
      return false;
    };
    await hall.pass(400);
    const waits = tries.slice(1).map((at, i) => (at - tries[i]!) / 1000);
    expect(waits.slice(0, 6)).toEqual([2, 4, 8, 16, 32, 60]);
    expect(Math.max(...waits)).toBe(60);
  });

  it('hold the entry in PendingReturn until its ticket has arrived', async () => {
    const hall = new Hall();
    const id = await hall.entry(printing());
    await hall.pass(900);
    hall.hubIsThere = () => false;
    await hall.pass(2 * 3600);
    expect(await hall.statusOf(id)).toBe('PendingReturn');
    hall.hubIsThere = () => true;
    await hall.pass(120);
    expect(await hall.statusOf(id)).toBe('Completed');
  });
});

describe('a device that repeats itself', () => {
  it('sends every signal twice, the ticket once', async () => {
    const hall = new Hall({ faults: ['resend'] });
    await hall.entry(printing());
    await hall.pass(2 * 3600);
    const counts = new Map<string, number>();
    for (const body of bodies(hall.letters)) counts.set(body, (counts.get(body) ?? 0) + 1);
    const returned = hall.letters.filter(({ contentType }) => contentType.startsWith('multipart'));
    expect(returned).toHaveLength(1);
    counts.delete(returned[0]!.body);
    expect(new Set(counts.values())).toEqual(new Set([2]));
  });

  it('sends old signals again when the hub comes back, the same to the letter', async () => {
    const hall = new Hall({ faults: ['resend'] });
    await hall.entry(printing());
    await hall.pass(1200);
    hall.hubIsThere = () => false;
    await hall.pass(300);
    const old = bodies(hall.letters);
    hall.hubIsThere = () => true;
    await hall.pass(120);
    const again = bodies(hall.letters).slice(old.length);
    expect(again.filter((body) => old.includes(body)).length).toBeGreaterThanOrEqual(20);
  });
});
