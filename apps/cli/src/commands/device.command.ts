import { dirname, resolve } from 'node:path';
import { type DeviceKind, kinds, runDevice } from '#apps/plant';
import { number, text, texts, wholeNumber } from '../args.js';
import { type Call, type Command, EXIT, WrongUse } from '../command.js';
import { untilStopped } from '../until-stopped.js';

export const device: Command = {
  name: 'device',
  usage:
    '--kind KIND --hub URL [--id ID] [--name NAME] [--port N] [--speed N] [--fault NAME[@N]]… [--state DIR] [--seed N] [--token T]',
  summary: 'One simulated machine that speaks JMF over HTTP to a hub, until Ctrl-C.',
  options: {
    kind: { type: 'string' },
    hub: { type: 'string' },
    id: { type: 'string' },
    name: { type: 'string' },
    port: { type: 'string' },
    speed: { type: 'string' },
    fault: { type: 'string', multiple: true },
    state: { type: 'string' },
    seed: { type: 'string' },
    token: { type: 'string' },
  },
  takes: [0, 0],
  async run(call) {
    const kind = text(call, 'kind');
    const hub = text(call, 'hub');
    if (kind === undefined || !(kinds as readonly string[]).includes(kind)) {
      throw new WrongUse(`--kind needs one of ${kinds.join(', ')}.`);
    }
    if (hub === undefined || !URL.canParse(hub))
      throw new WrongUse('--hub needs the address of a server, as http://127.0.0.1:7420.');
    const id = text(call, 'id') ?? (await freePlace(call, hub, kind));
    const state = text(call, 'state');
    const options = {
      id,
      kind: kind as DeviceKind,
      name: text(call, 'name') ?? id,
      hub,
      port: wholeNumber(call, 'port', 0),
      speed: speedOf(number(call, 'speed')),
      seed: wholeNumber(call, 'seed'),
      token: text(call, 'token') ?? call.env.SIDELAY_TOKEN,
      stateDir: state === undefined ? undefined : stateFolder(resolve(call.folder, state)),
      faults: texts(call, 'fault'),
    };
    await untilStopped(
      () => runDevice(options),
      ({ url }) => call.out(`${id} (${kind}) is at ${url}`),
    );
    return EXIT.done;
  },
};

/**
 * Without --id the device stands in for the plant's first machine of its kind that has not said yet where it is, so that
 * steps planned for that machine find it; else it is one more of its kind.
 */
async function freePlace(call: Call, hub: string, kind: string): Promise<string> {
  try {
    const token = text(call, 'token') ?? call.env.SIDELAY_TOKEN;
    const headers: Record<string, string> = token === undefined ? {} : { authorization: `Bearer ${token}` };
    const answer = await fetch(new URL('/api/v1/devices', hub), { headers });
    const { items } = (await answer.json()) as { items: { id: string; kind: string; url: string | null }[] };
    const free = items.find((row) => row.kind === kind && row.url === null);
    if (free !== undefined) return free.id;
  } catch {
    // The hub is not there yet, or does not tell a device: the name can be given with --id.
  }
  return `${kind}-1`;
}

/** Plant seconds in a real second. */
function speedOf(speed: number | undefined): number | undefined {
  if (speed !== undefined && !(speed > 0)) throw new WrongUse('--speed must be more than 0.');
  return speed;
}

/** A folder keeps one file a device; whoever names such a file means its folder. */
function stateFolder(path: string): string {
  return path.endsWith('.json') ? dirname(path) : path;
}
