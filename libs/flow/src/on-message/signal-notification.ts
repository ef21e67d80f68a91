import type { Decision } from '../ports.js';
import { type Answer, ok, on, speaker } from './handler.js';

/** A device tells people something: a warning, an event, a fault. It goes into the story of the job it is about. */
export const signalNotification = on('SignalNotification', async (message, reception): Promise<Answer> => {
  const { ports } = reception;
  const { notification } = message.body;
  const who = speaker(reception, undefined);
  if (!who.ok) return who.answer;
  const { deviceId } = who;
  const { jobId, jobPartId, queueEntryId } = notification;
  const named = jobId !== undefined || queueEntryId !== undefined;
  const address = named ? await ports.store.findStep(deviceId, { jobId, jobPartId, queueEntryId }) : null;
  await ports.store.change(
    {},
    (): Decision<null> => ({
      events: [
        {
          type: 'notification.raised',
          time: notification.timeStamp,
          ticketId: address?.ticketId ?? null,
          stepId: address?.stepId ?? null,
          deviceId,
          data: {
            class: notification.class,
            type: notification.type ?? null,
            text: notification.comment ?? notification.type ?? '',
          },
        },
      ],
      result: null,
    }),
  );
  return ok;
});
