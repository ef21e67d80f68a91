import { parsedXml, valueIn } from '../../../../test/kit/value-in.js';
import {
  attributeOf,
  checkTicket,
  findById,
  merge,
  type SpawnOptions,
  spawn,
  unspawn,
  writeXml,
  type XmlDocument,
} from '../index.js';

const act = { at: Date.UTC(2026, 4, 4, 8), agent: { name: 'test', version: '1' } };
const later = { ...act, at: act.at + 60_000 };

/** A folder of two sheets: printing makes the sheets that folding takes. Our own invention. */
const TICKET = `<?xml version="1.0" encoding="UTF-8"?>
<JDF xmlns="http://www.CIP4.org/JDFSchema_1_1" xmlns:f="urn:example:foreign" ID="p" JobID="J1" JobPartID="P"
  Type="Product" Status="Waiting" Version="1.9" MaxVersion="1.9" f:desk="3">
  <ResourcePool>
    <Component ID="c" Class="Quantity" Status="Unavailable" ComponentType="Sheet" PartIDKeys="SheetName"><MediaRef rRef="m"/><Component SheetName="S1"/><Component SheetName="S2"/></Component>
    <Media ID="m" Class="Consumable" Status="Available" f:rack="7"/>
    <CustomerInfo ID="cu" Class="Parameter" Status="Available" CustomerID="K7"><ContactRef rRef="co"/></CustomerInfo>
    <Contact ID="co" Class="Parameter" Status="Available" ContactTypes="Customer"/>
    <Ink ID="i" Class="Consumable" Status="Available"/>
  </ResourcePool>
  <ResourceLinkPool><CustomerInfoLink rRef="cu" Usage="Input"/></ResourceLinkPool>
  <JDF ID="g" JobPartID="group" Type="ProcessGroup" Status="Waiting">
    <JDF ID="n" JobPartID="print" Type="ConventionalPrinting" Status="Waiting">
      <ResourcePool><ConventionalPrintingParams ID="cp" Class="Parameter" Status="Available"/></ResourcePool>
      <ResourceLinkPool>
        <ConventionalPrintingParamsLink rRef="cp" Usage="Input"/>
        <ComponentLink rRef="c" Usage="Output"/>
      </ResourceLinkPool>
    </JDF>
  </JDF>
  <JDF ID="fold" JobPartID="fold" Type="Folding" Status="Waiting">
    <ResourceLinkPool><ComponentLink rRef="c" Usage="Input"/></ResourceLinkPool>
  </JDF>
</JDF>
`;

const doc = parsedXml(TICKET);
const print = { jobPartId: 'print' };
const out = (options: Partial<SpawnOptions> = {}, from: XmlDocument = doc) =>
  valueIn(spawn(from, print, { ...act, spawnId: 't1', ...options }));
const of = (from: XmlDocument, id: string, name: string) => attributeOf(findById(from, id)!, name);
const faults = (from: XmlDocument) =>
  checkTicket(parsedXml(writeXml(from))).filter(({ severity }) => severity === 'error');
const codes = (result: ReturnType<typeof spawn> | ReturnType<typeof merge>) =>
  result.problems.map(({ code }) => code);
const changed = (from: XmlDocument, before: string, after: string): XmlDocument => {
  const text = writeXml(from);
  expect(text).toContain(before);
  return parsedXml(text.replace(before, after));
};

