import { readFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { Fault } from '#libs/kernel';
import { type PlantDevice, type PlantOptions, runPlant } from './shell/run-plant.js';

/** A plant as a process of its own; it ends, state kept, on a signal or when the process that started it goes away. */
async function main(): Promise<void> {
  const plant = await runPlant(readOptions(process.argv.slice(2)));
  let ending = false;
  const end = (): void => {
    if (ending) return;
    ending = true;
    void plant.stop().then(() => process.exit(0));
  };
  for (const signal of ['SIGTERM', 'SIGINT'] as const) process.on(signal, end);
  process.on('disconnect', end);
  process.send?.({ kind: 'ready', urls: plant.urls });
}

function readOptions(args: readonly string[]): PlantOptions {
  const { values } = parseArgs({
    args: [...args],
    options: {
      hub: { type: 'string' },
      devices: { type: 'string' },
      state: { type: 'string' },
      seed: { type: 'string' },
      speed: { type: 'string' },
      token: { type: 'string' },
      'token-file': { type: 'string' },
    },
  });
  if (values.hub === undefined || !URL.canParse(values.hub)) {
    throw new Fault('SETTING', '--hub needs the address of the hub.');
  }
  const tokenFile = values['token-file'];
  return {
    hub: values.hub,
    devices: readDevices(values.devices ?? ''),
    stateDir: values.state,
    seed: numberIn('--seed', values.seed),
    speed: numberIn('--speed', values.speed),
    // A file keeps the secret out of the list of processes.
    token: tokenFile === undefined ? values.token : readFileSync(tokenFile, 'utf8').trim(),
  };
}

function readDevices(text: string): PlantDevice[] {
  let devices: unknown;
  try {
    devices = JSON.parse(text);
  } catch (cause) {
    throw new Fault('SETTING', '--devices needs a JSON list of {"id","kind","name"}.', { cause });
  }
  if (Array.isArray(devices)) return devices as PlantDevice[];
  throw new Fault('SETTING', '--devices needs a JSON list of {"id","kind","name"}.');
}

function numberIn(option: string, text: string | undefined): number | undefined {
  if (text === undefined) return undefined;
  const value = Number(text);
  if (Number.isFinite(value) && value > 0) return value;
  throw new Fault('SETTING', `${option} needs a number above 0.`);
}

main().catch((cause: unknown) => {
  process.stderr.write(`${cause instanceof Error ? cause.message : String(cause)}\n`);
  process.exitCode = 2;
});
