import { boxOf, fitText, placeText, slipPath } from './strip-shapes.js';

const window = { fromMs: 0, toMs: 1000 };

describe('strip shapes', () => {
  it('clip a stretch of time to the drawing', () => {
    expect(boxOf(window, 100, -500, 500)).toEqual({ x: 0, width: 50 });
    expect(boxOf(window, 100, 900, 2000)).toEqual({ x: 90, width: 10 });
    expect(boxOf(window, 100, -500, -1)).toBeNull();
    expect(boxOf(window, 100, 1001, 2000)).toBeNull();
  });

  it('keep the shortest step wide enough to be seen', () => {
    expect(boxOf(window, 100, 500, 501)).toEqual({ x: 50, width: 3 });
  });

  it('cut a notch into both edges of the slip at the due time, and none that lies outside', () => {
    expect(slipPath(0, 100, 40, 60, 5)).toBe('M0 0 H55 L60 5 L65 0 H100 V40 H65 L60 35 L55 40 H0 Z');
    expect(slipPath(0, 100, 40, 140, 5)).toBe('M0 0 H100 V40 H0 Z');
  });

  it('cut a text that does not fit, and drop it where too little would be left', () => {
    expect(fitText('Stitch', 60, 10)).toBe('Stitch');
    expect(fitText('waits for plates', 100, 10)).toBe('waits for…');
    expect(fitText('Stitch', 40, 10)).toBe('');
  });

  it('move a line that would run out of the drawing to end at its edge', () => {
    expect(placeText('held', 10, 100, 10)).toEqual({ x: 10, anchor: 'start', text: 'held' });
    expect(placeText('held', 80, 100, 10)).toEqual({ x: 100, anchor: 'end', text: 'held' });
    expect(placeText('held', -50, 100, 10).x).toBe(0);
  });
});
