import { parsedXml, valueIn } from '../../../../../test/kit/value-in.js';
import { checkReturned, checkTicket, spawn, writeXml, type XmlDocument } from '../../index.js';

const TICKET =
  parsedXml(`<JDF xmlns="http://www.CIP4.org/JDFSchema_1_1" ID="g" JobID="J" Type="ProcessGroup" Status="Waiting" Version="1.9">
<ResourcePool><Component ID="c" Class="Quantity" Status="Unavailable" ComponentType="Sheet" PartIDKeys="SheetName"><Component SheetName="S1"/><Component SheetName="S2"/></Component>
<Media ID="m" Class="Consumable" Status="Available"/></ResourcePool>
<JDF ID="n" Type="Cutting" Status="Waiting"><ResourcePool><CuttingParams ID="p" Class="Parameter" Status="Available"/></ResourcePool>
<ResourceLinkPool><CuttingParamsLink rRef="p" Usage="Input"/><MediaLink rRef="m" Usage="Input"/><ComponentLink rRef="c" Usage="Output"/></ResourceLinkPool></JDF></JDF>`);
const spawned = valueIn(
  spawn(TICKET, { nodeId: 'n' }, { at: Date.UTC(2026, 4, 4), agent: { name: 'test' }, spawnId: 't' }),
);
const { parent, child } = spawned;
const audit = /<Spawned [^>]*>/.exec(writeXml(parent))![0];
const merged = (more: string) => `<Merged TimeStamp="2026-05-05T00:00:00Z" jRef="n" ${more}/>`;

/** Errors of this check in a ticket with one thing changed. */
function faults(doc: XmlDocument, before: string, after: string): string[] {
  const text = writeXml(doc);
  expect(text).toContain(before);
  return checkTicket(parsedXml(text.replace(before, after)))
    .filter(({ code }) => code === 'JDF_SPAWN')
    .map(({ message }) => message);
}

// Rules: JDF AncestorPool, Spawned, Merged, SpawnStatus, SpawnIDs.
describe('records of what is out', () => {
  it('agree in a ticket that something was spawned from, and in the one that it left in', () => {
    for (const doc of [TICKET, parent, child]) expect(checkTicket(parsedXml(writeXml(doc)))).toEqual([]);
  });

  it.each([
    ['a node that is Spawned without an audit', audit, '', /no open Spawned audit/],
    ['a node that is not Spawned', 'Status="Spawned"', 'Status="Waiting"', /is out, but its node/],
    ['an audit given twice', audit, audit + audit, /occurs before/],
    ['a return of what never left', audit, audit + merged('MergeID="x"'), /names no spawning/],
    ['a second return', audit, audit + merged('MergeID="t"') + merged('MergeID="t"'), /came back twice/],
    [
      'a return before leaving',
      audit,
      audit + merged('MergeID="t"').replace('05-05', '05-01'),
      /before it left/,
    ],
    ['a token that is not out', 'SpawnIDs="t"', 'SpawnIDs="t x"', /not out/],
    ['a resource without its token', 'SpawnStatus="SpawnedRO" SpawnIDs="t"', '', /do not name it/],
    [
      'a wrong SpawnStatus',
      'SpawnStatus="SpawnedRO"',
      'SpawnStatus="SpawnedRW"',
      /by the audits it is SpawnedRO/,
    ],
  ])('%s is found', (_what, before, after, message) => {
    const found = faults(parent, before, after);
    expect(found.length).toBeGreaterThan(0);
    expect(found.some((one) => message.test(one))).toBe(true);
  });

  it('a part that is out to be changed twice is found', () => {
    const second = audit.replace('NewSpawnID="t"', 'NewSpawnID="u"').replace('rRefsROCopied="m" ', '');
    const text = writeXml(parent).replace(audit, audit + second);
    const doc = parsedXml(
      text.replace(
        '<Component SheetName="S1"',
        '<Component SheetName="S1" SpawnStatus="SpawnedRW" SpawnIDs="u"',
      ),
    );
    expect(checkTicket(doc).map(({ message }) => message)).toEqual([
      'Component is out to be changed with t and u at once.',
    ]);
  });

  it.each([
    [
      'an ancestor named twice',
      '<Ancestor NodeID="g"',
      '<Ancestor NodeID="g"/><Ancestor NodeID="g"',
      /twice/,
    ],
    ['an ancestor that is in the ticket', 'NodeID="g"', 'NodeID="n"', /in the ticket itself/],
    ['an ancestor that holds no nodes', 'Type="ProcessGroup"', 'Type="Cutting"', /holds no nodes/],
  ])('%s does not pass', (_what, before, after, message) => {
    expect(faults(child, before, after)).toEqual([expect.stringMatching(message)]);
  });

  it('a copy to be read that came back changed is found where both tickets are there', () => {
    expect(checkReturned(parent, child)).toEqual([]);
    const changed = parsedXml(
      writeXml(child).replace(
        'Class="Consumable" Status="Available"',
        'Class="Consumable" Status="Unavailable"',
      ),
    );
    expect(checkReturned(parent, changed)).toMatchObject([
      { severity: 'error', code: 'JDF_SPAWN', path: '/JDF/ResourcePool/Media' },
    ]);
    expect(checkReturned(TICKET, child)).toMatchObject([{ code: 'JDF_MERGE' }]);
  });
});
