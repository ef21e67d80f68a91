import type { Instant } from '#libs/kernel';
import type { SaidPhase } from './progress.js';
import type { Entry, Notice } from './state.js';

/** What the machine tells whoever speaks for it, at the instant it happens. */
export interface Voice {
  phase(entry: Entry, phase: SaidPhase, at: Instant, occasion: 'begins' | 'goes on' | 'ends'): void;
  ended(entry: Entry, status: 'Completed' | 'Aborted', last: SaidPhase | null, at: Instant): void;
  /** `open` is the phase that goes on; null between two. */
  used(entry: Entry, open: SaidPhase | null, at: Instant): void;
  notice(entry: Entry | null, notice: Notice, at: Instant): void;
  idle(at: Instant, occasion: 'begins' | 'goes on'): void;
  returns(entry: Entry, at: Instant): void;
}
