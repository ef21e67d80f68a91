import { parsedXml } from '../../../../test/kit/value-in.js';
import { checkDocument } from '../check-document.js';

/** A ticket whose lines 3 and 4 are a resource pool and a link pool. */
const ticket = (resources: string, links = '', attributes = 'Type="ProcessGroup"') =>
  `<JDF xmlns="http://www.CIP4.org/JDFSchema_1_1" xmlns:f="urn:example:foreign" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance"
 ID="n" Status="Waiting" Version="1.3" ${attributes}>
<ResourcePool>${resources}</ResourcePool>
<ResourceLinkPool>${links}</ResourceLinkPool>
</JDF>`;

const xjdf = (content: string) =>
  `<XJDF xmlns="http://www.CIP4.org/JDFSchema_2_0" JobID="j" Types="Product">\n${content}\n</XJDF>`;

function problemsOf(text: string) {
  const doc = parsedXml(text);
  return checkDocument(doc).problems;
}

const brief = (text: string) =>
  problemsOf(text).map(
    ({ severity, code, line, path, hint }) => `${severity} ${code} ${line} ${path} | ${hint}`,
  );

const MEDIA = '<Media ID="m" Class="Consumable" Status="Available"/>';
const media = (content: string, attributes = '') =>
  ticket(`<Media ID="m" Class="Consumable" Status="Available"${attributes}>${content}</Media>`);

// Attributes, elements, types and closed lists: the official schemas, JDF 1.9 and XJDF 2.3.
describe('the structure of a document', () => {
  it('is sound where all is as the standard says, with foreign content in between', () => {
    expect(
      brief(media('<f:More><f:Inner a="1"/></f:More>', ' f:shelf="3" Weight="115" Thickness="90"')),
    ).toEqual([]);
  });

  it.each([
    [
      'a link without Usage',
      ticket(MEDIA, '<MediaLink rRef="m"/>'),
      'error JDF_MISSING 4 /JDF/ResourceLinkPool/MediaLink | Add attribute Usage.',
    ],
    [
      'an ID used twice, in descriptions of devices too',
      ticket(
        '<Device ID="d" Class="Implementation" Status="Available"><DeviceCap><ActionPool><Action ID="n" TestRef="t"/></ActionPool></DeviceCap></Device>',
      ),
      'error JDF_ID_DOUBLE 3 /JDF/ResourcePool/Device/DeviceCap/ActionPool/Action | The first is the JDF of line 1.',
    ],
    ['no Type', ticket('', '', ''), 'error JDF_MISSING 1 /JDF | Add attribute Type.'],
    [
      'an impossible value on a later line of its tag',
      ticket('', '', 'Type="ProcessGroup" Activation="On"'),
      'error JDF_VALUE 2 /JDF | Activation is one of Inactive, Informative, Held, Active, TestRun, TestRunAndGo.',
    ],
    [
      'a class that is not that of the resource',
      ticket('<Media ID="m" Class="Parameter" Status="Available"/>'),
      'error JDF_VALUE 3 /JDF/ResourcePool/Media | Class is always Consumable here.',
    ],
    [
      'a misspelt attribute',
      media('', ' Wieght="115"'),
      'error JDF_UNKNOWN 3 /JDF/ResourcePool/Media | Did you mean Weight?',
    ],
    [
      'an attribute that a resource of this kind does not have',
      media('', ' PlateType="Dummy"'),
      'error JDF_UNKNOWN 3 /JDF/ResourcePool/Media | Take it out, or give it a namespace of its own.',
    ],
    [
      'an element where it may not stand',
      media('<FoldingParams/>'),
      'error JDF_UNKNOWN 3 /JDF/ResourcePool/Media/FoldingParams | Move it to where it belongs, or take it out.',
    ],
    [
      'an element without a namespace',
      media('<Color xmlns=""/>'),
      'error JDF_UNKNOWN 3 /JDF/ResourcePool/Media/Color | It has no namespace.',
    ],
    [
      'text among elements',
      media('115 g'),
      'error JDF_UNKNOWN 3 /JDF/ResourcePool/Media | Take the text out, or put it into a Comment.',
    ],
    [
      'an element of the standard inside a foreign one',
      media('<f:More><Media/></f:More>'),
      'error JDF_MISSING 3 /JDF/ResourcePool/Media/f:More/Media | Add attribute ID.',
    ],
    [
      'a part that is identical to another and has more',
      media(
        '<Media SheetName="A"><Identical><Part SheetName="B"/></Identical><Comment>x</Comment></Media><Media SheetName="B"/>',
        ' PartIDKeys="SheetName"',
      ),
      'error JDF_PARTITION 3 /JDF/ResourcePool/Media/Media[1] | All else is that of the part which it is identical to.',
    ],
    [
      'a type that is none',
      ticket('', '', 'Type="Folding" xsi:type="Fodling"'),
      'error JDF_VALUE 2 /JDF | null',
    ],
    [
      'a type of something else',
      ticket('', '', 'Type="Folding" xsi:type="CommandResource"'),
      'error JDF_VALUE 2 /JDF | The type must be made for JDF.',
    ],
    [
      'a link that the process of the strict type does not have',
      ticket(MEDIA, '<MediaLink rRef="m" Usage="Input"/>', 'Type="Folding" xsi:type="Folding"'),
      'error JDF_UNKNOWN 4 /JDF/ResourceLinkPool/MediaLink | Move it to where it belongs, or take it out.',
    ],
  ])('has a fault: %s', (_what, text, expected) => {
    expect(brief(text)).toContain(expected);
  });

  it('is told as a warning where the schema only notes it', () => {
    expect(brief(media('', ' PrintingTechnology="Offset"'))).toEqual([
      'warning JDF_VERSION 3 /JDF/ResourcePool/Media | State Version="1.4" or higher, or leave it out.',
    ]);
    expect(
      brief(
        ticket('<AuditPool/>'.repeat(0), '', 'Type="ProcessGroup"').replace(
          '<ResourcePool>',
          '<AuditPool/><AuditPool/><ResourcePool>',
        ),
      ),
    ).toEqual(['warning JDF_CHILDREN 3 /JDF/AuditPool[2] | There may be one.']);
  });

  it('passes over a type of somebody else, with a warning', () => {
    const text = ticket('', '', 'Type="f:Gilding" xsi:type="f:Gilding" Unknown="1"');
    expect(brief(text)).toContain('warning JDF_UNKNOWN 1 /JDF | null');
  });

  it.each([
    [
      'elements in another order',
      xjdf('<ProductList><Product ID="p"/></ProductList><Comment>x</Comment>'),
      'error JDF_CHILDREN 2 /XJDF/Comment',
    ],
    ['too few', xjdf('<ProductList/>'), 'error JDF_MISSING 2 /XJDF/ProductList'],
    [
      'a number in words',
      xjdf('<ProductList><Product ID="p" Amount="ten"/></ProductList>'),
      'error JDF_VALUE 2 /XJDF/ProductList/Product',
    ],
  ])('has a fault in the second generation: %s', (_what, text, expected) => {
    expect(
      problemsOf(text).map(({ severity, code, line, path }) => `${severity} ${code} ${line} ${path}`),
    ).toContain(expected);
  });
});
