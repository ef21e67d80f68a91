import type { EntrySelection } from '#libs/jdf';
import type { TicketCommand } from '../decide/command.js';
import { command } from '../engine/commands.js';
import { readQueue } from '../engine/own-queue.js';
import { unknownDevice } from './addressee.js';
import { type Answer, no, noBecause, ok, on, type Reception, speaker } from './handler.js';

/** Commands on entries that are the same as what people do on the board: hold, resume, abort. */
export const abortQueueEntry = on('CommandAbortQueueEntry', (message, reception) => {
  if (message.body.endStatus === 'Completed') {
    return Promise.resolve(
      no('JMF_PARAMETER', 'EndStatus="Completed" is not possible here: a step is completed by being done.'),
    );
  }
  return commandEntries('abort', message.body, reception);
});
export const holdQueueEntry = on('CommandHoldQueueEntry', (message, reception) =>
  commandEntries('hold', message.body, reception),
);
export const resumeQueueEntry = on('CommandResumeQueueEntry', (message, reception) =>
  commandEntries('resume', message.body, reception),
);

async function commandEntries(
  verb: TicketCommand,
  { filter }: EntrySelection,
  reception: Reception,
): Promise<Answer> {
  const { ports, envelope } = reception;
  const by = envelope.senderId;
  const named = (filter.entries ?? []).map((def) => def.queueEntryId);
  const queue = await readQueue(ports, envelope.deviceId, filter);
  if (queue === null) return unknownDevice(envelope.deviceId!);
  const who = speaker(reception, queue.deviceId);
  if (!who.ok) return who.answer;
  const missing = named.filter((id) => !queue.entries.some((entry) => entry.queueEntryId === id));
  if (missing.length > 0) return no('ENTRY_UNKNOWN', `The queue has no entry ${missing.join(', ')}.`);
  for (const { queueEntryId } of queue.entries) {
    const done =
      queue.deviceId === ports.deviceId
        ? await command(ports, queueEntryId, null, verb, by)
        : await commandStepOf(queueEntryId, verb, by, reception);
    if (!done.ok) return noBecause(done.problems);
  }
  const after = await readQueue(ports, envelope.deviceId, filter);
  return after === null ? ok : { ok: true, body: { queue: after } };
}

async function commandStepOf(
  entryId: string,
  verb: TicketCommand,
  by: string,
  { ports, envelope }: Reception,
): ReturnType<typeof command> {
  const entries = await ports.store.entries(envelope.deviceId!, 1000);
  const entry = entries.find((row) => row.id === entryId)!;
  return command(ports, entry.ticketId, entry.stepId, verb, by);
}
