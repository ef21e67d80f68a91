import { pageOf, placeOf } from './paging.js';

const rows = [3, 2, 1].map((at) => ({ at, id: `id ${at}` }));

describe('a page', () => {
  it('points to its last row when there is more, and else to nothing', () => {
    const page = pageOf(rows, 2);
    expect(page.items).toEqual(rows.slice(0, 2));
    expect(placeOf(page.next!)).toEqual({ at: 2, id: 'id 2' });
    expect(pageOf(rows, 3).next).toBeNull();
    expect(pageOf([], 3)).toEqual({ items: [], next: null });
  });

  it('begins at the start without a cursor, and refuses one that is made up', () => {
    expect(placeOf(undefined)).toBeNull();
    expect(placeOf('')).toBeNull();
    expect(() => placeOf('eA')).toThrow('the cursor is none that was given out');
  });
});
