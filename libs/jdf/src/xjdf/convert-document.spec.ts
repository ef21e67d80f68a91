import { parsedXml, valueIn } from '../../../../test/kit/value-in.js';
import { attributeOf, convertDocument, convertSteps, findById, writeXml } from '../index.js';

function convert(text: string, to: 'jdf' | 'xjdf', node?: string): { text: string; lost: string[] } {
  const doc = parsedXml(text);
  const options = node === undefined ? {} : { node: findById(doc, node)! };
  const made = valueIn(convertDocument(doc, to, options));
  return { text: writeXml(made.doc), lost: made.lost.map(({ path, what }) => `${path} ${what}`) };
}

const jdf = (resources: string, links: string, rest = 'Type="ConventionalPrinting"'): string =>
  `<JDF xmlns="http://www.CIP4.org/JDFSchema_1_1" ID="n" JobID="J 1" Status="Waiting" Version="1.7" ${rest}>
<ResourcePool>${resources}</ResourcePool><ResourceLinkPool>${links}</ResourceLinkPool></JDF>`;

// What stands for what: XJDF, ResourceSet, Part, PartAmount and AuditPool beside their JDF elements.
describe('from JDF to XJDF', () => {
  it('tells good from waste by an attribute of its own, and names what kind of waste', () => {
    const part = (condition: string, amount: number): string =>
      `<PartAmount Amount="${amount}"><Part Condition="${condition}"/></PartAmount>`;
    const { text, lost } = convert(
      jdf(
        '<Component ID="c" Class="Quantity" ComponentType="Sheet" Status="Unavailable"/>',
        `<ComponentLink rRef="c" Usage="Output"><AmountPool>${part('Good', 500)}${part('Waste', 40)}${part('PaperJam', 3)}</AmountPool></ComponentLink>`,
      ),
      'xjdf',
    );
    expect(text).toContain('<PartAmount Amount="500" Waste="40">');
    expect(text).toContain('<PartWaste WasteDetails="PaperJam" Waste="3"/>');
    expect(lost).toEqual([expect.stringContaining('/@ComponentType')]);
  });

  it('resolves what parts inherit, and lets one Resource stand for parts that are identical', () => {
    const { text } = convert(
      jdf(
        `<ExposedMedia ID="x" Class="Handling" Status="Available" PartIDKeys="SheetName Side" PunchType="P1"><Media MediaType="Plate"/>
        <ExposedMedia SheetName="S1"><ExposedMedia Side="Front"/><ExposedMedia Side="Back" PunchType="P2"/></ExposedMedia>
        <ExposedMedia SheetName="S2"><ExposedMedia Side="Front"><Identical><Part SheetName="S1" Side="Front"/></Identical></ExposedMedia></ExposedMedia></ExposedMedia>`,
        '<ExposedMediaLink rRef="x" Usage="Input"/>',
      ),
      'xjdf',
    );
    expect(text.replaceAll(/\s+/g, ' ')).toContain(
      '<Part SheetName="S1" Side="Front"/> <Part SheetName="S2" Side="Front"/> <ExposedMedia PunchType="P1" MediaRef="Media_1"/>',
    );
    expect(text.match(/<Resource /g)).toHaveLength(3);
    expect(text).toContain('<ExposedMedia PunchType="P2" MediaRef="Media_1"/>');
  });

  it('keeps names that no token can hold, and gives them back', () => {
    const source = jdf(
      '<Ink ID="i" Class="Consumable" Status="Available" PartIDKeys="Separation"><Ink Separation="Night Blue 3"/></Ink>',
      '<InkLink rRef="i" Usage="Input"/>',
    );
    const there = convert(source, 'xjdf');
    expect(there.text).toContain('JobID="J_1"');
    expect(there.text).toContain('<Part Separation="Night_Blue_3"/>');
    expect(there.text).toContain('<GeneralID IDUsage="Separation" IDValue="Night Blue 3"/>');
    const back = convert(there.text, 'jdf');
    expect(back.text).toContain('<Ink Separation="Night Blue 3"');
    expect([back.text.includes('JobID="J 1"'), back.text.includes('GeneralID'), back.lost]).toEqual([
      true,
      false,
      [],
    ]);
  });

  it('says by position in Types which processes use a resource, or makes the ticket of one node', () => {
    const step = (id: string, type: string, links: string): string =>
      `<JDF ID="${id}" Type="${type}" Status="Waiting" JobPartID="${id}"><ResourceLinkPool>${links}</ResourceLinkPool></JDF>`;
    const source = `<JDF xmlns="http://www.CIP4.org/JDFSchema_1_1" ID="n" JobID="J" Type="ProcessGroup" Status="Waiting" Version="1.7">
      <ResourcePool><Component ID="c" Class="Quantity" ComponentType="Sheet" Status="Unavailable"/><FoldingParams ID="f" Class="Parameter" Status="Available" FoldCatalog="F4-1"/></ResourcePool>
      ${step('a', 'Cutting', '<ComponentLink rRef="c" Usage="Output"/>')}
      ${step('b', 'Folding', '<ComponentLink rRef="c" Usage="Input"/><FoldingParamsLink rRef="f" Usage="Input"/>')}</JDF>`;
    const whole = convert(source, 'xjdf');
    expect(whole.text).toContain('Types="Cutting Folding"');
    expect(whole.text).toContain('<ResourceSet Name="Component" Usage="Output" CombinedProcessIndex="0">');
    expect(whole.text).toContain('<ResourceSet Name="FoldingParams" Usage="Input" CombinedProcessIndex="1">');
    expect(whole.lost.filter((what) => what.includes('@JobPartID'))).toHaveLength(2);
    const one = convert(source, 'xjdf', 'b');
    expect(one.text).toMatch(/<XJDF JobID="J" JobPartID="b" Types="Folding"/);
    expect(one.text).toContain('FoldCatalog="F4-1"');
  });

  it('gives a block as a box, and back as size and place', () => {
    const block =
      '<CutBlock BlockName="B1" BlockType="CutBlock" BlockSize="100 200" BlockTrf="0 1 -1 0 300 10"/>';
    const source = jdf(
      `<CuttingParams ID="p" Class="Parameter" Status="Available">${block}</CuttingParams>`,
      '<CuttingParamsLink rRef="p" Usage="Input"/>',
      'Type="Cutting"',
    );
    const there = convert(source, 'xjdf');
    // Turned by 90 degrees about its corner at (300, 10): 200 wide to the left, 100 high.
    expect(there.text).toContain('Box="100 10 300 110"');
    expect(convert(there.text, 'jdf').text).toContain('BlockSize="200 100" BlockTrf="1 0 0 1 100 10"');
  });

  it('names binding signatures as positions do, and gives their cells what stripping says of them', () => {
    const { text, lost } = convert(
      jdf(
        `<BinderySignature ID="bs" Class="Parameter" Status="Available" NumberUp="2 1"/>
        <StrippingParams ID="s" Class="Parameter" Status="Available" WorkStyle="WorkAndBack" PartIDKeys="SheetName BinderySignatureName"><StrippingParams SheetName="S1">
        <StrippingParams BinderySignatureName="B1"><BinderySignatureRef rRef="bs"/><Position RelativeBox="0 0 0.5 1"/><StripCellParams TrimHead="9"/></StrippingParams>
        <StrippingParams BinderySignatureName="B2"><BinderySignatureRef rRef="bs"/><Position RelativeBox="0.5 0 1 1"/></StrippingParams></StrippingParams></StrippingParams>`,
        '<StrippingParamsLink rRef="s" Usage="Input"/>',
        'Type="Stripping"',
      ),
      'xjdf',
    );
    expect(text.replaceAll(/\s+/g, ' ')).toContain(
      '<Part BinderySignatureID="B1"/> <Part BinderySignatureID="B2"/> <BinderySignature NumberUp="2 1" BinderySignatureType="Fold"> <SignatureCell TrimHead="9"/>',
    );
    expect(text).toContain('<Position RelativeBox="0.5 0 1 1" BinderySignatureID="B2"/>');
    expect(lost).toEqual([]);
  });

  it('lists a reference that leads nowhere instead of writing it', () => {
    const { text, lost } = convert(
      jdf(
        '<Component ID="c" Class="Quantity" ComponentType="Sheet" Status="Available"><MediaRef rRef="gone"/></Component>',
        '<ComponentLink rRef="c" Usage="Input"/>',
      ),
      'xjdf',
    );
    expect(text).not.toContain('gone');
    expect(lost).toContain('/JDF/ResourcePool/Component/MediaRef MediaRef: there is no resource gone');
  });
});

