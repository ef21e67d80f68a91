import { parsedXml } from '../../../../../test/kit/value-in.js';
import { checkTicket } from '../../index.js';

/** Findings of a ticket whose line 2 is its pool of resources, 3 its links and 4 the rest. */
function check(resources: string, links = '', rest = '') {
  const doc =
    parsedXml(`<JDF xmlns="http://www.CIP4.org/JDFSchema_1_1" ID="n" Type="ProcessGroup" Status="Waiting" Version="1.9">
<ResourcePool>${resources}</ResourcePool>
<ResourceLinkPool>${links}</ResourceLinkPool>
${rest}</JDF>`);
  return checkTicket(doc)
    .filter(({ code }) => code === 'JDF_PARTITION')
    .map(({ severity, line, path, message }) => `${severity} ${line} ${path?.split('/').at(-1)}: ${message}`);
}

const plates = (parts: string, more = '') =>
  `<ExposedMedia ID="x" Class="Handling" Status="Available" PartIDKeys="SheetName Side"${more}>${parts}</ExposedMedia>`;
const sheet = (name: string, inner = '<ExposedMedia Side="Front"/><ExposedMedia Side="Back"/>') =>
  `<ExposedMedia SheetName="${name}">${inner}</ExposedMedia>`;
const link = (inner: string) => `<ExposedMediaLink rRef="x" Usage="Input">${inner}</ExposedMediaLink>`;
const identical = (part: string) => `<Identical><Part ${part}/></Identical>`;

// The rules: JDF PartIDKeys, PartUsage, Part, Identical.
describe('the tree of parts', () => {
  it('may skip levels, in their order, only where it is sparse', () => {
    const parts = '<ExposedMedia Side="Front"/>';
    expect(check(plates(parts, ' PartUsage="Sparse"'))).toEqual([]);
    expect(check(plates(parts))).toEqual(['error 2 ExposedMedia: This part of ExposedMedia has Side.']);
    const back = '<ExposedMedia Side="Front"><ExposedMedia SheetName="S1"/></ExposedMedia>';
    expect(check(plates(back, ' PartUsage="Sparse"'))).toHaveLength(1);
  });

  it('has values that tell siblings apart, in whatever spelling, and ranges that hold no place twice', () => {
    const runs = (...ranges: string[]) =>
      `<DigitalPrintingParams ID="d" Class="Parameter" Status="Available" PartIDKeys="RunIndex">${ranges
        .map((range) => `<DigitalPrintingParams RunIndex="${range}"/>`)
        .join('')}</DigitalPrintingParams>`;
    expect(check(runs('0 -1', '1 ~ -2'))).toEqual([]);
    expect(check(runs('0 ~ 3', '0~+3'))[0]).toMatch('There are two parts with RunIndex="0~+3"');
    expect(check(runs('0 ~ 3', '3 ~ 5'))).toEqual([
      'warning 2 DigitalPrintingParams[2]: RunIndex="3 ~ 5" overlaps with another part.',
    ]);
  });

  it('takes an attribute that is only called like a key for what it is', () => {
    const preview = (type: string) =>
      `<Preview ID="p" Class="Parameter" Status="Available" PartIDKeys="Separation" PreviewType="Separation"><Preview Separation="Cyan" ${type}/></Preview>`;
    expect(check(preview('PreviewType="Separation"'))).toEqual([]);
    expect(check(preview('Side="Front"'))).toHaveLength(1);
  });
});

