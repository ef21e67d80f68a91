import { parentPort, workerData } from 'node:worker_threads';
import type { Plant, PressStates } from '#libs/craft';
import { type Reading, readDocument, type ToRead } from '#libs/flow';
import type { XmlLimits } from '#libs/jdf';
import { checkPartReferences } from '#libs/wire';

/** What a reading worker is asked, and with the same number answers. */
export interface ReadRequest {
  readonly number: number;
  readonly document: ToRead;
  readonly presses: PressStates;
}

/** What a reading worker says: that it has begun with a document, then what it read. */
export type ReadAnswer =
  | { readonly number: number; readonly begun: true }
  | { readonly number: number; readonly reading: Reading };

/** What a reading worker knows from its start. */
export interface ReadWorkerData {
  readonly plant: Plant;
  readonly limits: Partial<XmlLimits>;
}

const { plant, limits } = workerData as ReadWorkerData;

parentPort?.on('message', ({ number, document, presses }: ReadRequest) => {
  parentPort?.postMessage({ number, begun: true } satisfies ReadAnswer);
  // A fault ends the worker; the pool sees it go, answers for it and starts another.
  parentPort?.postMessage({ number, reading: read(document, presses) } satisfies ReadAnswer);
});

/** Where a ticket came in a package, what it refers to there must be there. */
function read({ bytes, part, beside }: ToRead, presses: PressStates): Reading {
  if (beside === null) return readDocument(bytes, plant, presses, undefined, limits);
  const from = { name: part ?? '', contentId: null };
  return readDocument(
    bytes,
    plant,
    presses,
    (document) => checkPartReferences(beside, from, document).problems,
    limits,
  );
}
