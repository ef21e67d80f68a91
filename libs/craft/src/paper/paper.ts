import type { Grain, Rotation } from '../plan.js';
import type { Stock } from '../plant.js';

/** Mass of a pile, kg: length × width × grammage × sheets (grammage as in ISO 536). */
export function paperKg(widthMm: number, heightMm: number, gsm: number, sheets: number): number {
  return (widthMm * heightMm * gsm * sheets) / 1e9;
}

/** Caliper (thickness of one sheet as in ISO 534), µm: grammage × bulk in cm³/g. */
export function caliperUm(gsm: number, bulkCm3PerG: number): number {
  return gsm * bulkCm3PerG;
}

/** Price of `sheets` of a stock in the plant's currency, not rounded. */
export function paperPrice(stock: Stock, sheets: number): number {
  if (stock.priceBasis === 'per1000') return (stock.price * sheets) / 1000;
  return (stock.price * paperKg(stock.sheetWidthMm, stock.sheetHeightMm, stock.gsm, sheets)) / 100;
}

/** Axis of a sheet along which its fibres lie: long grain runs along the longer side. */
export function grainAxis(widthMm: number, heightMm: number, grain: Grain): 'x' | 'y' {
  const longAxis = widthMm >= heightMm ? 'x' : 'y';
  if (grain === 'long') return longAxis;
  return longAxis === 'x' ? 'y' : 'x';
}

/** Grain of a piece of that paper, named after the piece's own sides: cutting can turn long grain into short. */
export function grainOfPiece(widthMm: number, heightMm: number, axis: 'x' | 'y'): Grain {
  return grainAxis(widthMm, heightMm, 'long') === axis ? 'long' : 'short';
}

/** Axis of the sheet along which the spine of a page lies whose head is turned by `rotation`. */
export function spineAxis(rotation: Rotation): 'x' | 'y' {
  return rotation === 0 || rotation === 180 ? 'y' : 'x';
}
