import { roundTo } from '#libs/kernel';
import { paperKg } from '../paper/paper.js';
import type { PlanLift } from '../plan.js';
import type { GuillotineDefinition, Stock } from '../plant.js';

/** From this grammage a pile is as stiff as board (common practice, no source). */
const BOARD_FROM_GSM = 200;

/** Height of a lift, mm: what is worked with for the class of stock, never above the clamp opening. */
export function liftHeightMm(guillotine: GuillotineDefinition, stock: Stock): number {
  const board = stock.gsm >= BOARD_FROM_GSM ? guillotine.workingLiftMm.board : undefined;
  const height = board ?? guillotine.workingLiftMm[stock.class] ?? guillotine.maxClampMm;
  return Math.min(height, guillotine.maxClampMm);
}

/** Lifts of a pile: sheets of one = height ÷ caliper rounded down, lifts rounded up (handbook t07-lift). */
export function lifts(
  heightMm: number,
  caliperUm: number,
  sheets: number,
): { count: number; sheets: number } {
  const most = Math.max(1, Math.floor(roundTo((heightMm * 1000) / caliperUm, 9)));
  return { count: Math.ceil(sheets / most), sheets: Math.min(most, sheets) };
}

export function planLift(
  guillotine: GuillotineDefinition,
  stock: Stock,
  sheet: string,
  widthMm: number,
  heightMm: number,
  sheets: number,
): PlanLift {
  const lift = lifts(liftHeightMm(guillotine, stock), stock.caliperUm, sheets);
  return {
    sheet,
    ...lift,
    heightMm: roundTo((lift.sheets * stock.caliperUm) / 1000, 1),
    kg: roundTo(paperKg(widthMm, heightMm, stock.gsm, lift.sheets), 2),
  };
}

/** What one person carries at once: hand lifts of a lift, by the plant's own limit. */
export function handLifts(guillotine: GuillotineDefinition, kg: number): number {
  return Math.max(1, Math.ceil(kg / guillotine.handLiftMaxKg));
}
