import { runServer } from '#apps/server';
import { number } from '../args.js';
import { type Command, EXIT } from '../command.js';
import { untilStopped } from '../until-stopped.js';

export const start: Command = {
  name: 'start',
  usage: '[--demo] [--speed N]',
  summary: 'Run the server in this terminal until Ctrl-C; --demo adds the simulated plant.',
  options: { demo: { type: 'boolean' }, speed: { type: 'string' } },
  takes: [0, 0],
  async run(call) {
    const speed = number(call, 'speed');
    const env = {
      ...call.env,
      ...(call.values.demo ? { SIDELAY_DEMO: '1' } : {}),
      ...(speed === undefined ? {} : { SIDELAY_DEMO_SPEED: String(speed) }),
    };
    await untilStopped(
      () => runServer(env),
      ({ url }) => call.out(`Sidelay is ready at ${url}`),
    );
    return EXIT.done;
  },
};
