import type { PlanUnit, Side } from '../plan.js';
import type { PressDefinition } from '../plant.js';

/** What a side asks of a press, and the units that could take it. */
interface SideUnits {
  side: Side;
  inks: readonly string[];
  first: number;
  last: number;
}

function assign(press: PressDefinition, want: SideUnits): PlanUnit[] | string {
  const taken = new Set<number>();
  const units = Array.from({ length: want.last - want.first + 1 }, (_, i) => want.first + i);
  const found: PlanUnit[] = [];
  for (const ink of want.inks) {
    const holds = (unit: number, held: string | null): boolean =>
      !taken.has(unit) && (press.unitInks[unit - 1] ?? null) === held;
    const unit = units.find((u) => holds(u, ink)) ?? units.find((u) => holds(u, null));
    if (unit === undefined) {
      return want.inks.length > units.length
        ? `${press.name} has ${units.length} units for that side, ${want.inks.length} inks are ordered`
        : `${press.name} has no unit free for ${ink} on the ${want.side}`;
    }
    taken.add(unit);
    found.push({ unit, side: want.side, ink });
  }
  return found.toSorted((a, b) => a.unit - b.unit);
}

/**
 * Which ink hangs in which unit for one pass: inks that stay in a unit first, others in units without an ink of their
 * own. `both`: front and back in the same pass, the front in the first `unitsFront` units. A text says why it cannot be.
 */
export function pressUnits(
  press: PressDefinition,
  inks: { front: readonly string[]; back: readonly string[] },
): PlanUnit[] | string {
  const both = inks.front.length > 0 && inks.back.length > 0;
  if (both && press.bothSides === 'none') return `${press.name} prints one side in a pass`;
  const lastFront = press.bothSides === 'none' ? press.units : press.unitsFront;
  const front = assign(press, { side: 'front', inks: inks.front, first: 1, last: lastFront });
  if (typeof front === 'string') return front;
  const firstBack = press.bothSides === 'none' ? 1 : press.unitsFront + 1;
  const back = assign(press, { side: 'back', inks: inks.back, first: firstBack, last: press.units });
  return typeof back === 'string' ? back : [...front, ...back];
}
