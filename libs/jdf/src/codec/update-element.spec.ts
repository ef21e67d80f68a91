import { parsedXml } from '../../../../test/kit/value-in.js';
import { firstChild, writeXml } from '../xml/index.js';
import { child, children, elementCodec, inside, optional, required } from './fields.js';
import { Findings } from './findings.js';
import { number } from './numbers.js';
import { text } from './texts.js';
import { updateElement } from './update-element.js';

const spec = elementCodec('SeparationSpec', { name: required('Name', text) });
const codec = elementCodec('Media', {
  weight: optional('Weight', number),
  brand: optional('Brand', text),
  location: child(elementCodec('Location', { id: optional('LocID', text) })),
  inks: inside('ColorsUsed', children(spec)),
});

const SOURCE = `<j:Media  xmlns:j="http://www.CIP4.org/JDFSchema_1_1" xmlns:f="urn:example:f" Weight='0115.0' f:own="1" >
  <!-- as it came -->
  <j:Location LocID="A"  f:row='7'><f:deep/></j:Location>
  <j:ColorsUsed>
    <j:SeparationSpec   Name="Cyan"/>
    <j:SeparationSpec Name="Spot" f:book="x"/>
    <f:SeparationSpec Name="not ours"/>
  </j:ColorsUsed>
  <f:Foreign><![CDATA[&]]></f:Foreign>
</j:Media>`;

const doc = parsedXml(SOURCE);
const value = codec.read(doc.root, new Findings(doc, { missing: 'JDF_MISSING', wrong: 'JDF_VALUE' }))!;
const updated = (change: Partial<typeof value>) =>
  writeXml(updateElement(doc, doc.root, codec, { ...value, ...change }));

describe('changing an element through its view', () => {
  it('changes nothing for a value that is there already, however it is written', () => {
    expect(updateElement(doc, doc.root, codec, { ...value, weight: 115 })).toBe(doc);
  });

  it('changes one attribute and nothing beside', () => {
    expect(
      updated({ weight: 90 })
        .replace(/Weight=.90./, "Weight='0115.0'")
        .replace(/<j:Media[^>]*>/, ''),
    ).toBe(SOURCE.replace(/<j:Media[^>]*>/, ''));
    expect(updated({ weight: 90 })).toMatch(/Weight=["']90["']/);
    expect(updated({ weight: undefined })).not.toContain('Weight');
  });

  it('keeps what is foreign in a child element that it changes', () => {
    const changed = updated({ location: { id: 'B' } });
    expect(changed).toMatch(/<j:Location LocID="B" +f:row=['"]7['"]><f:deep\/><\/j:Location>/);
    expect(changed.replace(/<j:Location[^>]*>/, '')).toBe(SOURCE.replace(/<j:Location[^>]*>/, ''));
  });

  it('adds, exchanges and takes out members of a list at their own places', () => {
    const names = (...all: string[]) => updated({ inks: all.map((name) => ({ name })) });
    expect(names('Cyan', 'Spot', 'Black')).toBe(
      SOURCE.replace('f:book="x"/>', 'f:book="x"/>\n    <j:SeparationSpec Name="Black"/>'),
    );
    expect(names('Spot')).toBe(SOURCE.replace('\n    <j:SeparationSpec   Name="Cyan"/>', ''));
    expect(names('Spot', 'Cyan')).toMatch(/Name="Spot" f:book="x"\/>\n {4}<j:SeparationSpec {3}Name="Cyan"/);
    expect(names('Magenta', 'Spot')).toMatch(
      /Name="Magenta"\/>\n {4}<j:SeparationSpec Name="Spot" f:book="x"/,
    );
  });

  it('adds a child where there was none and takes one out with its line', () => {
    expect(updated({ location: undefined })).toBe(SOURCE.replace(/\n.*f:deep.*/, ''));
    const bare = parsedXml('<Media xmlns="http://www.CIP4.org/JDFSchema_1_1"/>');
    expect(writeXml(updateElement(bare, bare.root, codec, { location: { id: 'C' } }))).toBe(
      '<Media xmlns="http://www.CIP4.org/JDFSchema_1_1"><Location LocID="C"/></Media>',
    );
  });

  it('leaves a value that cannot be read to whoever wrote it', () => {
    const odd = parsedXml(SOURCE.replace('0115.0', 'heavy'));
    expect(updateElement(odd, odd.root, codec, { ...value, weight: undefined })).toBe(odd);
  });

  it('gives new elements the prefix of their place', () => {
    const changed = parsedXml(updated({ inks: [{ name: 'A' }, { name: 'B' }, { name: 'C' }] }));
    const list = firstChild(changed.root, 'ColorsUsed')!;
    expect(list.children.flatMap((node) => (node.kind === 'element' ? [node.name] : []))).toEqual([
      'j:SeparationSpec',
      'j:SeparationSpec',
      'j:SeparationSpec',
      'f:SeparationSpec',
    ]);
  });
});
