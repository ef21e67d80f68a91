import type { Plant } from '#libs/craft';
import { spawn, writeXml } from '#libs/jdf';
import { done, error, type Instant, type Result, refuse } from '#libs/kernel';
import type { StoredDocument } from '../../ports.js';
import type { TicketFile } from '../../state/ticket.js';
import { shortText } from '../build/values.js';
import type { Registry } from '../registry.js';
import { composeTicket } from './compose-ticket.js';

export interface ProcessTicketOptions {
  readonly now: Instant;
  /** Where the device sends its messages and the finished ticket. */
  readonly jmfUrl: string;
  /** Who sends it, for the audits. */
  readonly senderId: string;
  /** What is known of the machines, such as sizes of plates. */
  readonly plant?: Plant;
}

/**
 * What a device is sent for one step: the step's node spawned from the ticket, with a copy of every resource that it uses,
 * to be changed where the step makes it. Inputs state what is really there. The entry's id is the SpawnID, so that a device
 * can tell a ticket sent again from the one it has. Errors: PLAN_MISSING, STEP_UNKNOWN, PLAN_IMPOSSIBLE, and those of
 * spawning where the document is itself out elsewhere.
 */
export function writeProcessTicket(
  registry: Registry,
  file: TicketFile,
  original: StoredDocument | null,
  stepId: string,
  options: ProcessTicketOptions,
): Result<string> {
  const { now, jmfUrl, senderId, plant } = options;
  const agent = { name: shortText(senderId) };
  const forDevice = { stepId, targetRoute: jmfUrl };
  const composed = composeTicket(registry, file, original, { now, plant, agent, forDevice });
  if (!composed.ok) return composed;
  const [node] = composed.value.nodes;
  if (node === undefined) {
    return refuse(error('STEP_UNKNOWN', `Ticket ${file.ticket.id} has no step "${stepId}".`));
  }
  const spawnId = file.entries.findLast((row) => row.stepId === stepId)?.id ?? node.id;
  const out = spawn(composed.value.doc, { nodeId: node.id }, { spawnId, at: now, agent });
  return out.ok ? done(writeXml(out.value.child), composed.problems) : out;
}
