import { input, node, output, problemsIn, resource, ticket } from '../../../../../test/kit/small-ticket.js';

const told = (text: string) =>
  problemsIn(text)
    .filter(({ code }) => code === 'JDF_VERSION')
    .map(({ severity, line, path, message, hint }) => `${severity} ${line} ${path} ${message} ${hint}`);

// Versions: the notes Version First and Last of the official JDF 1.9 schema (JDFProcess, JDFResource).
describe('the version of a ticket', () => {
  it.each([
    ['Type="Stripping" Version="1.2"'],
    ['Type="Proofing" Version="1.1"'],
    ['Type="my:Own" xmlns:my="urn:example:my" Version="1.0"'],
  ])('knows the process of %s', (head) => {
    expect(told(ticket(head))).toEqual([]);
  });

  it('knows no process that is newer, and none that was taken out before', () => {
    expect(told(ticket('Type="Stripping" Version="1.1"'))).toEqual([
      'warning 1 /JDF The standard has the process Stripping since version 1.2; this document says 1.1. State Version="1.2" or higher, or leave it out.',
    ]);
    expect(told(ticket('Type="Proofing" Version="1.2"'))).toEqual([
      'warning 1 /JDF The standard has the process Proofing up to version 1.1; this document says 1.2. Use what has taken its place since.',
    ]);
  });

  it('is that of the node, else that of the node around', () => {
    const inner = (version: string) => node(`ID="n" Type="Bending" ${version}`);
    expect(told(ticket('Type="Product" Version="1.2"', '', '', inner('')))).toHaveLength(1);
    expect(told(ticket('Type="Product" Version="1.2"', '', '', inner('Version="1.3"')))).toEqual([]);
  });

  it('knows the links of a process', () => {
    const printing = (version: string, plates: string) =>
      told(
        ticket(
          `Type="ConventionalPrinting" Version="${version}"`,
          resource('ExposedMedia') + resource('Component', 'ComponentType="Sheet"'),
          input('ExposedMedia', `ProcessUsage="${plates}"`) + output('Component'),
        ),
      );
    expect(printing('1.2', 'Plate')).toEqual([]);
    expect(printing('1.3', 'Cylinder')).toEqual([]);
    expect(printing('1.2', 'Cylinder')).toEqual([
      'warning 1 /JDF/ResourceLinkPool/ExposedMediaLink The standard has Input ExposedMedia of ProcessUsage="Cylinder" of ConventionalPrinting since version 1.3; this document says 1.2. State Version="1.3" or higher, or leave it out.',
    ]);
  });

  it('has the resources that were not taken out before', () => {
    const sheets = (version: string) =>
      told(ticket(`Type="Product" Version="${version}"`, resource('Sheet')));
    expect(sheets('1.2')).toEqual([]);
    expect(sheets('1.3')).toEqual([
      'warning 1 /JDF/ResourcePool/Sheet The standard has Sheet up to version 1.2; this document says 1.3. Use what has taken its place since.',
    ]);
  });
});
