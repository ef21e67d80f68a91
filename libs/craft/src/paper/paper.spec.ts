import type { Stock } from '../plant.js';
import { caliperUm, grainAxis, grainOfPiece, paperKg, paperPrice } from './paper.js';

const stock = (over: Partial<Stock>): Stock => ({
  id: 's',
  family: 'f',
  name: 'n',
  class: 'coated',
  gsm: 90,
  caliperUm: 100,
  sheetWidthMm: 1000,
  sheetHeightMm: 700,
  grain: 'long',
  price: 98.5,
  priceBasis: 'per100kg',
  onHand: 0,
  location: '',
  ...over,
});

describe('paper', () => {
  // Source: handbook t01-mass (grammage as in ISO 536).
  it('weighs 1000 sheets of 900 × 640 mm at 115 g/m² as 66.24 kg', () => {
    expect(paperKg(900, 640, 115, 1000)).toBeCloseTo(66.24, 4);
    expect(paperKg(880, 630, 90, 12345)).toBeCloseTo(615.9661, 4);
  });

  // Source: handbook t01-caliper (ISO 534).
  it('is as thick as grammage times bulk', () => {
    expect(caliperUm(115, 0.82)).toBeCloseTo(94.3, 6);
  });

  // Source: handbook t01-price: 25000 sheets 1000 × 700, 90 g/m² at 98.50 per 100 kg = 1551.38.
  it('is priced by mass or by the thousand', () => {
    expect(paperPrice(stock({}), 25000)).toBeCloseTo(1551.375, 6);
    expect(paperPrice(stock({ price: 78, priceBasis: 'per1000' }), 436)).toBeCloseTo(34.008, 6);
  });

  // Source: handbook t01-grain: 640 × 450 with pages 2 × 1 upright needs short grain, 460 × 640 with 2 × 2 long grain.
  it('has its fibres along the longer side when it is long grain', () => {
    expect(grainAxis(640, 450, 'long')).toBe('x');
    expect(grainAxis(640, 450, 'short')).toBe('y');
    expect(grainAxis(460, 640, 'long')).toBe('y');
  });

  // Practice, "grain rule holds for the block, not the sheet" (common practice, no source).
  it('changes the name of its grain when it is cut across', () => {
    expect(grainOfPiece(450, 640, grainAxis(900, 640, 'short'))).toBe('long');
  });
});
