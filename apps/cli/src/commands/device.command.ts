import { dirname, resolve } from 'node:path';
import { type DeviceKind, kinds, runDevice } from '#apps/plant';
import { type Command, EXIT, number, text, WrongUse } from '../command.js';
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
    const id = text(call, 'id') ?? `${kind}-1`;
    const state = text(call, 'state');
    const faults = call.values.fault as unknown as readonly string[] | undefined;
    const running = await runDevice({
      id,
      kind: kind as DeviceKind,
      name: text(call, 'name') ?? id,
      hub,
      port: number(call, 'port'),
      speed: number(call, 'speed'),
      seed: number(call, 'seed'),
      token: text(call, 'token') ?? call.env.SIDELAY_TOKEN,
      stateDir: state === undefined ? undefined : stateFolder(resolve(call.folder, state)),
      faults,
    });
    call.out(`${id} (${kind}) is at ${running.url}`);
    await untilStopped(() => running.stop());
    return EXIT.done;
  },
};

/** A folder keeps one file a device; whoever names such a file means its folder. */
function stateFolder(path: string): string {
  return path.endsWith('.json') ? dirname(path) : path;
}
