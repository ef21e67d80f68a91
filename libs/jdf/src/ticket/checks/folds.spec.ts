import { findingsIn, resource, ticket } from '../../../../../test/kit/small-ticket.js';

const found = (inside: string) => findingsIn(ticket('Type="ProcessGroup"', inside));
const cells = (content: string) =>
  resource('BinderySignature', 'BinderySignatureType="Grid" NumberUp="2 1"', content);

describe('folds', () => {
  // Codes: the finishing-template keywords of PWG 5100.1.
  it.each(['F2-1', 'F16-6', 'F64-2'])('know the code %s', (code) => {
    expect(found(resource('FoldingParams', `FoldCatalog="${code}"`))).toEqual([]);
  });

  it.each(['F16-15', 'F3-1', 'F16', '16-6', 'F16-0'])('do not know the code %s', (code) => {
    expect(found(resource('FoldingParams', `FoldCatalog="${code}"`))).toEqual([
      'warning JDF_FOLD /JDF/ResourcePool/FoldingParams',
    ]);
  });

  it('read the code of an intent', () => {
    const intent = (code: string) =>
      found(resource('FoldingIntent', '', `<FoldingCatalog DataType="NameSpan" Preferred="${code}"/>`));
    expect(intent('F8-7')).toEqual([]);
    expect(intent('F8-8')).toEqual(['warning JDF_FOLD /JDF/ResourcePool/FoldingIntent/FoldingCatalog']);
  });

  // The lists of the first row: the standard's own sample processes/strippingComplexExample.
  it('give each page of a section one place', () => {
    const row = '<SignatureCell FrontPages="15 0 3 12" BackPages="14 1 2 13"/>';
    expect(found(cells(`${row}<SignatureCell FrontPages="8 7 4 11" BackPages="9 6 5 10"/>`))).toEqual([]);
    expect(found(cells(`${row}<SignatureCell SectionIndex="1" FrontPages="0" BackPages="1"/>`))).toEqual([]);
    expect(found(cells(`${row}<SignatureCell FrontPages="8 7 4 12" BackPages="9 6 5 10"/>`))).toEqual([
      'warning JDF_FOLD /JDF/ResourcePool/BinderySignature/SignatureCell[2]',
    ]);
  });
});
