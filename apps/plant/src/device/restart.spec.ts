import { elementsIn, Hall, ticketIn } from '../../../../test/kit/plant-hall.js';
import { printing } from '../../../../test/kit/plant-tickets.js';

const finalOf = (hall: Hall) => hall.phases.filter(({ status }) => status === 'Completed');

describe('a device that was killed in the middle of a run', () => {
  it('goes on where it would be now, with the same phases and every sheet counted once', async () => {
    const whole = new Hall();
    await whole.entry(printing());
    await whole.pass(2 * 3600);
    const hall = new Hall();
    await hall.entry(printing());
    for (const seconds of [300, 400, 500, 600]) {
      await hall.pass(seconds);
      hall.killAndStart();
    }
    await hall.pass(2 * 3600);
    const names = (one: Hall) => [...new Set(one.phases.map(({ phaseStartTime }) => phaseStartTime))];
    expect(names(hall)).toEqual(names(whole));
    expect(finalOf(hall)).toHaveLength(1);
    const { queueEntryId: _, ...final } = finalOf(hall)[0]!;
    expect(finalOf(whole)[0]).toMatchObject(final);
  });

  it('sends what had not arrived, the same to the letter', async () => {
    const hall = new Hall();
    await hall.entry(printing());
    await hall.pass(900);
    hall.hubIsThere = () => false;
    await hall.pass(300);
    const waiting = hall.kept!.outbox.map(({ body }) => body);
    expect(waiting.length).toBeGreaterThan(0);
    hall.killAndStart();
    const from = hall.letters.length;
    hall.hubIsThere = () => true;
    await hall.pass(5);
    expect(hall.letters.slice(from, from + waiting.length).map(({ body }) => body)).toEqual(waiting);
  });

  it('keeps its queue, its counters and its switches', async () => {
    const hall = new Hall();
    const first = await hall.entry(printing({ jobPartId: 'a' }));
    await hall.pass(3 * 3600);
    const second = await hall.entry(printing({ jobPartId: 'b' }), { hold: true });
    hall.killAndStart();
    expect([await hall.statusOf(first), await hall.statusOf(second)]).toEqual(['Completed', 'Held']);
    expect(hall.kept!.counter).toBeGreaterThan(3500);
  });

  it('goes on after the time it was away, in phases without gap', async () => {
    const hall = new Hall();
    await hall.entry(printing());
    await hall.pass(600);
    hall.device.stop();
    await hall.clock.runUntil(hall.clock.now() + 1500_000);
    hall.killAndStart();
    await hall.pass(2 * 3600);
    const letter = hall.letters.find(({ contentType }) => contentType.startsWith('multipart'))!;
    const audits = elementsIn(ticketIn(letter), 'PhaseTime');
    for (let i = 1; i < audits.length; i++) expect(audits[i]!.Start).toBe(audits[i - 1]!.End);
    expect(finalOf(hall)[0]).toMatchObject({ amount: 3500 });
  });

  it('has lost its queue if it is a forgetful one', async () => {
    const hall = new Hall({ faults: ['forget'] });
    const id = await hall.entry(printing());
    await hall.pass(900);
    hall.killAndStart();
    expect(await hall.statusOf(id)).toBe('not existing');
    await hall.pass(3 * 3600);
    expect(finalOf(hall)).toEqual([]);
  });
});

describe('a plant clock that is set anew', () => {
  it.each([-7200, 86_400])('by %d s loses no sheet and leaves no gap between phases', async (jumpS) => {
    const hall = new Hall();
    await hall.entry(printing());
    await hall.pass(1000);
    const made = hall.phases.at(-1)!.amount!;
    const kept = hall.kept;
    hall.device.stop();
    // Another clock with the state of this one, as after a restart of the whole plant.
    const later = new Hall({ state: kept }, hall.clock.now() + jumpS * 1000, jumpS);
    await later.pass(10);
    const present = later.phases.at(-1) ?? hall.phases.at(-1)!;
    expect(present.amount).toBeLessThan(made + 200);
    await later.pass(3 * 3600);
    expect(finalOf(later)).toHaveLength(1);
    expect(finalOf(later)[0]).toMatchObject({ amount: 3500 });
    const letter = later.letters.find(({ contentType }) => contentType.startsWith('multipart'))!;
    const audits = elementsIn(ticketIn(letter), 'PhaseTime');
    for (let i = 1; i < audits.length; i++) expect(audits[i]!.Start).toBe(audits[i - 1]!.End);
  });
});
