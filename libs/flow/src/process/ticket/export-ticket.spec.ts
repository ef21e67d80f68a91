import {
  attributeOf,
  childElements,
  convertDocument,
  descendants,
  firstChild,
  readAudits,
  readProduct,
  writeXml,
  type XmlDocument,
} from '#libs/jdf';
import { bookletPlan } from '../../../../../test/kit/booklet-plan.js';
import { MONDAY, storedDocument, ticketFile } from '../../../../../test/kit/ticket-files.js';
import { parsedXml, valueIn } from '../../../../../test/kit/value-in.js';
import { exportTicket } from '../index.js';

const options = { now: MONDAY + 6 * 3_600_000, version: '0.1.0' };
const MINUTE = 60_000;

// Our own words in the form of the standard's product tickets, with something foreign and IDs like ours in it.
const ORIGINAL = `<?xml version="1.0" encoding="UTF-8"?>
<!-- from the front office -->
<JDF xmlns="http://www.CIP4.org/JDFSchema_1_1" xmlns:shop="urn:example:shop" ID="sl_root" JobID="J-300" Type="Product"
  Status="Waiting" Version="1.6" shop:desk="3">
  <ResourcePool>
    <Component ID="Books" Class="Quantity" ComponentType="Block FinalProduct" Status="Unavailable"><shop:Shelf   no='7'/></Component>
  </ResourcePool>
  <ResourceLinkPool>
    <ComponentLink rRef="Books" Usage="Output" Amount="300"/>
  </ResourceLinkPool>
</JDF>
`;

function exported(state: Parameters<typeof ticketFile>[1], original: string | null = null): string {
  const file = ticketFile(bookletPlan(), state, original === null ? 'order' : 'jdf');
  return valueIn(exportTicket(file, original === null ? null : storedDocument(original), options));
}

const nodeOf = (doc: XmlDocument, step: string) =>
  childElements(doc.root, 'JDF').find((node) => attributeOf(node, 'JobPartID') === step)!;

