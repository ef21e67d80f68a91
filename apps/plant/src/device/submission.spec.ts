import { Hall } from '../../../../test/kit/plant-hall.js';
import { cutting, printing } from '../../../../test/kit/plant-tickets.js';

const order = (type: string, inside = '') =>
  `<JMF xmlns="http://www.CIP4.org/JDFSchema_1_1" SenderID="hub" TimeStamp="2026-03-02T08:00:00Z" Version="1.9"><Command ID="c" Type="${type}">${inside}</Command></JMF>`;

const submission = (url: string) => order('SubmitQueueEntry', `<QueueSubmissionParams URL="${url}"/>`);

// ReturnCodes: JDF 1.4 specification, appendix D.
describe('a submission', () => {
  it('is taken without anything beginning to move', async () => {
    const hall = new Hall();
    const answer = await hall.submit(printing(), { priority: 70 });
    expect(answer).toMatchObject({
      kind: 'ResponseSubmitQueueEntry',
      returnCode: 0,
      body: { entry: { status: 'Waiting', priority: 70, jobId: 'nine-umbrellas', jobPartId: 'step-1' } },
    });
    expect(hall.phases).toEqual([]);
  });

  it('is held when it asks for that', async () => {
    const hall = new Hall();
    const id = await hall.entry(printing(), { hold: true });
    await hall.pass(3600);
    expect(await hall.statusOf(id)).toBe('Held');
  });

  it('is refused with 102 when nothing in the ticket can be executed here', async () => {
    const hall = new Hall();
    const tickets = [
      cutting(),
      printing({ status: 'Completed' }),
      printing({ status: 'InProgress' }),
      printing({ activation: 'Held' }),
      printing({ activation: 'Informative' }),
    ];
    for (const ticket of tickets) expect((await hall.submit(ticket)).returnCode).toBe(102);
  });

  it('is refused with 101 when the ticket is a template', async () => {
    const hall = new Hall();
    expect((await hall.submit(printing({ template: true }))).returnCode).toBe(101);
  });

  it('is refused with 116 while the same job part is in the queue, and taken when that has ended', async () => {
    const hall = new Hall();
    await hall.entry(printing());
    expect((await hall.submit(printing())).returnCode).toBe(116);
    expect((await hall.submit(printing({ jobPartId: 'step-2' }))).returnCode).toBe(0);
    await hall.pass(4 * 3600);
    expect((await hall.submit(printing())).returnCode).toBe(0);
  });

  it('is refused with 112 by a closed queue, and taken once it is open', async () => {
    const hall = new Hall();
    await hall.sayText(order('CloseQueue'));
    expect((await hall.submit(printing())).returnCode).toBe(112);
    await hall.sayText(order('OpenQueue'));
    expect((await hall.submit(printing())).returnCode).toBe(0);
  });

  it('is refused with 3 when the ticket is not well-formed, and names the line', async () => {
    const hall = new Hall();
    const answer = await hall.submit(printing().replace('</JDF>', ''));
    expect(answer.returnCode).toBe(3);
    expect(answer.notification?.comment).toMatch(/^Line \d+: /);
  });

  it('is refused with 120 when its URL leads nowhere', async () => {
    const hall = new Hall({ fetchTicket: async () => null });
    expect((await hall.sayText(submission('cid:other@hub.test'), printing())).returnCode).toBe(120);
    expect((await hall.sayText(submission('http://hub.test/gone'))).returnCode).toBe(120);
    expect((await hall.sayText(submission('file:///etc/hostname'))).returnCode).toBe(120);
  });

  it('fetches the ticket from an http address', async () => {
    const asked: string[] = [];
    const hall = new Hall({
      fetchTicket: async (url) => {
        asked.push(url);
        return printing();
      },
    });
    expect((await hall.sayText(submission('http://hub.test/tickets/1'))).returnCode).toBe(0);
    expect(asked).toEqual(['http://hub.test/tickets/1']);
  });

  it('is not fetched from, nor returned to, a place the device must not reach', async () => {
    const hall = new Hall({ fetchTicket: async () => printing(), mayReach: () => false });
    expect((await hall.sayText(submission('http://elsewhere.test/ticket'))).returnCode).toBe(120);
    expect((await hall.submit(printing(), { returnUrl: 'http://elsewhere.test/back' })).returnCode).toBe(6);
  });

  it('is refused for want of a parameter with 7', async () => {
    const hall = new Hall();
    expect((await hall.sayText(order('SubmitQueueEntry'))).returnCode).toBe(7);
  });

  it('is refused once by a device that is told to refuse its second job', async () => {
    const hall = new Hall({ faults: ['refuse@2'] });
    const codes = [];
    for (const jobPartId of ['a', 'b', 'c'])
      codes.push((await hall.submit(printing({ jobPartId }))).returnCode);
    expect(codes).toEqual([0, 101, 0]);
  });

  it('brings the ticket alone to a ReturnURL', async () => {
    const hall = new Hall();
    await hall.submit(printing(), { returnUrl: 'http://hub.test/back' });
    await hall.pass(3 * 3600);
    const letter = hall.letters.find(({ url }) => url === 'http://hub.test/back')!;
    expect(letter.contentType).toBe('application/vnd.cip4-jdf+xml');
    expect(letter.body).toContain('EndStatus="Completed"');
  });
});

describe('a message', () => {
  it('for another device is answered with 121', async () => {
    const hall = new Hall();
    const answer = await hall.say({ kind: 'QueryStatus', body: {} }, null, 'folder-1');
    expect(answer.returnCode).toBe(121);
  });

  it('of a type that is not known is answered with 5', async () => {
    const hall = new Hall();
    expect((await hall.sayText(order('FlushResources'))).returnCode).toBe(5);
  });

  it('that is not XML, or not JMF, is answered with 3 or 4', async () => {
    const hall = new Hall();
    expect((await hall.sayText('Ready when you are')).returnCode).toBe(3);
    expect((await hall.sayText('<JMF xmlns="http://www.CIP4.org/JDFSchema_1_1"/>')).returnCode).toBe(4);
  });

  it('is not answered by a silent device, which says nothing more either', async () => {
    const hall = new Hall({ faults: ['silent@2'] });
    expect((await hall.submit(printing())).returnCode).toBe(0);
    await expect(hall.say({ kind: 'QueryStatus', body: {} })).rejects.toMatchObject({
      code: 'DEVICE_SILENT',
    });
    const before = hall.letters.length;
    await hall.pass(3600);
    expect(hall.letters.length).toBe(before);
  });
});

describe('a fault', () => {
  it('that does not exist is refused by name', () => {
    expect(() => new Hall({ faults: ['explode'] })).toThrow(/no fault "explode"/);
  });

  it('makes a slow device take three times as long', async () => {
    const lasts = async (faults: string[]) => {
      const hall = new Hall({ faults });
      await hall.entry(printing());
      await hall.pass(6 * 3600);
      const { startTime, endTime } = hall.phases.at(-1)!;
      return endTime! - startTime!;
    };
    const ratio = (await lasts(['slow'])) / (await lasts([]));
    // The two crews draw different chances, 15 % apart at the most.
    expect(ratio).toBeGreaterThan(2.55);
    expect(ratio).toBeLessThan(3.45);
  });
});
