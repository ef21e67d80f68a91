import type { MessageKind } from '#libs/jdf';
import { type Answer, bodyOf, type Desk, type Handler } from './desk.js';
import { commandEntries, entryAction, positionEntry } from './entry-commands.js';
import { answerKnownDevices, answerKnownMessages, answerStatus } from './queries.js';
import { entryView, queueView } from './queue.js';
import type { DeviceState } from './state.js';
import { takeIn, ticketAt, workIn } from './submission.js';

function entryCommand(
  command: 'HoldQueueEntry' | 'ResumeQueueEntry' | 'SuspendQueueEntry' | 'RemoveQueueEntry',
): Handler {
  return (desk, asked) => {
    const { filter } = bodyOf(asked, 'CommandHoldQueueEntry');
    const act = entryAction(command, desk.state, desk.machine, desk.now());
    return withQueue(desk, commandEntries(desk.state, filter, command, act), filter);
  };
}

function withQueue(desk: Desk, code: number, filter = {}): Answer {
  desk.machine.callCrew(desk.now());
  const text = code === 0 ? undefined : `The queue entry does not allow it (ReturnCode ${code}).`;
  return { code, text, body: { queue: queueView(desk.state, desk.id, filter) } };
}

function queueSwitch(change: (state: DeviceState) => void): Handler {
  return (desk) => {
    change(desk.state);
    return withQueue(desk, 0);
  };
}

const submit: Handler = async (desk, asked) => {
  const submission = bodyOf(asked, 'CommandSubmitQueueEntry');
  const ticket = await ticketAt(desk, submission.url, asked.parts);
  const taken = takeIn(desk, submission, ticket, desk.now());
  const queue = queueView(desk.state, desk.id, { queueEntryDetails: 'None' });
  if (!taken.ok) return { code: taken.code, text: taken.text, body: { queue } };
  const entry = taken.value;
  const neighbour = submission.previousQueueEntryId ?? submission.nextQueueEntryId;
  if (neighbour !== undefined) {
    positionEntry(desk.state, entry, {
      position: null,
      previous: submission.previousQueueEntryId ?? null,
      next: submission.nextQueueEntryId ?? null,
    });
  }
  desk.machine.callCrew(desk.now());
  return {
    code: 0,
    body: {
      entry: entryView(entry, desk.id),
      queue: queueView(desk.state, desk.id, { queueEntryDetails: 'None' }),
    },
  };
};

const abort: Handler = (desk, asked) => {
  const { filter, endStatus } = bodyOf(asked, 'CommandAbortQueueEntry');
  const code = commandEntries(desk.state, filter, 'AbortQueueEntry', (entry) =>
    desk.machine.abort(entry, endStatus, desk.now()),
  );
  return withQueue(desk, code, filter);
};

const setPriority: Handler = (desk, asked) => {
  const { priority, queueEntryId, filter } = bodyOf(asked, 'CommandSetQueueEntryPriority');
  const chosen = queueEntryId === undefined ? filter : { entries: [{ queueEntryId }] };
  if (chosen === undefined) return { code: 7, text: 'Neither QueueEntryID nor QueueFilter is given.' };
  const code = commandEntries(desk.state, chosen, 'SetQueueEntryPriority', (entry) => {
    entry.priority = priority;
  });
  return withQueue(desk, code, chosen);
};

const setPosition: Handler = (desk, asked) => {
  const { queueEntryId, position, previousQueueEntryId, nextQueueEntryId } = bodyOf(
    asked,
    'CommandSetQueueEntryPosition',
  );
  const wanted = {
    position: position ?? null,
    previous: previousQueueEntryId ?? null,
    next: nextQueueEntryId ?? null,
  };
  if (wanted.position === null && wanted.previous === null && wanted.next === null)
    return { code: 7, text: 'Neither a position nor a neighbour is given.' };
  const filter = { entries: [{ queueEntryId }] };
  let found = true;
  const code = commandEntries(desk.state, filter, 'SetQueueEntryPosition', (entry) => {
    found = positionEntry(desk.state, entry, wanted);
  });
  if (!found) return { code: 105, text: 'The neighbour is not waiting in this queue.' };
  return withQueue(desk, code, filter);
};

