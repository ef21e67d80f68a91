import type { NewMessage } from '#libs/jdf';
import { Hall, HUB, messagesIn } from '../../../../test/kit/plant-hall.js';
import { printing } from '../../../../test/kit/plant-tickets.js';

describe('a device that is asked', () => {
  it('lists the messages it answers and sends', async () => {
    const hall = new Hall();
    const answer = await hall.say({ kind: 'QueryKnownMessages', body: {} });
    const services = answer.kind === 'ResponseKnownMessages' ? answer.body.services! : [];
    const commands = services.filter(({ command, jmfRole }) => command && jmfRole === 'Receiver');
    expect(commands.map(({ type }) => type)).toEqual(
      expect.arrayContaining(['SubmitQueueEntry', 'AbortQueueEntry', 'StopPersistentChannel', 'CloseQueue']),
    );
    expect(services).toContainEqual({ type: 'Notification', signal: true, jmfRole: 'Sender' });
  });

  it('says who it is', async () => {
    const hall = new Hall({ url: 'http://127.0.0.1:9/jmf' });
    const answer = await hall.say({ kind: 'QueryKnownDevices', body: { deviceDetails: 'Brief' } });
    expect(answer).toMatchObject({
      body: {
        devices: [
          {
            deviceId: 'press-1',
            deviceStatus: 'Idle',
            device: { descriptiveName: 'First press', jmfUrl: 'http://127.0.0.1:9/jmf' },
          },
        ],
      },
    });
  });

  it('tells its status, and its job and queue only when they are asked for', async () => {
    const hall = new Hall();
    await hall.entry(printing());
    await hall.pass(1200);
    const brief = await hall.say({ kind: 'QueryStatus', body: {} });
    expect(brief).toMatchObject({ body: { devices: [{ deviceStatus: 'Running' }] } });
    expect(brief).not.toHaveProperty('body.devices.0.jobPhases');
    expect(brief).not.toHaveProperty('body.queue');
    const full = await hall.say({ kind: 'QueryStatus', body: { jobDetails: 'Full', queueInfo: true } });
    expect(full).toMatchObject({
      body: {
        devices: [{ jobPhases: [{ status: 'InProgress', statusDetails: 'Good' }] }],
        queue: { status: 'Running', entries: [{ status: 'Running' }] },
      },
    });
  });

  it('shows of its queue what a filter lets through', async () => {
    const hall = new Hall();
    for (const jobPartId of ['a', 'b'])
      await hall.entry(printing({ jobPartId }), { hold: jobPartId === 'b' });
    const shown = async (body: object) => {
      const answer = await hall.say({ kind: 'QueryQueueStatus', body } as NewMessage);
      return answer.kind === 'ResponseQueueStatus'
        ? (answer.body.queue?.entries ?? []).map((entry) => entry.jobPartId)
        : [];
    };
    expect(await shown({})).toEqual(['a', 'b']);
    expect(await shown({ statusList: ['Held'] })).toEqual(['b']);
    expect(await shown({ jobPartId: 'a' })).toEqual(['a']);
    expect(await shown({ maxEntries: 1 })).toEqual(['a']);
    expect(await shown({ queueEntryDetails: 'None' })).toEqual([]);
  });
});

describe('a subscription', () => {
  const other = 'http://board.test/jmf';
  const subscribe = (url: string): Omit<NewMessage, 'id'> => ({
    kind: 'QueryStatus',
    subscription: { url },
    body: {},
  });

  it('brings signals to whoever asked, with the ID of the query, until it is stopped', async () => {
    const hall = new Hall();
    const answer = await hall.say(subscribe(other));
    expect(answer.subscribed).toBe(true);
    await hall.pass(61);
    const [letter] = hall.letters.filter(({ url }) => url === other);
    expect(messagesIn(letter!.body)[0]).toMatchObject({ kind: 'SignalStatus', refId: answer.refId });
    await hall.say({ kind: 'CommandStopPersistentChannel', body: { url: other } });
    await hall.pass(600);
    expect(hall.letters.filter(({ url }) => url === other)).toHaveLength(1);
  });

  it('of the hub itself doubles nothing and only gives its signals the ID', async () => {
    const hall = new Hall();
    const answer = await hall.say(subscribe(HUB));
    await hall.pass(121);
    expect(hall.heard.map(({ refId }) => refId)).toEqual([undefined, answer.refId, answer.refId]);
  });
});
