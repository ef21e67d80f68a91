import type { DeviceInfo, MessageService } from '#libs/jdf';
import { type Answer, type Asked, bodyOf, type Desk } from './desk.js';
import { queueView } from './queue.js';

/** Signals of these types can be subscribed to, and come without subscription too. */
export const signals = ['Status', 'Resource', 'Notification'];

export function answerStatus(desk: Desk, asked: Asked): Answer {
  const { deviceDetails = 'None', jobDetails = 'None', ...params } = bodyOf(asked, 'QueryStatus');
  const info = desk.speech.presentInfo(desk.now());
  const jobPhases = (info.jobPhases ?? []).filter(
    (phase) =>
      jobDetails !== 'None' &&
      (params.jobId === undefined || params.jobId === phase.jobId) &&
      (params.jobPartId === undefined || params.jobPartId === phase.jobPartId) &&
      (params.queueEntryId === undefined || params.queueEntryId === phase.queueEntryId),
  );
  const device = deviceDetails === 'None' ? undefined : deviceElement(desk);
  const queue =
    params.queueInfo === true ? queueView(desk.state, desk.id, { queueEntryDetails: 'Brief' }) : undefined;
  return { code: 0, body: { devices: [{ ...info, jobPhases, device }], queue } };
}

export function answerKnownDevices(desk: Desk, asked: Asked): Answer {
  const { deviceDetails = 'None', devices: wanted } = bodyOf(asked, 'QueryKnownDevices');
  const meant = wanted === undefined || wanted.some(({ deviceId }) => deviceId === desk.id);
  const { jobPhases: _, ...info } = desk.speech.presentInfo(desk.now());
  const device = deviceDetails === 'None' ? undefined : deviceElement(desk);
  return { code: 0, body: { devices: meant ? [{ ...info, device }] : [] } };
}

function deviceElement({ id, name, url, profile }: Desk): DeviceInfo['device'] {
  return {
    deviceId: id,
    descriptiveName: name,
    friendlyName: name,
    jmfSenderId: id,
    jmfUrl: url ?? undefined,
    deviceType: profile.kind,
  };
}

/** From the registry itself, so that the list is never out of date. */
export function answerKnownMessages(_desk: Desk, kinds: readonly string[]): Answer {
  const services = kinds.map((kind): MessageService => {
    const command = kind.startsWith('Command');
    const type = kind.slice((command ? 'Command' : 'Query').length);
    const persistent = signals.includes(type) ? true : undefined;
    return command
      ? { type, command: true, jmfRole: 'Receiver' }
      : { type, query: true, persistent, signal: persistent, jmfRole: 'Receiver' };
  });
  const sent = signals.filter((type) => !services.some((service) => service.type === type));
  const senders = sent.map((type): MessageService => ({ type, signal: true, jmfRole: 'Sender' }));
  const returns: MessageService = { type: 'ReturnQueueEntry', command: true, jmfRole: 'Sender' };
  return { code: 0, body: { services: [...services, ...senders, returns] } };
}
