import { parsedXml } from '../../../../../test/kit/value-in.js';
import { Findings } from '../../codec/index.js';
import { descendants, firstChild, type XmlDocument } from '../../xml/index.js';
import { contact, nodeInfo, nodeInfoParts, nodeKindOf, resource } from './index.js';

const findings = (doc: XmlDocument) => new Findings(doc, { missing: 'JDF_MISSING', wrong: 'JDF_VALUE' });
const ticket = (pool: string) =>
  parsedXml(`<JDF xmlns="http://www.CIP4.org/JDFSchema_1_1"><ResourcePool>${pool}</ResourcePool></JDF>`);
const named = (doc: XmlDocument, name: string) =>
  [...descendants(doc.root)].find(({ local }) => local === name)!;

describe('views of a ticket', () => {
  // Kinds of node: the standard, structure of nodes.
  it.each([
    ['Type="Product"', 'product'],
    ['Type="ProcessGroup"', 'group'],
    ['Type="ProcessGroup" Types="Interpreting Rendering"', 'gray-box'],
    ['Type="Combined" Types="Cutting Folding"', 'combined'],
    ['Type="Folding"', 'process'],
    ['', undefined],
  ])('a node with %s is a %s', (attributes, kind) => {
    expect(nodeKindOf(parsedXml(`<JDF xmlns="http://www.CIP4.org/JDFSchema_1_1" ${attributes}/>`).root)).toBe(
      kind,
    );
  });

  it('NodeInfo is read for each part, with what the part inherits', () => {
    const doc = ticket(`<NodeInfo ID="n" PartIDKeys="SheetName Side" JobPriority="70" LastEnd="INF">
<NodeInfo SheetName="S1" TotalDuration="P1M">
<NodeInfo Side="Front" NodeStatus="Completed"/><NodeInfo Side="Back" NodeStatus="Waiting" JobPriority="80"/>
</NodeInfo></NodeInfo>`);
    const parts = nodeInfoParts(named(doc, 'NodeInfo'), findings(doc));
    const month = { months: 1, seconds: 0 };
    const never = { at: Number.POSITIVE_INFINITY, offsetMin: undefined };
    expect(parts.map(({ keys, info }) => [keys, info])).toEqual([
      [
        { SheetName: 'S1', Side: 'Front' },
        { jobPriority: 70, lastEnd: never, totalDuration: month, nodeStatus: 'Completed' },
      ],
      [
        { SheetName: 'S1', Side: 'Back' },
        { jobPriority: 80, lastEnd: never, totalDuration: month, nodeStatus: 'Waiting' },
      ],
    ]);
    expect(nodeInfo.read(parts[1]!.own, findings(doc))).toEqual({ jobPriority: 80, nodeStatus: 'Waiting' });
  });

  it('sub-elements read the same inline and by reference, and are changed inline', () => {
    const doc = ticket(`<Contact ID="c" Class="Parameter" Status="Available" ContactTypes="Customer">
<CompanyRef rRef="o"/><ComChannel ChannelType="Email" Locator="mailto:a@example.test"/><ComChannelRef rRef="p"/></Contact>
<Company ID="o" Class="Parameter" Status="Available" OrganizationName="Community Theatre"/>
<ComChannel ID="p" Class="Parameter" Status="Available" ChannelType="Phone" Locator="tel:1"/>`);
    const el = named(doc, 'Contact');
    const value = contact.read(el, findings(doc))!;
    expect(value.company?.organizationName).toBe('Community Theatre');
    expect(value.comChannels?.map(({ channelType }) => channelType)).toEqual(['Email', 'Phone']);
    const renamed = contact.edit!(el, { ...value, company: { organizationName: 'Choir' } }, findings(doc));
    expect(firstChild(renamed, 'CompanyRef')).toBeUndefined();
    expect(firstChild(renamed, 'Company')?.attributes.map(({ value: said }) => said)).toEqual(['Choir']);
    expect(firstChild(renamed, 'ComChannelRef')).toBe(firstChild(el, 'ComChannelRef'));
  });

  it('a resource has an amount only where its class has one', () => {
    const doc = ticket(
      '<Media ID="m" Class="Consumable" Amount="5" Unit="sheets"/><Layout ID="l" Class="Parameter" Amount="5"/>',
    );
    expect(resource.read(named(doc, 'Media'), findings(doc))).toMatchObject({ name: 'Media', amount: 5 });
    expect(resource.read(named(doc, 'Layout'), findings(doc))).toEqual({
      name: 'Layout',
      id: 'l',
      class: 'Parameter',
    });
  });
});
