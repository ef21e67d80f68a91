import { type ChildProcess, fork } from 'node:child_process';
import { once } from 'node:events';
import { join } from 'node:path';
import type { Plant } from '#libs/craft';
import type { Log } from '#libs/flow';
import { wallClock } from '#libs/kernel';
import { projectPath } from '../plant-file.js';

/** Kinds that exist as simulated machines. */
const SIMULATED = new Set(['platesetter', 'press', 'guillotine', 'folder', 'stitcher', 'binder']);
const STOP_MS = 5000;

/**
 * Runs the simulated plant as a process of its own that knows only the wire. It is started again if it dies, keeps its
 * state in the data directory, and leaves by itself when this process is gone.
 */
export function startDemoPlant(options: {
  readonly hub: string;
  readonly plant: Plant;
  readonly dataDir: string;
  readonly log: Log;
}): () => Promise<void> {
  const { hub, plant, dataDir, log } = options;
  const devices = plant.devices
    .filter((device) => SIMULATED.has(device.kind))
    .map(({ id, kind, name }) => ({ id, kind, name }));
  const args = [
    '--hub',
    hub,
    '--devices',
    JSON.stringify(devices),
    '--state',
    join(dataDir, 'devices'),
    '--seed',
    '7',
  ];
  let stopping = false;
  let child: ChildProcess;
  const start = (): void => {
    child = fork(projectPath('dist', 'apps', 'plant', 'src', 'main.js'), args, {
      stdio: ['ignore', 'ignore', 'inherit', 'ipc'],
    });
    child.on('exit', (code) => {
      if (stopping) return;
      log('warn', 'the simulated plant ended and is started again', { code });
      wallClock.setTimeout(() => stopping || start(), 1000);
    });
  };
  start();
  return async () => {
    stopping = true;
    if (child.exitCode !== null || child.signalCode !== null) return;
    const gone = once(child, 'exit');
    child.kill('SIGTERM');
    const cancel = wallClock.setTimeout(() => child.kill('SIGKILL'), STOP_MS);
    await gone;
    cancel();
  };
}
