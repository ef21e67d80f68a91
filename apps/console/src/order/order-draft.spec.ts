import {
  emptyDraft,
  type FieldName,
  fieldOf,
  mediaTypeOf,
  namedSizes,
  orderOf,
  packageType,
} from './order-draft.js';

const draftWith = (text: Partial<Record<FieldName, string>>) => {
  const draft = emptyDraft();
  return { ...draft, text: { ...draft.text, ...text } };
};

// Field names and kinds are those of the JSON order.
describe('order draft', () => {
  it('becomes an order that leaves out what was left empty', () => {
    const order = orderOf(draftWith({ jobId: 'D1-01', quantity: '250', bleedMm: ' ' }));
    expect(order).toEqual({
      jobId: 'D1-01',
      quantity: 250,
      binding: 'SaddleStitch',
      inksFront: ['Black', 'Cyan', 'Magenta', 'Yellow'],
      inksBack: ['Black', 'Cyan', 'Magenta', 'Yellow'],
    });
  });

  it('sends what is no number as it was typed, so that the server names it', () => {
    expect(orderOf(draftWith({ pages: 'sixteen', trimWidthMm: '148,5' }))).toMatchObject({
      pages: 'sixteen',
      trimWidthMm: 148.5,
    });
  });

  it('adds inks by name behind the process inks', () => {
    const draft = draftWith({ inksFront: 'Festival Green, Festival Gold' });
    const order = orderOf({ ...draft, ticked: { ...draft.ticked, inksFront: ['Black'], inksBack: [] } });
    expect(order.inksFront).toEqual(['Black', 'Festival Green', 'Festival Gold']);
    expect(order.inksBack).toEqual([]);
  });

  it('gives the due time in UTC as RFC 3339 wants it', () => {
    expect(orderOf(draftWith({ due: '2026-03-12T16:30Z' })).due).toBe('2026-03-12T16:30:00.000Z');
  });

  it('finds the field that a JSON Pointer lies in', () => {
    expect(fieldOf({ path: '/pages' })).toBe('pages');
    expect(fieldOf({ path: '/inksFront/4' })).toBe('inksFront');
    expect(fieldOf({ path: '/colour' })).toBeNull();
    expect(fieldOf({ path: null })).toBeNull();
  });

  it('knows the A sizes of ISO 216: each is the larger one halved, rounded down, from 841 by 1189 mm', () => {
    let size: readonly [number, number] = [841, 1189];
    for (let n = 1; n <= 6; n += 1) {
      size = [Math.floor(size[1] / 2), size[0]];
      const named = namedSizes[`A${n}`];
      if (named !== undefined) expect([n, ...named]).toEqual([n, ...size]);
    }
  });

  it('names files by the media types of the standard', () => {
    expect(mediaTypeOf('Ticket.JDF')).toBe('application/vnd.cip4-jdf+xml');
    expect(mediaTypeOf('order.json')).toBe('application/json');
    expect(mediaTypeOf('unknown')).toBe('application/octet-stream');
  });

  // RFC 2046 section 5.1.1: a delimiter line is two hyphens and the boundary.
  it('finds the boundary of a multipart package in its header or its first line', () => {
    expect(packageType('--cut here\r\nContent-Type: x\r\n')).toBe('multipart/related; boundary="cut here"');
    const header =
      'MIME-Version: 1.0\r\nContent-Type: multipart/related;\r\n boundary=abc; type=x\r\n\r\n--abc\r\n';
    expect(packageType(header)).toBe('multipart/related; boundary="abc"');
    expect(packageType('<JDF/>')).toBeNull();
  });
});