describe('an exported ticket', () => {
  it('keeps everything of the document it came in', () => {
    const text = exported('running', ORIGINAL);
    expect(text).toContain('<!-- from the front office -->');
    expect(text).toContain("<shop:Shelf   no='7'/>");
    expect(text).toContain('shop:desk="3"');
  });

  it('gives what it adds IDs that are new to the document', () => {
    const ids = [...descendants(parsedXml(exported('planned', ORIGINAL)).root)].flatMap(
      (el) => attributeOf(el, 'ID') ?? [],
    );
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids.filter((id) => id.startsWith('sl_'))).toEqual(['sl_root']);
  });

  it('lets the last step make the product that the document names', () => {
    const doc = parsedXml(exported('completed', ORIGINAL));
    const pool = firstChild(nodeOf(doc, 'stitch'), 'ResourceLinkPool')!;
    const output = childElements(pool, 'ComponentLink').find(
      (link) => attributeOf(link, 'Usage') === 'Output',
    )!;
    expect(attributeOf(output, 'rRef')).toBe('Books');
    const books = firstChild(firstChild(doc.root, 'ResourcePool')!, 'Component')!;
    expect([
      attributeOf(books, 'Status'),
      attributeOf(books, 'Amount'),
      attributeOf(books, 'AmountProduced'),
    ]).toEqual(['Available', '300', '299']);
  });

  it('says of the product and of each step how far it is', () => {
    const doc = parsedXml(exported('aborted'));
    expect(attributeOf(doc.root, 'Status')).toBe('Aborted');
    expect(childElements(doc.root, 'JDF').map((node) => attributeOf(node, 'Status'))).toEqual([
      'Completed',
      'Aborted',
      'Aborted',
      'Aborted',
      'Aborted',
    ]);
  });

  it('writes several processes of one step as one Combined node', () => {
    const stitch = nodeOf(parsedXml(exported('planned')), 'stitch');
    expect([attributeOf(stitch, 'Type'), attributeOf(stitch, 'Types')]).toEqual([
      'Combined',
      'Collecting Stitching Trimming',
    ]);
    const links = childElements(firstChild(stitch, 'ResourceLinkPool')!);
    const indexes = links.map((link) => [link.local, attributeOf(link, 'CombinedProcessIndex')]);
    expect(indexes).toContainEqual(['CollectingParamsLink', '0']);
    expect(indexes).toContainEqual(['StitchingParamsLink', '1']);
    expect(indexes).toContainEqual(['TrimmingParamsLink', '2']);
    expect(indexes.filter(([name]) => name === 'ComponentLink')).toEqual([
      ['ComponentLink', '0'],
      ['ComponentLink', '2'],
    ]);
  });

  it('audits the phases, the consumption and the run of a step in the order of time', () => {
    const doc = parsedXml(exported('running'));
    const audits = valueIn(readAudits(doc, nodeOf(doc, 'print-1')));
    expect(audits.map(({ kind }) => kind)).toEqual([
      'Created',
      ...Array(4).fill('PhaseTime'),
      ...Array(5).fill('ResourceAudit'),
      'ProcessRun',
    ]);
    const times = audits.map(({ timeStamp }) => timeStamp ?? 0);
    expect(times).toEqual(times.toSorted((a, b) => a - b));
    const start = MONDAY + 120 * MINUTE;
    const phases = audits.flatMap((audit) => (audit.kind === 'PhaseTime' ? [audit] : []));
    expect(phases.map((phase) => [phase.start, phase.end, phase.status])).toEqual([
      [start, start + 10 * MINUTE, 'Setup'],
      [start + 10 * MINUTE, start + 20 * MINUTE, 'InProgress'],
      [start + 20 * MINUTE, start + 25 * MINUTE, 'Stopped'],
      [start + 25 * MINUTE, start + 40 * MINUTE, 'InProgress'],
    ]);
    // 40 minutes less the stop of 5: the standard's net time without breaks.
    expect(audits.at(-1)).toMatchObject({
      kind: 'ProcessRun',
      endStatus: 'Completed',
      durationS: 35 * 60,
    });
  });

  it('states what was used before what was planned', () => {
    const doc = parsedXml(exported('completed'));
    const audits = readAudits(doc, nodeOf(doc, 'plates-1'));
    const used = audits.ok ? audits.value.find(({ kind }) => kind === 'ResourceAudit') : undefined;
    expect(used).toMatchObject({
      links: [
        {
          name: 'Media',
          partAmounts: [{ actualAmount: 8 }, { actualAmount: 2, parts: [{ Condition: 'Waste' }] }],
        },
        { name: 'Media', amount: 8 },
      ],
    });
  });

  it('is an open phase while a step runs, and has no run yet', () => {
    const doc = parsedXml(exported('running'));
    const audits = readAudits(doc, nodeOf(doc, 'stitch'));
    const list = audits.ok ? audits.value : [];
    expect(list.at(-1)).toMatchObject({ kind: 'PhaseTime', status: 'InProgress' });
    expect(list.at(-1)).not.toHaveProperty('end');
    expect(list.some(({ kind }) => kind === 'ProcessRun')).toBe(false);
  });

  it('reads as the product that was ordered when it came as an order', () => {
    const value = valueIn(readProduct(parsedXml(exported('planned'))));
    expect(value.jobId?.value).toBe('J-300');
    expect(value.amount.value).toBe(300);
    expect(value.pages?.value).toBe(16);
    expect(value.bindingType?.value).toBe('SaddleStitch');
    expect(value.finishedDimensionsMm?.value.widthMm).toBeCloseTo(210, 3);
    expect(value.finishedDimensionsMm?.value.heightMm).toBeCloseTo(297, 3);
    expect(value.inksFront?.value).toEqual(['Cyan', 'Magenta', 'Yellow', 'Black']);
    expect(value.weightGsm?.value).toBe(115);
    expect(value.due?.value).toBe(MONDAY + 3 * 24 * 60 * MINUTE);
    expect(value.jobPriority?.value).toBe(60);
    expect(value.customerName?.value).toBe('Harbour players');
  });

  it('says of a step that a device has that it is out, and beside it how far it is', () => {
    const doc = parsedXml(exported('running'));
    const stitch = nodeOf(doc, 'stitch');
    expect([attributeOf(stitch, 'Status'), attributeOf(stitch, 'StatusDetails')]).toEqual([
      'Spawned',
      'InProgress',
    ]);
    const info = firstChild(firstChild(stitch, 'ResourcePool')!, 'NodeInfo')!;
    expect([attributeOf(info, 'NodeStatus'), attributeOf(info, 'NodeStatusDetails')]).toEqual([
      'InProgress',
      'Good',
    ]);
    const audits = childElements(firstChild(doc.root, 'AuditPool')!);
    const left = audits.find((audit) => attributeOf(audit, 'jRef') === attributeOf(stitch, 'ID'))!;
    expect([left.local, attributeOf(left, 'NewSpawnID'), attributeOf(left, 'Status')]).toEqual([
      'Spawned',
      ticketFile(bookletPlan(), 'running').entries.at(-1)!.id,
      'Waiting',
    ]);
    const times = audits.map((audit) => Date.parse(attributeOf(audit, 'TimeStamp')!));
    expect(times).toEqual(times.toSorted((a, b) => a - b));
  });

  it('says in the newer generation, which knows no leaving, how far a step is', () => {
    const newer = convertDocument(parsedXml(exported('running')), 'xjdf');
    const text = newer.ok ? writeXml(newer.value.doc) : '';
    expect(text).toMatch(/<NodeInfo [^>]*Status="InProgress"/);
    expect(text).not.toContain('Spawned');
  });

  it('has nothing out that no device took, and nothing once it came back', () => {
    const file = ticketFile(bookletPlan(), 'running');
    const refused = file.entries.map((entry) => ({ ...entry, delivery: 'refused' as const }));
    const none = exportTicket({ ...file, entries: refused }, null, options);
    expect(none.ok && none.value).not.toMatch(/Spawned|Merged/);
    expect(exported('completed')).not.toMatch(/Status="Spawned"|SpawnIDs/);
  });

  it('keeps what was recorded where what came back is not the ticket that left', () => {
    const file = ticketFile(bookletPlan(), 'completed');
    const [first] = file.entries;
    const returned = new Map([[first!.id, new TextEncoder().encode(ORIGINAL)]]);
    const made = exportTicket(file, null, { ...options, returned });
    const plain = exportTicket(file, null, options);
    expect(made.ok && plain.ok && made.value === plain.value).toBe(true);
    expect(made.problems).toMatchObject([{ code: 'JDF_MERGE', severity: 'warning' }]);
  });

  it('is refused without a plan, and with a plan that lacks what a machine must know', () => {
    const file = ticketFile(bookletPlan(), 'planned');
    const without = exportTicket({ ...file, ticket: { ...file.ticket, plan: null } }, null, options);
    expect(without.problems[0]?.code).toBe('PLAN_MISSING');
    const lacking = { ...file, ticket: { ...file.ticket, plan: { ...bookletPlan(), folding: [] } } };
    expect(exportTicket(lacking, null, options)).toMatchObject({
      ok: false,
      problems: [{ path: '/folding' }],
    });
  });
});
