import type { Order, Plan, PressState } from '#libs/craft';
import type { Problem } from '#libs/kernel';
import type { DocumentKind } from '../state/ticket.js';

/** What was found in a document: everything an acceptance needs, or why there is none. */
export interface Reading {
  readonly kind: DocumentKind;
  /** As far as the document could be read: a rejected one is listed under its name too. */
  readonly jobId: string;
  readonly name: string;
  readonly order: Order | null;
  readonly plan: Plan | null;
  /** What hangs in the presses once this job is printed. */
  readonly pressStates: readonly PressState[];
  readonly problems: readonly Problem[];
}

/** The parts of the package that a ticket came in, by which its addresses find them. */
export interface PartsBeside {
  readonly container: 'multipart' | 'zip';
  readonly parts: readonly { readonly name: string; readonly contentId: string | null }[];
}

/** A document as it is read: with its name and what lies beside it where it came in a package. */
export interface ToRead {
  readonly bytes: Uint8Array;
  readonly part: string | null;
  readonly beside: PartsBeside | null;
}
