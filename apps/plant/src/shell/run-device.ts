import { type PlantDevice, type PlantOptions, runPlant } from './run-plant.js';

export interface DeviceOptions extends PlantDevice, Omit<PlantOptions, 'devices'> {}

export interface RunningDevice {
  readonly url: string;
  stop(): Promise<void>;
}

/** One simulated device with its own HTTP server on this machine; see runPlant. */
export async function runDevice(options: DeviceOptions): Promise<RunningDevice> {
  const { id, kind, name, port, faults, ...plant } = options;
  const running = await runPlant({ ...plant, devices: [{ id, kind, name, port, faults }] });
  return { url: running.urls[id]!, stop: () => running.stop() };
}
