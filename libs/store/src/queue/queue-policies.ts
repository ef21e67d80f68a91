import type { WorkKind } from '#libs/flow';

/** How one kind of work is handed out. All waits are real time: what they bridge is a machine's hiccup, not the plant's. */
export interface QueuePolicy {
  /** Handled at the same time, in one server. */
  readonly concurrency: number;
  /** Times a handler may throw before the hint is dropped. The sweep brings back what is still open. */
  readonly attempts: number;
  /** Before the second attempt; doubled before each further one. */
  readonly backoffMs: number;
  /** A worker that has not spoken for so long is taken for dead, and its work is handed out again. */
  readonly lockMs: number;
  /** How often dead workers are looked for. */
  readonly stalledCheckMs: number;
  /** Times that work may outlive its worker before it is taken for the killer. */
  readonly stalledLimit: number;
}

export type QueuePolicies = Readonly<Record<WorkKind, QueuePolicy>>;

/**
 * A queue for each kind, so that a hold or an abort never waits behind deliveries to a slow device. Work carries
 * nothing and checks everything when it is done, so to hand it out twice is harmless and the locks can be short.
 */
export const queuePolicies: QueuePolicies = {
  dispatch: {
    concurrency: 8,
    attempts: 3,
    backoffMs: 500,
    lockMs: 6000,
    stalledCheckMs: 3000,
    stalledLimit: 5,
  },
  instruct: {
    concurrency: 4,
    attempts: 3,
    backoffMs: 250,
    lockMs: 6000,
    stalledCheckMs: 3000,
    stalledLimit: 5,
  },
};

export const workKinds = Object.keys(queuePolicies) as readonly WorkKind[];