// What is written where: JDF AncestorPool, SpawnStatus, SpawnIDs, Spawned and Merged.
describe('a ticket that a node leaves in', () => {
  const { parent, child } = out();

  it('names its ancestors outermost first, with attributes and customer', () => {
    expect(attributeOf(child.root, 'SpawnID')).toBe('t1');
    const text = writeXml(child);
    expect([...text.matchAll(/NodeID="(\w+)"/g)].map(([, id]) => id)).toEqual(['p', 'g']);
    expect(text).toMatch(/<Ancestor NodeID="p"[^>]* f:desk="3"><CustomerInfo CustomerID="K7">/);
    expect(['JobID', 'Version'].map((name) => attributeOf(child.root, name))).toEqual(['J1', '1.9']);
  });

  it('has all that it uses, to be changed what it makes, locked what it only reads, nothing else', () => {
    expect(['c', 'm', 'co'].map((id) => of(child, id, 'Locked'))).toEqual([undefined, 'true', 'true']);
    expect(findById(child, 'i')).toBeUndefined();
    expect(faults(child)).toEqual([]);
  });

  it('leaves word in the parent ticket', () => {
    expect(of(parent, 'n', 'Status')).toBe('Spawned');
    expect(['c', 'm', 'i'].map((id) => of(parent, id, 'SpawnStatus'))).toEqual([
      'SpawnedRW',
      'SpawnedRO',
      undefined,
    ]);
    expect(of(parent, 'c', 'SpawnIDs')).toBe('t1');
    expect(writeXml(parent)).toMatch(
      /<JDF ID="g"[^>]*>\s*<AuditPool>\s*<Spawned TimeStamp="2026-05-04T08:00:00.000Z" AgentName="test" AgentVersion="1" jRef="n" NewSpawnID="t1" rRefsROCopied="m co" rRefsRWCopied="c" Status="Waiting"\/>/,
    );
    expect(faults(parent)).toEqual([]);
  });

  it('reads what others read too, and changes nothing that is out to be changed', () => {
    const fold = { jobPartId: 'fold' };
    const both = valueIn(spawn(parent, fold, { ...act, spawnId: 't2' })).parent;
    expect([of(both, 'c', 'SpawnStatus'), of(both, 'c', 'SpawnIDs')]).toEqual(['SpawnedRW', 't1 t2']);
    expect(spawn(parent, fold, { ...act, spawnId: 't2', readWrite: ['c'] })).toMatchObject({
      problems: [{ code: 'JDF_SPAWN', line: 5, path: '/JDF/ResourcePool/Component' }],
    });
    const back = valueIn(merge(both, child, later));
    expect([of(back, 'c', 'SpawnStatus'), of(back, 'c', 'SpawnIDs')]).toEqual(['SpawnedRO', 't2']);
  });

  it('comes back with what happened', () => {
    const returned = changed(child, 'Status="Unavailable"', 'Status="Available" AmountProduced="90"');
    const back = valueIn(merge(parent, returned, later));
    expect([of(back, 'c', 'AmountProduced'), of(back, 'n', 'Status')]).toEqual(['90', 'Waiting']);
    expect(writeXml(back)).toContain('AgentVersion="1" jRef="n" MergeID="t1" rRefsOverwritten="c"/>');
    expect(writeXml(back)).not.toMatch(/Ancestor|SpawnIDs|SpawnStatus|Locked/);
  });
});

describe('a ticket for one partition', () => {
  const first = out({ parts: [{ SheetName: 'S1' }] });
  const second = out({ spawnId: 't2', parts: [{ SheetName: 'S2' }] }, first.parent);

  it('has its own leaves only, and the node a status for each', () => {
    expect(writeXml(first.child)).not.toContain('S2');
    expect(writeXml(first.child)).toContain('<Part SheetName="S1"/></AncestorPool>');
    expect(of(second.parent, 'n', 'Status')).toBe('Part');
    expect(writeXml(second.parent).match(/NodeStatus="Spawned"/g)).toHaveLength(2);
    for (const one of [first.child, second.parent]) expect(faults(one)).toEqual([]);
  });

  it('comes back in any order; the node is completed with its last partition', () => {
    const done = (child: XmlDocument) => changed(child, 'Status="Waiting"', 'Status="Completed"');
    const one = valueIn(merge(second.parent, done(second.child), later));
    expect(of(one, 'n', 'Status')).toBe('Part');
    expect(of(valueIn(merge(one, done(first.child), later)), 'n', 'Status')).toBe('Completed');
  });

  it('is refused while its leaf is out, where no resource has the part, and before version 1.3', () => {
    const part = { parts: [{ SheetName: 'S1' }] };
    expect(codes(spawn(second.parent, print, { ...act, spawnId: 't3', ...part }))).toContain('JDF_SPAWN');
    const none = { ...act, spawnId: 't3', parts: [{ SheetName: 'S9' }] };
    expect(spawn(doc, print, none)).toMatchObject({ problems: [{ code: 'JDF_PARTITION', line: 13 }] });
    const old = parsedXml(TICKET.replace(/ion="1.9"/g, 'ion="1.2"'));
    expect(codes(spawn(old, print, { ...act, spawnId: 't3', ...part }))).toEqual(['JDF_SPAWN']);
  });
});

describe('what comes in with a returned ticket', () => {
  it('gets another ID where its own is taken, with all that refers to it', () => {
    const { parent, child } = out();
    const returned = changed(
      changed(
        child,
        '<ConventionalPrintingParams ',
        '<MiscConsumable ID="i" Class="Consumable" Status="Available"/><ConventionalPrintingParams ',
      ),
      '<ConventionalPrintingParamsLink ',
      '<MiscConsumableLink rRef="i" Usage="Input"/><ConventionalPrintingParamsLink ',
    );
    const back = valueIn(merge(parent, returned, later));
    expect(findById(back, 'i')!.local).toBe('Ink');
    expect(findById(back, 'i_t1')!.local).toBe('MiscConsumable');
    expect(writeXml(back)).toContain('<MiscConsumableLink rRef="i_t1"');
    expect(faults(back)).toEqual([]);
  });

  it('is not what was only to be read: that is told and left', () => {
    const { parent, child } = out();
    const result = merge(parent, changed(child, 'f:rack="7"', 'f:rack="8"'), later);
    expect(result.problems).toMatchObject([
      { severity: 'warning', code: 'JDF_SPAWN', path: '/JDF/ResourcePool/Media' },
    ]);
    expect(writeXml(valueIn(result))).toContain('f:rack="7"');
  });

  it('keeps audits that did not come back', () => {
    const audited = parsedXml(
      TICKET.replace(
        'Type="ConventionalPrinting" Status="Waiting">',
        '$&<AuditPool><Created TimeStamp="2026-05-01T08:00:00Z"/></AuditPool>',
      ),
    );
    const { parent, child } = out({}, audited);
    const back = merge(
      parent,
      changed(child, '<AuditPool><Created TimeStamp="2026-05-01T08:00:00Z"/></AuditPool>', ''),
      later,
    );
    expect(writeXml(valueIn(back))).toContain('<Created TimeStamp="2026-05-01T08:00:00Z"/>');
  });
});