/** The ticket is read first, so that a faulty one leaves the entry as it was. */
const resubmit: Handler = async (desk, asked) => {
  const { queueEntryId, url } = bodyOf(asked, 'CommandResubmitQueueEntry');
  const filter = { entries: [{ queueEntryId }] };
  const allowed = commandEntries(desk.state, filter, 'ResubmitQueueEntry', () => undefined);
  if (allowed !== 0) return withQueue(desk, allowed, filter);
  const ticket = await ticketAt(desk, url, asked.parts);
  if (ticket === null) return { code: 120, text: `The ticket at ${url} cannot be read.` };
  const entry = desk.state.entries.find(({ id }) => id === queueEntryId) ?? null;
  const work = workIn(desk, ticket, entry);
  if (!work.ok) return { code: work.code, text: work.text };
  // While the ticket was fetched the crew may have started it.
  const code = commandEntries(desk.state, filter, 'ResubmitQueueEntry', (chosen) => {
    const waits = chosen.status === 'Held' ? 'Held' : 'Waiting';
    const now = desk.now();
    Object.assign(chosen, { status: waits, ticket, work: work.value, run: null, start: null, end: null });
    Object.assign(chosen, { endStatus: null, submitted: now, order: desk.state.orders++ });
  });
  return withQueue(desk, code, filter);
};

const stopChannel: Handler = (desk, asked) => {
  const { url, channelId, messageType, deviceId } = bodyOf(asked, 'CommandStopPersistentChannel');
  const meant = (channel: DeviceState['channels'][number]): boolean =>
    channel.url === url &&
    (channelId === undefined || channel.id === channelId) &&
    (messageType === undefined || channel.type === messageType) &&
    (deviceId === undefined || deviceId === desk.id);
  desk.state.channels = desk.state.channels.filter((channel) => !meant(channel));
  return { code: 0, body: {} };
};

/** One line a message. */
const handlers: Readonly<Partial<Record<MessageKind, Handler>>> = {
  QueryKnownDevices: answerKnownDevices,
  QueryKnownMessages: (desk) => answerKnownMessages(desk, Object.keys(handlers)),
  QueryQueueStatus: (desk, asked) => ({
    code: 0,
    body: { queue: queueView(desk.state, desk.id, bodyOf(asked, 'QueryQueueStatus')) },
  }),
  QueryStatus: answerStatus,
  QuerySubmissionMethods: () => ({
    code: 0,
    body: {
      methods: { packaging: ['MIME', 'None'], urlSchemes: ['cid', 'http'], mime: true, httpGet: true },
    },
  }),
  CommandSubmitQueueEntry: submit,
  CommandResubmitQueueEntry: resubmit,
  CommandAbortQueueEntry: abort,
  CommandHoldQueueEntry: entryCommand('HoldQueueEntry'),
  CommandResumeQueueEntry: entryCommand('ResumeQueueEntry'),
  CommandSuspendQueueEntry: entryCommand('SuspendQueueEntry'),
  CommandRemoveQueueEntry: entryCommand('RemoveQueueEntry'),
  CommandSetQueueEntryPriority: setPriority,
  CommandSetQueueEntryPosition: setPosition,
  CommandOpenQueue: queueSwitch((state) => {
    state.closed = false;
  }),
  CommandCloseQueue: queueSwitch((state) => {
    state.closed = true;
  }),
  CommandHoldQueue: queueSwitch((state) => {
    state.held = true;
  }),
  CommandResumeQueue: queueSwitch((state) => {
    state.held = false;
  }),
  CommandStopPersistentChannel: stopChannel,
};

/** What answers a kind of message; undefined for one that the device does not know. */
export function handlerOf(kind: string): Handler | undefined {
  return Object.hasOwn(handlers, kind) ? handlers[kind as MessageKind] : undefined;
}