describe('Part elements', () => {
  it.each([
    ['a sheet with all its sides', 'SheetName="S1"', ''],
    ['a side of all sheets', 'Side="Back"', ''],
    ['a lot', 'SheetName="S1" LotID="7"', ''],
    ['a value that is not there', 'SheetName="S9"', 'No part of ExposedMedia has SheetName="S9".'],
    [
      'a value that is not there in this sheet',
      'SheetName="S2" Side="Back"',
      'No part of ExposedMedia in SheetName="S2" has Side="Back".',
    ],
    ['another key', 'Option="1"', 'ExposedMedia is not divided by Option, which the Part names.'],
    [
      'more than the sheet is divided by',
      'SheetName="S3" Side="Front"',
      'No part of ExposedMedia has Side="Front": the part SheetName="S3" is not divided by Side.',
    ],
  ])('of a link may name %s, or it is said what is there', (_what, part, message) => {
    const parts = sheet('S1') + sheet('S2', '<ExposedMedia Side="Front"/>') + sheet('S3', '');
    const expected = message === '' ? [] : [`error 3 Part: ${message}`];
    expect(check(plates(parts), link(`<Part ${part}/>`))).toEqual(expected);
    expect(check(plates(parts, ' PartUsage="Implicit"'), link(`<Part ${part}/>`))).toEqual([]);
    const sparse = message.startsWith('No part') && !message.includes('is not divided');
    expect(check(plates(parts, ' PartUsage="Sparse"'), link(`<Part ${part}/>`))).toHaveLength(sparse ? 1 : 0);
  });

  it('of amounts tell good from waste, name a part once, and one that the link means', () => {
    const amounts = (...parts: string[]) =>
      link(
        `<AmountPool>${parts.map((part) => `<PartAmount Amount="1"><Part ${part}/></PartAmount>`).join('')}</AmountPool><Part SheetName="S1"/>`,
      );
    const two = plates(sheet('S1') + sheet('S2'));
    expect(
      check(two, amounts('SheetName="S1" Condition="Good"', 'SheetName="S1" Condition="Waste"')),
    ).toEqual([]);
    expect(check(two, amounts('Side="Front"', 'Side="Front"'))).toEqual([
      'warning 3 Part: Two PartAmount elements are for the same part.',
    ]);
    expect(check(two, amounts('SheetName="S2"'))).toEqual([
      'warning 3 PartAmount: ExposedMediaLink does not mean the part of this amount.',
    ]);
    expect(check(two, amounts('SheetName="S9"'))[0]).toMatch('error 3 Part: No part');
  });

  it('of a reference name one thing', () => {
    const media =
      '<Media ID="m" Class="Consumable" Status="Available" PartIDKeys="SheetName"><Media SheetName="S1"/><Media SheetName="S2"/></Media>';
    const refer = (parts: string) => media + plates(`<MediaRef rRef="m">${parts}</MediaRef>`);
    expect(check(refer('<Part SheetName="S1"/>'))).toEqual([]);
    expect(check(refer(''))).toEqual(['error 2 MediaRef: MediaRef leads to several parts of Media.']);
    expect(check(refer('<Part SheetName="S1"/><Part SheetName="S2"/>'))).toHaveLength(1);
    expect(check(refer('<Part SheetName="S7"/>'))).toHaveLength(1);
  });

  it('of audits and the parts of NodeInfo are those of what the node uses', () => {
    const audit = (part: string) => `<AuditPool><ProcessRun><Part ${part}/></ProcessRun></AuditPool>`;
    const of = (part: string) => check(plates(sheet('S1')), link(''), audit(part));
    expect(of('SheetName="S1" Condition="Good"')).toEqual([]);
    expect(of('SheetName="S9"')).toEqual(['warning 4 Part: No part of ExposedMedia has SheetName="S9".']);
    expect(of('Option="1"')).toEqual(['warning 4 Part: No resource of the node is divided by Option="1".']);
    const info = (name: string) =>
      `<NodeInfo ID="i" Class="Parameter" Status="Available" PartIDKeys="SheetName"><NodeInfo SheetName="${name}"/></NodeInfo>`;
    const both = `${link('')}<NodeInfoLink rRef="i" Usage="Input"/>`;
    expect(check(plates(sheet('S1')) + info('S1'), both)).toEqual([]);
    expect(check(plates(sheet('S1')) + info('S2'), both)).toEqual([
      'warning 2 NodeInfo: No part of ExposedMedia has SheetName="S2".',
    ]);
  });
});

describe('Identical', () => {
  const back = (part: string, inner = '') =>
    sheet('S2', `<ExposedMedia Side="Back">${identical(part)}${inner}</ExposedMedia>`);

  it.each([
    ['the same level', 'SheetName="S1" Side="Back"', ''],
    ['another level', 'SheetName="S1"', 'another level'],
    ['what is not there', 'SheetName="S9" Side="Back"', 'is not there'],
    ['itself', 'SheetName="S2" Side="Back"', 'that it stands in'],
    ['no key', 'LotID="1"', 'another level'],
  ])('names %s or is refused', (_what, part, words) => {
    const found = check(plates(sheet('S1') + back(part)));
    expect(found).toHaveLength(words === '' ? 0 : 1);
    expect(found.join()).toMatch(words);
  });

  it('makes no chain, no loop, and has no parts beside', () => {
    const chain = sheet(
      'S1',
      `<ExposedMedia Side="Back">${identical('SheetName="S2" Side="Back"')}</ExposedMedia>`,
    );
    const loop = check(plates(chain + back('SheetName="S1" Side="Back"')));
    expect(loop).toHaveLength(2);
    expect(loop.join()).toMatch('itself identical');
    const keyed = '<ExposedMedia ID="x" Class="Handling" Status="Available" PartIDKeys="SheetName Side">';
    const whole = `${keyed}${sheet('S1')}${sheet('S2', `${identical('SheetName="S1"')}<ExposedMedia Side="Front"/>`)}</ExposedMedia>`;
    expect(check(whole)).toEqual(['error 2 ExposedMedia: A part that is identical to another has parts.']);
  });
});
