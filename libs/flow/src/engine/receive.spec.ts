import { parsedXml, valueIn } from '../../../../test/kit/value-in.js';
import type { EnginePorts } from './ports.js';
import { receiveJmf } from './receive.js';

/** A server "sidelay" with one device "press". */
const ports = {
  deviceId: 'sidelay',
  clock: { now: () => 0 },
  ids: { next: () => 'id' },
  log: () => undefined,
  store: { device: (id: string) => Promise.resolve(id === 'press' ? { id } : null) },
} as unknown as EnginePorts;

/** ReturnCode and Comment of the answer to a message that names its receiver so; empty where nothing is answered. */
async function answered(message: string, receiver: string): Promise<string[]> {
  const doc = parsedXml(
    `<JMF xmlns="http://www.CIP4.org/JDFSchema_1_1" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance" SenderID="mis" TimeStamp="2026-01-05T08:00:00Z" Version="1.9" ${receiver}>${message}</JMF>`,
  );
  const from = { tokenDevice: null, fetch: () => Promise.reject(new Error('nothing is fetched')) };
  const answer = valueIn(await receiveJmf(ports, doc, from));
  return [...answer.matchAll(/ReturnCode="(\d+)"|<Comment[^>]*>([^<]*)/g)].map(
    ([, code, text]) => code ?? text!,
  );
}

const QUERY = '<Query ID="q" Type="SubmissionMethods" xsi:type="QuerySubmissionMethods"/>';
const COMMAND =
  '<Command ID="c" Type="SubmitQueueEntry" xsi:type="CommandSubmitQueueEntry"><QueueSubmissionParams URL="cid:x@y"/></Command>';

describe('a message for', () => {
  it.each(['', 'DeviceID="sidelay"', 'DeviceID="press"'])(
    'one who is here (%s) is served',
    async (receiver) => {
      expect(await answered(QUERY, receiver)).toEqual(['0']);
    },
  );

  it.each([QUERY, COMMAND])('somebody else is refused, whatever it is: %s', async (message) => {
    expect(await answered(message, 'DeviceID="folder"')).toEqual([
      '121',
      'No device folder is registered here.',
    ]);
  });

  it('somebody else that asks for nothing is no matter', async () => {
    const signal = '<Signal ID="s" Type="Weather" ChannelMode="Reliable"/>';
    expect((await answered(signal, 'DeviceID="folder"'))[0]).toBe('5');
  });
});
