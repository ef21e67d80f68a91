import type { Use } from '../../state/ticket.js';
import type { LinkAmount } from '../process-type.js';

/** What a use says of its resource: planned, and good and waste once something was used. */
export function usedAmount(use: Use): LinkAmount {
  if (use.actual <= 0) return { planned: use.planned };
  return { planned: use.planned, good: use.actual - use.waste, waste: use.waste };
}
