import type { MessageKind } from '#libs/jdf';
import { Hall, type Letter } from '../../../../test/kit/plant-hall.js';
import { printing } from '../../../../test/kit/plant-tickets.js';
import { isMultipart } from '../package/multipart.js';

/**
 * JDF 1.4 specification, table 5-92, column by column as printed there: the status that follows or the ReturnCode of the
 * refusal. Where the table leaves a choice to the device (resubmitting a started or ended entry), this one says 107 for
 * started entries and queues ended ones again.
 */
const columns = [
  'none',
  'Waiting',
  'Held',
  'Running',
  'Suspended',
  'PendingReturn',
  'Completed',
  'Aborted',
] as const;
type Column = (typeof columns)[number];

const table: Record<string, readonly (string | number)[]> = {
  AbortQueueEntry: [105, 'Aborted', 'Aborted', 'Aborted', 'Aborted', 114, 114, 113],
  HoldQueueEntry: [105, 'Held', 113, 106, 106, 114, 114, 114],
  ResumeQueueEntry: [105, 113, 'Waiting', 113, 'Running', 114, 114, 114],
  SuspendQueueEntry: [105, 115, 115, 'Suspended', 113, 114, 114, 114],
  RemoveQueueEntry: [105, 'not existing', 'not existing', 106, 106, 106, 'not existing', 'not existing'],
  ResubmitQueueEntry: [105, 'Waiting', 'Held', 107, 107, 114, 'Waiting', 'Waiting'],
  SetQueueEntryPosition: [105, 'Waiting', 'Held', 107, 107, 114, 114, 114],
  SetQueueEntryPriority: [105, 'Waiting', 'Held', 107, 107, 114, 114, 114],
};

const isReturn = ({ contentType }: Letter): boolean => isMultipart(contentType);

async function entryIn(hall: Hall, column: Column): Promise<string> {
  if (column === 'none') return 'nobody';
  if (column === 'Held') return hall.entry(printing(), { hold: true });
  const id = await hall.entry(printing());
  if (column === 'Waiting') return id;
  if (column === 'Aborted') {
    await hall.command('CommandAbortQueueEntry', id, { endStatus: 'Aborted' });
    return id;
  }
  if (column === 'PendingReturn') hall.hubIsThere = (letter) => !isReturn(letter);
  await hall.pass(column === 'Running' || column === 'Suspended' ? 600 : 3 * 3600);
  if (column === 'Suspended') await hall.command('CommandSuspendQueueEntry', id);
  return id;
}

async function tell(hall: Hall, command: string, id: string): Promise<number> {
  const jmf = (inside: string) =>
    `<JMF xmlns="http://www.CIP4.org/JDFSchema_1_1" SenderID="hub" TimeStamp="2026-03-02T08:00:00Z" Version="1.9"><Command ID="c" Type="${command}">${inside}</Command></JMF>`;
  const text = {
    ResubmitQueueEntry: `<ResubmissionParams QueueEntryID="${id}" URL="cid:ticket@hub.test"/>`,
    SetQueueEntryPosition: `<QueueEntryPosParams QueueEntryID="${id}" Position="0"/>`,
    SetQueueEntryPriority: `<QueueEntryPriParams QueueEntryID="${id}" Priority="77"/>`,
  }[command];
  if (text !== undefined) return (await hall.sayText(jmf(text), printing())).returnCode ?? 0;
  const more = command === 'AbortQueueEntry' ? { endStatus: 'Aborted' } : {};
  return hall.command(`Command${command}` as MessageKind, id, more);
}

describe('queue entry commands', () => {
  const cells = Object.entries(table).flatMap(([command, row]) =>
    columns.map((column, at) => [command, column, row[at]!] as const),
  );

  it.each(cells)('%s on an entry that is %s leads to %s', async (command, column, expected) => {
    const hall = new Hall();
    const id = await entryIn(hall, column);
    const before = column === 'none' ? 'not existing' : column;
    expect(await hall.statusOf(id)).toBe(before);
    const code = await tell(hall, command, id);
    expect(code).toBe(typeof expected === 'number' ? expected : 0);
    expect(await hall.statusOf(id)).toBe(typeof expected === 'number' ? before : expected);
  });

  it('understands the form of versions before 1.5, with a QueueEntryDef', async () => {
    const hall = new Hall();
    const id = await hall.entry(printing());
    const answer = await hall.sayText(
      `<JMF xmlns="http://www.CIP4.org/JDFSchema_1_1" SenderID="hub" TimeStamp="2026-03-02T08:00:00Z" Version="1.4"><Command ID="c" Type="HoldQueueEntry"><QueueEntryDef QueueEntryID="${id}"/></Command></JMF>`,
    );
    expect(answer.returnCode).toBe(0);
    expect(await hall.statusOf(id)).toBe('Held');
  });

  it('takes the entry at the position that is asked for first, with the priority that was there', async () => {
    const hall = new Hall();
    const first = await hall.entry(printing({ jobPartId: 'a' }), { priority: 60 });
    const last = await hall.entry(printing({ jobPartId: 'b' }), { priority: 10 });
    await tell(hall, 'SetQueueEntryPosition', last);
    const answer = await hall.say({ kind: 'QueryQueueStatus', body: {} });
    const entries = answer.kind === 'ResponseQueueStatus' ? answer.body.queue!.entries! : [];
    expect(entries.map(({ queueEntryId, priority }) => [queueEntryId, priority])).toEqual([
      [last, 60],
      [first, 60],
    ]);
  });

  it('gives an aborted entry back with its node Aborted, even if it never ran', async () => {
    const hall = new Hall();
    const id = await hall.entry(printing());
    await hall.command('CommandAbortQueueEntry', id, { endStatus: 'Aborted' });
    await hall.pass(1);
    const returned = hall.heard.find(({ kind }) => kind === 'CommandReturnQueueEntry');
    expect(returned?.body).toMatchObject({ queueEntryId: id, aborted: ['n1'] });
  });
});

describe('the status of the queue', () => {
  // JDF 1.4 specification, table 5-111: two switches and the load.
  const status = async (hall: Hall) => {
    const answer = await hall.say({ kind: 'QueryQueueStatus', body: {} });
    return answer.kind === 'ResponseQueueStatus' ? answer.body.queue?.status : undefined;
  };
  const text = (type: string) =>
    `<JMF xmlns="http://www.CIP4.org/JDFSchema_1_1" SenderID="hub" TimeStamp="2026-03-02T08:00:00Z" Version="1.9"><Command ID="c" Type="${type}"/></JMF>`;

  it('follows its two switches and the machine', async () => {
    const hall = new Hall();
    expect(await status(hall)).toBe('Waiting');
    await hall.sayText(text('HoldQueue'));
    expect(await status(hall)).toBe('Held');
    await hall.sayText(text('CloseQueue'));
    expect(await status(hall)).toBe('Blocked');
    await hall.sayText(text('ResumeQueue'));
    expect(await status(hall)).toBe('Closed');
    await hall.sayText(text('OpenQueue'));
    await hall.entry(printing());
    await hall.pass(600);
    expect(await status(hall)).toBe('Running');
  });

  it('lets nobody start a job while it is held, and takes jobs all the same', async () => {
    const hall = new Hall();
    await hall.sayText(text('HoldQueue'));
    const id = await hall.entry(printing());
    await hall.pass(3600);
    expect(await hall.statusOf(id)).toBe('Waiting');
    await hall.sayText(text('ResumeQueue'));
    await hall.pass(600);
    expect(await hall.statusOf(id)).toBe('Running');
  });
});
