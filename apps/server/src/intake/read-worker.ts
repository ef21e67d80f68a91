import { parentPort, workerData } from 'node:worker_threads';
import type { Plant } from '#libs/craft';
import { type PressStates, readDocument } from '#libs/flow';

/** What a reading worker is asked, and with the same number answers. */
export interface ReadRequest {
  readonly number: number;
  readonly bytes: Uint8Array;
  readonly presses: PressStates;
}

const plant = workerData as Plant;

parentPort?.on('message', ({ number, bytes, presses }: ReadRequest) => {
  // A fault ends the worker; the pool sees it go, answers for it and starts another.
  parentPort?.postMessage({ number, reading: readDocument(bytes, plant, presses) });
});
