import { roundTo } from '#libs/kernel';

export interface Operation {
  name: string;
  seconds: number;
  hourRate: number;
}

export interface Material {
  name: string;
  price: number;
}

export interface PriceRules {
  materialHandlingPct: number;
  overheadPct: number;
  /** Share of the price, not of the cost. */
  marginPct: number;
  minimumOrder: number;
}

export interface Price {
  amount: number;
  lines: { name: string; amount: number }[];
}

/** Hour rate = yearly cost ÷ (paid hours × share of them that is sold). Source: handbook t08. */
export function hourRate(yearlyCost: number, paidHours: number, utilisation: number): number {
  return yearlyCost / (paidHours * utilisation);
}

/**
 * Price = (Σ time × rate + material × (1 + handling)) × (1 + overhead) ÷ (1 − margin), never below the minimum order.
 * The lines add up to the amount to the cent. Source: handbook t08 (job cost).
 */
export function priceJob(
  operations: readonly Operation[],
  materials: readonly Material[],
  rules: PriceRules,
): Price {
  const lines: { name: string; amount: number }[] = [];
  const add = (name: string, amount: number): number => {
    lines.push({ name, amount: roundTo(amount, 2) });
    return amount;
  };
  const work = operations.reduce((sum, o) => sum + add(o.name, (o.seconds / 3600) * o.hourRate), 0);
  const material = materials.reduce((sum, m) => sum + add(m.name, m.price), 0);
  const handling = add('handling of material', (material * rules.materialHandlingPct) / 100);
  const direct = work + material + handling;
  const overhead = add('overhead', (direct * rules.overheadPct) / 100);
  const cost = direct + overhead;
  const margin = add('margin', cost / (1 - rules.marginPct / 100) - cost);
  const amount = roundTo(Math.max(cost + margin, rules.minimumOrder), 2);
  if (amount > roundTo(cost + margin, 2)) add('up to the minimum order', amount - cost - margin);
  const difference = roundTo(amount - lines.reduce((sum, l) => sum + l.amount, 0), 2);
  if (difference !== 0) add('rounding', difference);
  return { amount, lines };
}
