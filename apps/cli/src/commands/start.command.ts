import { runServer } from '#apps/server';
import { type Command, EXIT, number } from '../command.js';
import { untilStopped } from '../until-stopped.js';

export const start: Command = {
  name: 'start',
  usage: '[--demo] [--speed N]',
  summary: 'Run the server in this terminal until Ctrl-C; --demo adds the simulated plant.',
  options: { demo: { type: 'boolean' }, speed: { type: 'string' } },
  takes: [0, 0],
  async run(call) {
    const speed = number(call, 'speed');
    const server = await runServer({
      ...call.env,
      ...(call.values.demo ? { SIDELAY_DEMO: '1' } : {}),
      ...(speed === undefined ? {} : { SIDELAY_DEMO_SPEED: String(speed) }),
    });
    call.out(`Sidelay is ready at ${server.url}`);
    await untilStopped(() => server.stop());
    return EXIT.done;
  },
};
