import { readProduct } from '#libs/jdf';
import { smallPlant } from '../../../../test/kit/small-plant.js';
import { parsedXml, valueIn } from '../../../../test/kit/value-in.js';
import { orderFromProduct } from './order-from-product.js';

/** A product ticket with these intents; sizes of the standard's sample lifecycle/ProductIntentNode (612 × 792 pt). */
function ticket(intents: Record<string, string>, node = 'JobID="J1" DescriptiveName="Brochure"'): string {
  const pool = Object.entries(intents).map(
    ([name, content]) => `<${name} ID="${name}" Class="Intent" Status="Available">${content}</${name}>`,
  );
  const links = Object.keys(intents).map((name) => `<${name}Link rRef="${name}" Usage="Input"/>`);
  return `<JDF xmlns="http://www.CIP4.org/JDFSchema_1_1" ID="P" ${node} Type="Product" Status="Waiting" Version="1.9">
<ResourcePool><Component ID="C" Class="Quantity" ComponentType="Block" Status="Unavailable" Amount="10000"/>${pool.join('\n')}</ResourcePool>
<ResourceLinkPool><ComponentLink rRef="C" Usage="Output"/>${links.join('')}</ResourceLinkPool></JDF>`;
}

const SIZE = '<Dimensions DataType="XYPairSpan" Preferred="612 792"/>';
const pages = (count: number) => `<Pages DataType="IntegerSpan" Preferred="${count}"/>`;
const weight = (gsm: number) => `<Weight DataType="NumberSpan" Preferred="${gsm}"/>`;
const coating = (name: string) => `<FrontCoatings DataType="EnumerationSpan" Preferred="${name}"/>`;

function read(text: string) {
  return orderFromProduct(valueIn(readProduct(parsedXml(text))), smallPlant);
}

function order(text: string) {
  return valueIn(read(text));
}

const codes = (text: string) => read(text).problems.map(({ code }) => code);

describe('the order that a product ticket means', () => {
  it('is refused where it says more than any order may, at the place that says it', () => {
    expect(read(ticket({ LayoutIntent: SIZE + pages(2_000_000_000) })).problems).toContainEqual(
      expect.objectContaining({
        code: 'ORDER_FIELD',
        path: '/JDF/ResourcePool/LayoutIntent/Pages',
        hint: 'Correct what the ticket says of pages.',
      }),
    );
  });

  it('takes the flat size for the page with more than four pages, and all that is open from the plant', () => {
    const text = ticket({ LayoutIntent: SIZE + pages(16) });
    expect(order(text)).toEqual({
      jobId: 'J1',
      name: 'Brochure',
      quantity: 10000,
      trimWidthMm: 215.9,
      trimHeightMm: 279.4,
      pages: 16,
      binding: 'SaddleStitch',
      stock: 'silk-115',
      inksFront: ['Cyan', 'Magenta', 'Yellow', 'Black'],
      inksBack: ['Black'],
      bleedMm: 3,
    });
    expect(codes(text)).toEqual(Array(5).fill('DEFAULT_TAKEN'));
    expect(read(text).problems[0]).toMatchObject({ line: 1, path: '/JDF', severity: 'warning' });
  });

  it('takes what the ticket names and warns of the bleed only', () => {
    const text = ticket({
      LayoutIntent: `<FinishedDimensions DataType="ShapeSpan" Actual="595.276 841.89 1"/>${pages(8)}`,
      BindingIntent: '<BindingType DataType="EnumerationSpan" Actual="SaddleStitch"/>',
      ColorIntent: '<ColorsUsed><SeparationSpec Name="Black"/></ColorsUsed>',
      MediaIntent: weight(100),
    });
    expect(order(text)).toMatchObject({
      trimWidthMm: 210,
      trimHeightMm: 297,
      inksFront: ['Black'],
      inksBack: ['Black'],
      stock: 'offset-100',
    });
    expect(codes(text)).toEqual(['DEFAULT_TAKEN']);
  });

  it('halves the flat size of a sheet that is folded once, with a warning', () => {
    const text = ticket({ LayoutIntent: SIZE + pages(4) });
    expect(order(text)).toMatchObject({ trimWidthMm: 107.95, trimHeightMm: 279.4 });
    expect(read(text).problems[0]).toMatchObject({
      code: 'DEFAULT_TAKEN',
      path: expect.stringContaining('Dimensions'),
    });
  });

  it('prints nothing on the back of a single page', () => {
    expect(order(ticket({ LayoutIntent: SIZE + pages(1) }))).toMatchObject({ binding: 'None', inksBack: [] });
  });

  it('tells papers of one weight apart by their coating', () => {
    const layout = { LayoutIntent: SIZE + pages(16) };
    expect(order(ticket({ ...layout, MediaIntent: weight(150) + coating('None') })).stock).toBe('offset-150');
    expect(order(ticket({ ...layout, MediaIntent: weight(150) + coating('Glossy') })).stock).toBe('silk-150');
  });

  it('does not take a coating alone for a paper', () => {
    expect(order(ticket({ LayoutIntent: SIZE + pages(16), MediaIntent: coating('None') })).stock).toBe(
      'silk-115',
    );
  });

  it('warns when the weight is there but not with that coating', () => {
    const text = ticket({ LayoutIntent: SIZE + pages(16), MediaIntent: weight(115) + coating('None') });
    expect(order(text).stock).toBe('silk-115');
    expect(codes(text)).toContain('PLAN_CAUTION');
  });

  it('takes a paper that the ticket calls by its name in the plant', () => {
    const brand = '<StockBrand DataType="StringSpan" Actual="offset-150"/>';
    expect(order(ticket({ LayoutIntent: SIZE + pages(16), MediaIntent: brand })).stock).toBe('offset-150');
  });

  it('refuses a weight that the plant does not have and names those it has', () => {
    const result = read(ticket({ LayoutIntent: SIZE + pages(16), MediaIntent: weight(90) }));
    expect(result.ok).toBe(false);
    expect(result.problems.at(-1)).toMatchObject({
      code: 'PLAN_IMPOSSIBLE',
      hint: expect.stringContaining('100, 115, 150'),
    });
  });

  it('refuses a ticket without a job, pages or a size, naming each', () => {
    expect(codes(ticket({ LayoutIntent: '' }, ''))).toEqual(['JDF_MISSING', 'JDF_MISSING', 'JDF_MISSING']);
  });

  it('refuses a binding that cannot be planned and a product of several parts', () => {
    const ring = '<BindingType DataType="EnumerationSpan" Actual="Ring"/>';
    expect(codes(ticket({ LayoutIntent: SIZE + pages(16), BindingIntent: ring }))).toContain('PLAN_NOT_YET');
    const inner = '<JDF ID="Cover" Type="Product" Status="Waiting" JobPartID="cover"/></JDF>';
    const parts = ticket({ LayoutIntent: SIZE + pages(16) }).replace('</JDF>', inner);
    expect(codes(parts)).toContain('PLAN_NOT_YET');
  });
});
