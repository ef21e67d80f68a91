import { parsedXml, valueIn } from '../../../../test/kit/value-in.js';
import { type ProductIntent, readProduct } from './index.js';

function read(text: string) {
  const doc = parsedXml(text);
  return readProduct(doc);
}

function values(product: ProductIntent): Record<string, unknown> {
  return Object.fromEntries(
    Object.entries(product).flatMap(([key, field]) =>
      field === undefined || key === 'children' ? [] : [[key, field.value]],
    ),
  );
}

const product = (resources: string, links: string, nodes = '') =>
  read(`<JDF xmlns="http://www.CIP4.org/JDFSchema_1_1" ID="n" JobID="J" JobPartID="P" Type="Product" Status="Waiting" Version="1.9">
<ResourcePool>${resources}</ResourcePool>
<ResourceLinkPool>${links}</ResourceLinkPool>
${nodes}</JDF>`);

const COMPONENT =
  '<Component ID="c" Class="Quantity" Status="Unavailable" ComponentType="FinalProduct" Amount="500"/>';
const OUT = '<ComponentLink rRef="c" Usage="Output"/>';
const intent = (name: string, inner: string, attributes = '') =>
  `<${name} ID="${name}" Class="Intent" Status="Available" ${attributes}>${inner}</${name}>`;
const link = (name: string, part = '') => `<${name}Link rRef="${name}" Usage="Input">${part}</${name}Link>`;

