import type { DeviceInfo as WireDevice } from '#libs/jdf';
import { readQueue } from '../engine/own-queue.js';
import type { Device } from '../state/device.js';
import { unknownDevice } from './addressee.js';
import { answer, on } from './handler.js';

function wireDevice(device: Device): WireDevice {
  return {
    deviceId: device.id,
    deviceStatus: device.status,
    ...(device.statusDetails === null ? {} : { statusDetails: device.statusDetails }),
    ...(device.speed === null ? {} : { speedPerHour: device.speed }),
    jobPhases: [],
    modules: [],
    employees: [],
    device: { deviceId: device.id, friendlyName: device.name, modules: [] },
  };
}

/** The queue of this server or of one of its devices, with the entries that the filter names. */
export const queryQueueStatus = on('QueryQueueStatus', async (message, reception) => {
  const queue = await readQueue(reception.ports, reception.envelope.deviceId, message.body);
  if (queue === null) return unknownDevice(reception.envelope.deviceId!);
  return answer('ResponseQueueStatus', { queue });
});

/** All devices that are registered here, with how they stand. */
export const queryKnownDevices = on('QueryKnownDevices', async (message, { ports }) => {
  const wanted = (message.body.devices ?? []).flatMap((device) =>
    device.deviceId === undefined ? [] : [device.deviceId],
  );
  const devices = (await ports.store.devices()).filter(
    (device) => wanted.length === 0 || wanted.includes(device.id),
  );
  return answer('ResponseKnownDevices', { devices: devices.map(wireDevice) });
});

/** What the devices do that are asked about, with the job on each. */
export const queryStatus = on('QueryStatus', async (_message, reception) => {
  const { ports, envelope } = reception;
  const all = await ports.store.devices();
  if (envelope.deviceId === undefined || envelope.deviceId === ports.deviceId) {
    return answer('ResponseStatus', {
      devices: all.map(wireDevice),
      queue: (await readQueue(ports, envelope.deviceId)) ?? undefined,
    });
  }
  const device = all.find((row) => row.id === envelope.deviceId);
  if (device === undefined) return unknownDevice(envelope.deviceId);
  return answer('ResponseStatus', { devices: [wireDevice(device)], queue: undefined });
});

/** By which ways tickets can be submitted here. */
export const querySubmissionMethods = on('QuerySubmissionMethods', () =>
  Promise.resolve(
    answer('ResponseSubmissionMethods', {
      methods: {
        urlSchemes: ['http', 'https', 'file', 'cid'],
        packaging: ['MIME'],
        httpGet: true,
        mime: true,
      },
    }),
  ),
);
