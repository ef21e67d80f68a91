import fc from 'fast-check';
import { foldCatalogue, foldScheme, sectionScheme } from './catalogue.js';
import { foldedGrid, type GridFold } from './fold-pile.js';
import { type CountFrom, pagesByFolding } from './number-pages.js';
import { creepShiftMm, nestedSections, sectionSizes } from './sections.js';

/** Pages of one row of a form, counted from 0 as the standard's samples do. */
function row(code: string, side: 'front' | 'back', index: number): string {
  const scheme = foldScheme(code);
  if (scheme === null) throw new Error(`no scheme ${code}`);
  const places = pagesByFolding(scheme.columns, scheme.rows, scheme.folds, scheme.countFrom) ?? [];
  return places
    .filter((p) => p.side === side && p.row === index)
    .toSorted((a, b) => a.column - b.column)
    .map((p) => `${p.page - 1}`)
    .join(' ');
}

function heads(code: string, index: number): number[] {
  const scheme = foldScheme(code);
  if (scheme === null) throw new Error(`no scheme ${code}`);
  const places = pagesByFolding(scheme.columns, scheme.rows, scheme.folds, scheme.countFrom) ?? [];
  return [...new Set(places.filter((p) => p.row === index).map((p) => p.rotation))];
}

describe('pages by folding', () => {
  // Source: the open standard's sample strippingComplexExample.jdf, BinderySignature B2x4 and B2x2 (FrontPages, BackPages,
  // Orientation; rows from the bottom, pages from 0).
  it("folds the 16-page section to the page lists of the standard's sample", () => {
    expect([row('F16-6', 'front', 0), row('F16-6', 'back', 0)]).toEqual(['15 0 3 12', '14 1 2 13']);
    expect([row('F16-6', 'front', 1), row('F16-6', 'back', 1)]).toEqual(['8 7 4 11', '9 6 5 10']);
    expect([heads('F16-6', 0), heads('F16-6', 1)]).toEqual([[0], [180]]);
  });

  it("folds the 8-page section to the page lists of the standard's sample", () => {
    expect([row('F8-7', 'front', 0), row('F8-7', 'back', 0)]).toEqual(['7 0', '6 1']);
    expect([row('F8-7', 'front', 1), row('F8-7', 'back', 1)]).toEqual(['4 3', '5 2']);
    expect([heads('F8-7', 0), heads('F8-7', 1)]).toEqual([[0], [180]]);
  });

  // Printer spreads of one nested section: each pair sums to N + 1 (common practice, handbook section 2).
  it('prints the outer pages of a 4-page section on one side', () => {
    expect([row('F4-1', 'front', 0), row('F4-1', 'back', 0)]).toEqual(['3 0', '2 1']);
  });

  it('puts every page of a scheme in exactly one place, its leaf partner behind it', () => {
    for (const scheme of foldCatalogue) {
      const places = pagesByFolding(scheme.columns, scheme.rows, scheme.folds, scheme.countFrom) ?? [];
      const pages = 2 * scheme.columns * scheme.rows;
      expect(places.map((p) => p.page).toSorted((a, b) => a - b)).toEqual(
        Array.from({ length: pages }, (_, i) => i + 1),
      );
      for (const place of places) {
        const partner = place.page % 2 === 1 ? place.page + 1 : place.page - 1;
        expect(places.find((p) => p.page === partner)).toMatchObject({
          column: place.column,
          row: place.row,
          side: place.side === 'front' ? 'back' : 'front',
        });
      }
    }
  });

  it('refuses a fold list that leaves more than one cell', () => {
    expect(pagesByFolding(4, 2, [{ moves: 'left', lines: 2, direction: 'over' }], 'top')).toBeNull();
    expect(pagesByFolding(2, 1, [{ moves: 'left', lines: 2, direction: 'over' }], 'top')).toBeNull();
  });

  it('keeps leaf partners back to back whatever the folds', () => {
    const fold = fc.record({
      moves: fc.constantFrom<GridFold['moves']>('left', 'right', 'lower', 'upper'),
      direction: fc.constantFrom<GridFold['direction']>('over', 'under'),
    });
    fc.assert(
      fc.property(
        fc.array(fold, { minLength: 1, maxLength: 5 }),
        fc.constantFrom<CountFrom>('top', 'bottom'),
        (steps, from) => {
          const across = steps.filter((s) => s.moves === 'left' || s.moves === 'right').length;
          let [columns, rows] = [2 ** across, 2 ** (steps.length - across)];
          const grid = { columns, rows };
          const folds = steps.map((step): GridFold => {
            const sideways = step.moves === 'left' || step.moves === 'right';
            const lines = (sideways ? columns : rows) / 2;
            if (sideways) columns = lines;
            else rows = lines;
            return { ...step, lines };
          });
          expect(foldedGrid(grid.columns, grid.rows, folds)).toEqual({ columns: 1, rows: 1 });
          const places = pagesByFolding(grid.columns, grid.rows, folds, from) ?? [];
          expect(new Set(places.map((p) => p.page)).size).toBe(2 * grid.columns * grid.rows);
          for (const p of places.filter((q) => q.side === 'front')) {
            const back = places.find((q) => q.side === 'back' && q.column === p.column && q.row === p.row);
            expect(Math.ceil((back?.page ?? 0) / 2)).toBe(Math.ceil(p.page / 2));
            expect((p.rotation + (back?.rotation ?? 0)) % 360).toBe(0);
          }
        },
      ),
    );
  });
});

describe('sections', () => {
  // Source: handbook t02-signatures (greedy division, common practice).
  it.each([
    [20, [16, 4]],
    [28, [16, 8, 4]],
    [32, [16, 16]],
    [44, [16, 16, 8, 4]],
    [64, [16, 16, 16, 16]],
  ])('divides %i pages into the fewest sections', (pages, sizes) => {
    expect(sectionSizes(pages, [16, 8, 4])).toEqual(sizes);
  });

  it('refuses a page count that no sections add up to', () => {
    expect(sectionSizes(18, [16, 8, 4])).toBeNull();
    expect(sectionSizes(0, [16, 8, 4])).toBeNull();
  });

  it('nests the smaller section inside the larger one', () => {
    expect(nestedSections([16, 8])).toEqual([
      { pages: [1, 2, 3, 4, 5, 6, 7, 8, 17, 18, 19, 20, 21, 22, 23, 24] },
      { pages: [9, 10, 11, 12, 13, 14, 15, 16] },
    ]);
  });

  // Source: handbook t02-creep, computed from the exact stack: 16 pages 115 g/m² bulk 0.9 stand out 0.3105 mm in all.
  it('moves the innermost pages of a nested book by all calipers but one', () => {
    expect(creepShiftMm(8, 16, 103.5)).toBeCloseTo(0.3105, 6);
    expect(creepShiftMm(9, 16, 103.5)).toBeCloseTo(0.3105, 6);
    expect(creepShiftMm(16, 16, 103.5)).toBe(0);
    expect(creepShiftMm(24, 48, 104)).toBeCloseTo(1.144, 6);
  });

  it('has a scheme for every section that is collected', () => {
    expect([4, 8, 16].map((pages) => sectionScheme(pages)?.code)).toEqual(['F4-1', 'F8-7', 'F16-6']);
    expect(sectionScheme(12)).toBeNull();
  });
});