describe('reading what a product node asks for', () => {
  it('reads size, pages, binding, fold, inks, paper, time and customer, with where each stands', () => {
    const result = valueIn(
      product(
        [
          COMPONENT.replace('/>', ' DescriptiveName="Programme" ProductType="Body"/>'),
          intent(
            'LayoutIntent',
            '<FinishedDimensions DataType="ShapeSpan" Actual="419.528 595.276 0"/><Dimensions DataType="XYPairSpan" Preferred="839.055 595.276"/><Pages DataType="IntegerSpan" Preferred="24" Actual="16"/>',
          ),
          intent('BindingIntent', '<BindingType DataType="EnumerationSpan" Preferred="SaddleStitch"/>'),
          intent('FoldingIntent', '<FoldingCatalog DataType="NameSpan" Range="F16-6 F16-7"/>'),
          intent(
            'ColorIntent',
            '<ColorIntent Side="Front"><ColorsUsed><SeparationSpec Name="Cyan"/><SeparationSpec Name="Orange 7"/></ColorsUsed></ColorIntent><ColorIntent Side="Back"><ColorsUsed><SeparationSpec Name="Black"/></ColorsUsed></ColorIntent>',
            'PartIDKeys="Side"',
          ),
          intent(
            'MediaIntent',
            '<Weight DataType="NumberSpan" Range="90 ~ 120"/><Thickness DataType="NumberSpan" Actual="85"/><FrontCoatings DataType="EnumerationSpan" Preferred="Matte"/><BackCoatings DataType="EnumerationSpan" Preferred="None"/>',
          ),
          intent('DeliveryIntent', '<Required DataType="TimeSpan" Actual="2024-09-02T12:00:00+02:00"/>'),
          '<NodeInfo ID="NodeInfo" Class="Parameter" Status="Available" JobPriority="70" LastEnd="INF"/>',
          '<CustomerInfo ID="CustomerInfo" Class="Parameter" Status="Available" CustomerJobName="Festival"><ContactRef rRef="k"/></CustomerInfo>',
          '<Contact ID="k" Class="Parameter" Status="Available" ContactTypes="Customer"><Company OrganizationName="Community Theatre"/></Contact>',
        ].join('\n'),
        OUT +
          [
            'LayoutIntent',
            'BindingIntent',
            'FoldingIntent',
            'ColorIntent',
            'MediaIntent',
            'DeliveryIntent',
            'NodeInfo',
            'CustomerInfo',
          ]
            .map((name) => link(name))
            .join(''),
      ),
    );
    expect(values(result)).toEqual({
      node: 'n',
      activation: 'Active',
      jobId: 'J',
      jobPartId: 'P',
      descriptiveName: 'Programme',
      productType: 'Body',
      amount: 500,
      // 1 point is 1/72 inch: A5 and, flat, A4 (ISO 216).
      finishedDimensionsMm: { widthMm: expect.closeTo(148, 3), heightMm: expect.closeTo(210, 3), depthMm: 0 },
      dimensionsMm: { widthMm: expect.closeTo(296, 3), heightMm: expect.closeTo(210, 3) },
      pages: 16,
      bindingType: 'SaddleStitch',
      foldCatalog: 'F16-6',
      inksFront: ['Cyan', 'Orange 7'],
      inksBack: ['Black'],
      weightGsm: 90,
      thicknessUm: 85,
      frontCoating: 'Matte',
      backCoating: 'None',
      due: Date.UTC(2024, 8, 2, 10),
      jobPriority: 70,
      customerName: 'Community Theatre',
      customerJobName: 'Festival',
    });
    expect(result.pages).toMatchObject({ line: 3, path: '/JDF/ResourcePool/LayoutIntent/Pages' });
    expect(result.inksBack?.path).toBe('/JDF/ResourcePool/ColorIntent/ColorIntent[2]/ColorsUsed');
    expect(result.due?.line).toBe(8);
  });

  // Partitioned intents: the standard's sample resourceAuditLoggingChanges (Option1 80, Option2 90 g/m²).
  it('takes the root of a partitioned intent unless the link names a part', () => {
    const media = intent(
      'MediaIntent',
      '<Thickness DataType="NumberSpan" Preferred="100"/><Weight DataType="NumberSpan" Preferred="70"/><MediaIntent Option="A"><Weight DataType="NumberSpan" Preferred="80"/></MediaIntent>',
      'PartIDKeys="Option"',
    );
    const read = (part: string) => {
      const result = product(COMPONENT + media, OUT + link('MediaIntent', part));
      return result.ok
        ? [result.value.weightGsm?.value, result.value.thicknessUm?.value]
        : result.problems[0]?.code;
    };
    expect(read('')).toEqual([70, 100]);
    expect(read('<Part Option="A"/>')).toEqual([80, 100]);
    expect(read('<Part Option="B"/>')).toBe('JDF_PARTITION');
  });

  it.each([
    ['<ColorsUsed><SeparationSpec Name="Black"/></ColorsUsed>', '', '', ['Black'], ['Black']],
    ['<ColorsUsed><SeparationSpec Name="Black"/></ColorsUsed>', '', 'Sides="OneSided"', ['Black'], []],
    ['', 'NumColors="4"', '', ['Cyan', 'Magenta', 'Yellow', 'Black'], ['Cyan', 'Magenta', 'Yellow', 'Black']],
    ['', 'NumColors="6"', '', undefined, undefined],
    ['<ColorIntent Side="Front" NumColors="1"/>', 'PartIDKeys="Side"', '', ['Black'], []],
  ])('takes the inks of %s %s for the sides that %s leaves', (inner, attributes, sides, front, back) => {
    const result = product(
      COMPONENT + intent('ColorIntent', inner, attributes) + intent('LayoutIntent', '', sides),
      OUT + link('ColorIntent') + link('LayoutIntent'),
    );
    expect(result.ok && [result.value.inksFront?.value, result.value.inksBack?.value]).toEqual([front, back]);
  });

  it('reads products inside the product, which are made as often unless they say so themselves', () => {
    const cover = (id: string, amount: string) =>
      `<JDF ID="${id}" Type="Product" Status="Waiting" Activation="Held"><ResourcePool><Component ID="${id}c" Class="Quantity" Status="Unavailable" ComponentType="PartialProduct" ProductType="Cover" ${amount}/></ResourcePool><ResourceLinkPool><ComponentLink rRef="${id}c" Usage="Output"/></ResourceLinkPool></JDF>`;
    const result = product(COMPONENT, OUT, cover('a', '') + cover('b', 'Amount="600"'));
    expect(result.ok && result.value.children.map(values)).toMatchObject([
      { node: 'a', amount: 500, productType: 'Cover', jobId: 'J', activation: 'Held' },
      { node: 'b', amount: 600 },
    ]);
  });
});

describe('refusing a product', () => {
  it.each([
    [
      'without an amount',
      COMPONENT.replace('Amount="500"', ''),
      OUT,
      'JDF_AMOUNT',
      '/JDF/ResourcePool/Component',
    ],
    ['without an output', '', '', 'JDF_AMOUNT', '/JDF'],
    [
      'with half a copy',
      COMPONENT,
      OUT.replace('/>', ' Amount="0.5"/>'),
      'JDF_VALUE',
      '/JDF/ResourceLinkPool/ComponentLink',
    ],
    [
      'with a size that is none',
      COMPONENT + intent('LayoutIntent', '<Dimensions DataType="XYPairSpan" Preferred="612"/>'),
      OUT + link('LayoutIntent'),
      'JDF_VALUE',
      '/JDF/ResourcePool/LayoutIntent/Dimensions',
    ],
  ])('%s, naming the place', (_what, resources, links, code, path) => {
    expect(product(resources, links)).toMatchObject({ ok: false, problems: [{ code, path }] });
  });

  it('where no node is a product', () => {
    const text =
      '<JDF xmlns="http://www.CIP4.org/JDFSchema_1_1" ID="n" Type="Cutting" Status="Waiting" Version="1.9"/>';
    expect(read(text)).toMatchObject({ problems: [{ code: 'JDF_NO_PRODUCT', path: '/JDF' }] });
  });
});
