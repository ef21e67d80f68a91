import type { Message } from '#libs/jdf';
import { type Answer, no, type Reception } from './handler.js';

// A Signal, a Response or an Acknowledge asks for nothing: many senders name themselves in it.
const ASKING: ReadonlySet<Message['family']> = new Set(['Query', 'Command', 'Registration']);

/**
 * Refuses what is asked of somebody who is not here (JMF/@DeviceID names the receiver; return code 121): neither this
 * server nor a device whose queue it keeps. Null for a message to be served.
 */
export async function refuseForOthers(
  { family }: Pick<Message, 'family'>,
  { ports, envelope }: Pick<Reception, 'ports' | 'envelope'>,
): Promise<Answer | null> {
  const { deviceId } = envelope;
  if (deviceId === undefined || deviceId === ports.deviceId || !ASKING.has(family)) return null;
  return (await ports.store.device(deviceId)) === null ? unknownDevice(deviceId) : null;
}

export const unknownDevice = (id: string): Answer =>
  no('DEVICE_UNKNOWN', `No device ${id} is registered here.`);
