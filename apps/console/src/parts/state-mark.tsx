import { words } from '../words/index.js';

/**
 * Every state has a shape of its own: a small sheet, empty, hatched, half or wholly filled, split or crossed. The word
 * stands beside it, so that neither colour nor shape must be learnt.
 */
const shapes: Readonly<Record<string, () => preact.JSX.Element>> = {
  empty: () => <rect class="mark-line" x="2" y="4" width="16" height="12" />,
  hatched: () => (
    <>
      <rect class="mark-line" x="2" y="4" width="16" height="12" />
      <path class="mark-line" d="M5 15 L11 5 M10 15 L16 5" />
    </>
  ),
  half: () => (
    <>
      <path class="mark-spot" d="M2 16 L18 4 V16 Z" />
      <rect class="mark-line" x="2" y="4" width="16" height="12" />
    </>
  ),
  spot: () => <path class="mark-spot" d="M1 3 H14 L19 10 L14 17 H1 Z" />,
  full: () => <rect class="mark-ink" x="2" y="4" width="16" height="12" />,
  split: () => <path class="mark-ink" d="M2 3 H8 V17 H2 Z M12 3 H18 V17 H12 Z" />,
  crossed: () => (
    <>
      <rect class="mark-line" x="2" y="4" width="16" height="12" />
      <path class="mark-line" d="M2 4 L18 16 M18 4 L2 16" />
    </>
  ),
  dotted: () => <rect class="mark-line mark-dotted" x="2" y="4" width="16" height="12" />,
};

const SHAPE_OF: Readonly<Record<string, string>> = {
  Waiting: 'hatched',
  Ready: 'empty',
  Idle: 'empty',
  Setup: 'half',
  InProgress: 'spot',
  Running: 'spot',
  Cleanup: 'half',
  Stopped: 'split',
  Suspended: 'split',
  Held: 'split',
  Completed: 'full',
  Aborted: 'crossed',
  Rejected: 'crossed',
  Down: 'crossed',
  Unknown: 'dotted',
  Silent: 'dotted',
};

/** A status as shape and word. `of` says whose word: a device that runs is no step. */
export function StateMark({ status, of }: { status: string; of: 'step' | 'device' }) {
  const Shape = shapes[SHAPE_OF[status] ?? 'dotted']!;
  const word = words[of][status] ?? status;
  return (
    <span class="state" data-state={status}>
      <svg class="state-shape" viewBox="0 0 20 20" aria-hidden="true">
        <Shape />
      </svg>
      <span class="state-word">{word}</span>
    </span>
  );
}