// A product with two steps of a shared sheet, each with something of its own.
const TWO_STEPS = `<JDF xmlns="http://www.CIP4.org/JDFSchema_1_1" ID="p" Type="Product" JobID="J" Status="Waiting" Version="1.7">
<ResourcePool><Component ID="sheet" Class="Quantity" ComponentType="Sheet" Status="Unavailable"/>
<Media ID="paper" Class="Consumable" Status="Available"/><Media ID="spare" Class="Consumable" Status="Available" Brand="Spare"/></ResourcePool>
<JDF ID="print" Type="ConventionalPrinting" JobPartID="P1" Status="Waiting" DescriptiveName="Prints it"><AuditPool><Created TimeStamp="2026-01-05T08:00:00Z"/></AuditPool><ResourceLinkPool>
<MediaLink rRef="paper" Usage="Input"/><ComponentLink rRef="sheet" Usage="Output" Amount="500" ActualAmount="489"/></ResourceLinkPool></JDF>
<JDF ID="cut" Type="Cutting" JobPartID="P2" Status="Waiting" Template="true"><ResourceLinkPool>
<ComponentLink rRef="sheet" Usage="Input"/></ResourceLinkPool></JDF></JDF>`;

describe('one step of a JDF ticket', () => {
  it('takes what it uses from around it, and lists the rest with the reason', () => {
    const { text, lost } = convert(TWO_STEPS, 'xjdf', 'cut');
    expect(text).toContain('Types="Cutting"');
    expect(text).toContain('JobPartID="P2"');
    expect(text).toContain('Name="Component"');
    expect(text).not.toContain('Name="Media"');
    expect(lost).toContain('/JDF/ResourcePool/Media[1] Media: the node does not use it');
    expect(lost).toContain('/JDF/JDF[1] JDF: another node; the document is of one node alone');
  });

  it('is a document of its own for each, and lost is only what is in none', () => {
    const made = valueIn(convertSteps(parsedXml(TWO_STEPS)));
    const { steps, lost } = made;
    expect(steps.map(({ node, doc }) => [attributeOf(node, 'ID'), attributeOf(doc.root, 'Types')])).toEqual([
      ['print', 'ConventionalPrinting'],
      ['cut', 'Cutting'],
    ]);
    const paths = lost.map(({ path }) => path);
    expect(paths).toContain('/JDF/ResourcePool/Media[2]');
    expect(paths).toContain('/JDF/JDF[2]/@Template');
    expect(paths).not.toContain('/JDF/ResourcePool/Media[1]');
    expect(paths.filter((path) => path.startsWith('/JDF/JDF[1]'))).toEqual([]);
  });

  it('is refused where there are no processes', () => {
    expect(convertSteps(parsedXml(TWO_STEPS.replaceAll(/<JDF ID.*?<\/JDF>/gs, '')))).toMatchObject({
      ok: false,
      problems: [{ code: 'KIND_UNKNOWN' }],
    });
  });
});

