import { isMultipart, readMultipart } from '../../apps/plant/src/package/multipart.js';
import type { NewMessage } from '../../libs/jdf/src/index.js';
import { Hall } from '../kit/plant-hall.js';
import { cutting, plates, printing } from '../kit/plant-tickets.js';
import { schemaFaults } from './xmllint.js';

/** Everything that a hall said and answered, and the tickets it gave back, as documents by name. */
function documentsOf(name: string, hall: Hall): Record<string, string> {
  const documents: Record<string, string> = {};
  hall.letters.forEach(({ body, contentType }, i) => {
    if (!isMultipart(contentType)) documents[`${name}-said-${i}.xml`] = body;
    else {
      readMultipart(Buffer.from(body), contentType)!.forEach(({ bytes }, part) => {
        documents[`${name}-returned-${i}-${part}.xml`] = Buffer.from(bytes).toString('utf8');
      });
    }
  });
  hall.answers.forEach((answer, i) => {
    documents[`${name}-answered-${i}.xml`] = answer;
  });
  return documents;
}

const command = (type: string, inside = '') =>
  `<JMF xmlns="http://www.CIP4.org/JDFSchema_1_1" SenderID="hub" TimeStamp="2026-03-02T08:00:00Z" Version="1.9"><Command ID="c" Type="${type}">${inside}</Command></JMF>`;

// Source: the official JDF 1.9 schema, judged by xmllint.
describe('what the simulated plant writes', () => {
  it('is valid for whole runs, undisturbed and disturbed, on several machines', async () => {
    const wishes = {
      press: [{}, printing()],
      broken: [{ faults: ['breakdown'] }, printing()],
      jammed: [{ faults: ['jam'] }, printing()],
      short: [{ faults: ['shortRun'] }, printing()],
      platesetter: [{ kind: 'platesetter' }, plates()],
      guillotine: [{ kind: 'guillotine' }, cutting()],
    } as const;
    const documents: Record<string, string> = {};
    for (const [name, [options, ticket]] of Object.entries(wishes)) {
      const hall = new Hall(options);
      await hall.entry(ticket);
      await hall.pass(2 * 3600);
      Object.assign(documents, documentsOf(name, hall));
    }
    const names = Object.keys(documents);
    expect(names.filter((name) => name.includes('returned'))).toHaveLength(12);
    expect(names.length).toBeGreaterThan(500);
    expect(schemaFaults(documents)).toEqual({});
  });

  it('is valid for every answer, the refusals too', async () => {
    const hall = new Hall({ url: 'http://127.0.0.1:7501/jmf' });
    const id = await hall.entry(printing(), { priority: 40 });
    await hall.entry(printing({ jobPartId: 'b' }), { hold: true });
    await hall.submit(printing());
    await hall.submit(cutting());
    const subscription = { url: 'http://board.test/jmf' };
    const questions = [
      { kind: 'QueryKnownMessages', body: {} },
      { kind: 'QueryKnownDevices', body: { deviceDetails: 'Full' } },
      { kind: 'QuerySubmissionMethods', body: {} },
      { kind: 'QueryQueueStatus', body: {} },
      { kind: 'QueryStatus', body: {}, subscription },
    ] as unknown as NewMessage[];
    for (const question of questions) await hall.say(question);
    await hall.pass(900);
    await hall.say({
      kind: 'QueryStatus',
      body: { jobDetails: 'Full', deviceDetails: 'Full', queueInfo: true },
    });
    for (const kind of ['Hold', 'Suspend', 'Resume', 'Remove'] as const) {
      await hall.command(`Command${kind}QueueEntry`, id);
    }
    await hall.command('CommandAbortQueueEntry', id, { endStatus: 'Aborted' });
    await hall.command('CommandAbortQueueEntry', 'nobody', { endStatus: 'Aborted' });
    for (const type of [
      'HoldQueue',
      'CloseQueue',
      'ResumeQueue',
      'OpenQueue',
      'FlushResources',
      'SubmitQueueEntry',
    ]) {
      await hall.sayText(command(type));
    }
    await hall.sayText(
      command('SetQueueEntryPriority', `<QueueEntryPriParams QueueEntryID="${id}" Priority="7"/>`),
    );
    await hall.sayText(
      command('SetQueueEntryPosition', `<QueueEntryPosParams QueueEntryID="${id}" Position="0"/>`),
    );
    await hall.sayText(
      command('ResubmitQueueEntry', `<ResubmissionParams QueueEntryID="${id}" URL="cid:ticket@hub.test"/>`),
      printing(),
    );
    await hall.sayText('not JMF at all');
    await hall.say({ kind: 'CommandStopPersistentChannel', body: subscription });
    await hall.pass(2 * 3600);
    expect(hall.answers.length).toBeGreaterThan(25);
    expect(schemaFaults(documentsOf('answers', hall))).toEqual({});
  });
});