describe('what is refused', () => {
  const { parent, child } = out();

  it.each([
    ['a node that is not there', () => spawn(doc, { nodeId: 'x' }, { ...act, spawnId: 't' }), 'STEP_UNKNOWN'],
    ['the outermost node', () => spawn(doc, { nodeId: 'p' }, { ...act, spawnId: 't' }), 'JDF_SPAWN'],
    ['a node that is out', () => spawn(parent, print, { ...act, spawnId: 't' }), 'JDF_SPAWN'],
    [
      'a SpawnID used before',
      () => spawn(parent, { nodeId: 'fold' }, { ...act, spawnId: 't1' }),
      'JDF_SPAWN',
    ],
    ['a SpawnID of two words', () => spawn(doc, print, { ...act, spawnId: 'a b' }), 'JDF_SPAWN'],
    [
      'a resource that does not leave',
      () => spawn(doc, print, { ...act, spawnId: 't', readWrite: ['i'] }),
      'JDF_DANGLING',
    ],
    ['what never left', () => merge(doc, child, later), 'JDF_MERGE'],
    ['what was not spawned', () => merge(parent, doc, later), 'JDF_MERGE'],
    ['what came back already', () => merge(valueIn(merge(parent, child, later)), child, later), 'JDF_MERGE'],
    ['another root', () => merge(parent, changed(child, 'ID="n"', 'ID="o"'), later), 'JDF_MERGE'],
    [
      'another job',
      () => merge(parent, changed(child, 'JobID="J1" Version', 'JobID="J2" Version'), later),
      'JDF_MERGE',
    ],
    ['other ancestors', () => merge(parent, changed(child, 'NodeID="g"', 'NodeID="h"'), later), 'JDF_MERGE'],
    ['what is no ticket', () => merge(parent, parsedXml('<a/>'), later), 'KIND_UNKNOWN'],
  ])('%s', (_what, doing, code) => {
    const result = doing();
    expect([result.ok, codes(result)]).toEqual([false, [code]]);
    expect(result.problems[0]!.message.length).toBeGreaterThan(10);
  });

  it('a ticket while something of it is out itself: deeper ones come first', () => {
    const group = valueIn(spawn(doc, { nodeId: 'g' }, { ...act, spawnId: 't1' }));
    const inner = out({ spawnId: 't2' }, group.child);
    expect(writeXml(inner.child)).toMatch(/NodeID="p".*NodeID="g"/s);
    expect(codes(merge(group.parent, inner.parent, later))).toEqual(['JDF_MERGE']);
    expect(codes(merge(group.parent, inner.child, later))).toEqual(['JDF_MERGE']);
    const back = valueIn(merge(inner.parent, inner.child, later));
    expect(merge(group.parent, back, later).ok).toBe(true);
  });
});

describe('what never comes back', () => {
  it('is given up: statuses and marks as before, and the ticket refused should it come after all', () => {
    for (const parts of [undefined, [{ SheetName: 'S1' }]]) {
      const { parent, child } = out(parts === undefined ? {} : { parts });
      const back = valueIn(unspawn(parent, 't1', later));
      expect(of(back, 'n', 'Status')).toBe('Waiting');
      expect(writeXml(back)).not.toMatch(/SpawnIDs|SpawnStatus|NodeStatus="Spawned"/);
      expect(faults(back)).toEqual([]);
      expect(codes(merge(back, child, later))).toEqual(['JDF_MERGE']);
      expect(codes(unspawn(back, 't1', later))).toEqual(['JDF_MERGE']);
    }
  });

  it('leaves other partitions out', () => {
    const first = out({ parts: [{ SheetName: 'S1' }] });
    const second = out({ spawnId: 't2', parts: [{ SheetName: 'S2' }] }, first.parent);
    const back = valueIn(unspawn(second.parent, 't1', later));
    expect([of(back, 'n', 'Status'), writeXml(back).match(/NodeStatus="Spawned"/g)?.length]).toEqual([
      'Part',
      1,
    ]);
    expect(merge(back, second.child, later).ok).toBe(true);
  });
});