describe('actual amounts of links', () => {
  const link = (amounts: string): string =>
    jdf(
      '<Component ID="c" Class="Quantity" ComponentType="Sheet" Status="Available"/>',
      `<ComponentLink rRef="c" Usage="Output" ${amounts}</ComponentLink>`,
    );

  it('are audits of the newer generation, good and waste apart', () => {
    const part = (condition: string, amount: number): string =>
      `<PartAmount ActualAmount="${amount}"><Part Condition="${condition}"/></PartAmount>`;
    const { text, lost } = convert(
      link(`><AmountPool>${part('Good', 489)}${part('Waste', 20)}</AmountPool>`),
      'xjdf',
    );
    const audit = /<AuditResource>.*<\/AuditResource>/s.exec(text)?.[0] ?? '';
    expect(audit).toContain('<ResourceSet Name="Component" Usage="Output">');
    expect(audit).toContain('<PartAmount Amount="489" Waste="20"/>');
    expect(lost.filter((one) => one.includes('ActualAmount'))).toEqual([]);
  });

  it('come back as an audit of what was made', () => {
    const there = convert(link('Amount="500" ActualAmount="489">'), 'xjdf');
    expect(convert(there.text, 'jdf').text).toMatch(
      /<ResourceAudit .*<ComponentLink [^>]*Usage="Output"[^>]* ActualAmount="489"/s,
    );
  });

  it('are not said twice where an audit tells of them', () => {
    const told = `<AuditPool><ResourceAudit TimeStamp="2026-01-05T08:00:00Z"><ComponentLink rRef="c" Usage="Output" ActualAmount="489"/></ResourceAudit></AuditPool>`;
    const { text } = convert(
      link('ActualAmount="489">').replace('<ResourcePool>', `${told}<ResourcePool>`),
      'xjdf',
    );
    expect(text.match(/<AuditResource>/g)).toHaveLength(1);
  });
});

it('says of a reference that leads nowhere in the ticket made that it is lost', () => {
  const { text, lost } = convert(
    `<XJDF xmlns="http://www.CIP4.org/JDFSchema_2_0" JobID="J" Types="ConventionalPrinting"><ResourceSet Name="Layout" Usage="Input"><Resource ID="l"><Layout><PlacedObject CTM="1 0 0 1 0 0" Ord="0"><MarkObject ContentRef="gone"><RegisterMark/></MarkObject></PlacedObject></Layout></Resource></ResourceSet></XJDF>`,
    'jdf',
  );
  expect(text).not.toContain('gone');
  expect(lost.join()).toContain('gone');
});

describe('from XJDF to JDF', () => {
  const xjdf = (content: string, types: string): string =>
    `<XJDF xmlns="http://www.CIP4.org/JDFSchema_2_0" JobID="J" Types="${types}">${content}</XJDF>`;

  it('makes one resource with two links of what one process hands to the next', () => {
    const set = (usage: string, index: number): string =>
      `<ResourceSet Name="Component" Usage="${usage}" CombinedProcessIndex="${index}"><Resource ID="${usage}"><Component Dimensions="1 2 3"/></Resource></ResourceSet>`;
    const { text } = convert(xjdf(set('Output', 0) + set('Input', 1), 'Cutting Folding'), 'jdf');
    expect(text.match(/<Component /g)).toHaveLength(1);
    expect(text.match(/<ComponentLink rRef="Output"/g)).toHaveLength(2);
    expect(text).toContain('Type="Combined" Types="Cutting Folding"');
  });

  it('puts products that others name inside them, and says intents as spans', () => {
    const { text, lost } = convert(
      xjdf(
        `<ProductList><Product IsRoot="true" Amount="9" ID="book"><Intent Name="BindingIntent"><BindingIntent BindingType="SoftCover" ChildRefs="body cover"/></Intent></Product>
        <Product ID="cover" IsRoot="false"/><Product ID="body" IsRoot="false"/></ProductList>`,
        'Product',
      ),
      'jdf',
    );
    expect(text).toContain('<BindingType DataType="EnumerationSpan" Actual="SoftCover"/>');
    const order = [...text.matchAll(/<ComponentLink Usage="Output" rRef="(\w+)"/g)].map(([, id]) => id);
    expect([order, lost]).toEqual([['book', 'body', 'cover'], []]);
  });

  it('turns operations on the queue and pipes into messages of their own', () => {
    const head = '<Header DeviceID="d" Time="2026-01-05T08:00:00Z"/>';
    const { text } = convert(
      `<XJMF xmlns="http://www.CIP4.org/JDFSchema_2_0">${head}<CommandModifyQueueEntry>${head}<ModifyQueueEntryParams Operation="Hold"><QueueFilter QueueEntryIDs="q1"/></ModifyQueueEntryParams></CommandModifyQueueEntry></XJMF>`,
      'jdf',
    );
    expect(text).toMatch(/<Command [^>]*Type="HoldQueueEntry" xsi:type="CommandHoldQueueEntry"/);
    expect(text).toContain('<QueueEntryDef QueueEntryID="q1"/>');
    expect(convert(text, 'xjdf').text).toContain('Operation="Hold"');
  });
});

it('gives a document of the same generation back as it is', () => {
  const text = `${jdf('<!-- kept -->', '')}\n`;
  expect(convert(text, 'jdf')).toEqual({ text, lost: [] });
});
