/**
 * Random job tickets with work on parts of them, to try spawning and merging: process nodes in a chain, some in groups,
 * with shared and own resources, partitions by sheet and content of a foreign namespace. Our own invention throughout.
 */
import fc from 'fast-check';
import { attributeOf, descendants, type PartKeys, type XmlDocument, type XmlElement } from '#libs/jdf';

/** Processes that take one Component and make one, with their parameters. Source: the official JDF schema. */
const PROCESSES = ['Cutting', 'Folding', 'Trimming', 'Stitching'] as const;

export interface ProcessPlan {
  readonly type: (typeof PROCESSES)[number];
  /** In which group it lies: 0 for none. */
  readonly group: number;
  readonly ownInfo: boolean;
  readonly foreign: boolean;
  readonly audited: boolean;
  readonly locked: boolean;
}

export interface TicketPlan {
  readonly processes: readonly ProcessPlan[];
  readonly sheets: number;
  readonly prefix: string;
  readonly work: readonly WorkPlan[];
}

/** What happens to one node or part while it is out; numbers choose among what there is. */
export interface WorkPlan {
  readonly target: number;
  readonly partial: boolean;
  readonly nested: boolean;
  readonly edits: readonly { readonly kind: (typeof EDITS)[number]; readonly value: number }[];
}

const EDITS = [
  'status',
  'schedule',
  'made',
  'amount',
  'audit',
  'resource',
  'reference',
  'foreign',
  'node',
] as const;

export const ticketPlans: fc.Arbitrary<TicketPlan> = fc.record({
  processes: fc.array(
    fc.record({
      type: fc.constantFrom(...PROCESSES),
      group: fc.integer({ min: 0, max: 2 }),
      ownInfo: fc.boolean(),
      foreign: fc.boolean(),
      audited: fc.boolean(),
      locked: fc.boolean(),
    }),
    { minLength: 1, maxLength: 5 },
  ),
  sheets: fc.integer({ min: 1, max: 3 }),
  prefix: fc.constantFrom('', 'j:'),
  work: fc.array(
    fc.record({
      target: fc.nat(20),
      partial: fc.boolean(),
      nested: fc.boolean(),
      edits: fc.array(fc.record({ kind: fc.constantFrom(...EDITS), value: fc.nat(5) }), { maxLength: 6 }),
    }),
    { minLength: 1, maxLength: 6 },
  ),
});

const sheetsOf = (plan: TicketPlan): string[] => Array.from({ length: plan.sheets }, (_, i) => `S${i + 1}`);

/** The ticket as text. */
export function ticketText(plan: TicketPlan): string {
  const { prefix: p, processes } = plan;
  const tag = (name: string, attributes: string, inner = ''): string =>
    inner === '' ? `<${p}${name} ${attributes}/>` : `<${p}${name} ${attributes}>${inner}</${p}${name}>`;
  const parts = (name: string, more = ''): string =>
    sheetsOf(plan)
      .map((sheet) => tag(name, `SheetName="${sheet}"${more}`))
      .join('');
  const info = (i: number): string =>
    tag(
      'NodeInfo',
      `ID="info${i}" Class="Parameter" Status="Available" PartIDKeys="SheetName" NodeStatus="Waiting"`,
      parts('NodeInfo', ' NodeStatus="Waiting"'),
    );
  const component = (i: number): string =>
    tag(
      'Component',
      `ID="c${i}" Class="Quantity" Status="Unavailable" ComponentType="Sheet" PartIDKeys="SheetName" f:place="${i}"`,
      `${tag('MediaRef', 'rRef="paper"')}${parts('Component')}`,
    );
  const node = ({ type, ownInfo, foreign, audited, locked }: ProcessPlan, i: number): string => {
    const own = tag(
      `${type}Params`,
      `ID="params${i}" Class="Parameter" Status="Available"${locked ? ' Locked="true"' : ''}`,
    );
    const amounts = tag(
      'AmountPool',
      '',
      sheetsOf(plan)
        .map((sheet) => tag('PartAmount', 'Amount="10"', tag('Part', `SheetName="${sheet}"`)))
        .join(''),
    );
    const links = [
      tag(`${type}ParamsLink`, `rRef="params${i}" Usage="Input"`),
      tag('NodeInfoLink', `rRef="info${i}" Usage="Input"`),
      tag('ComponentLink', `rRef="c${i}" Usage="Input"`),
      tag('ComponentLink', `rRef="c${i + 1}" Usage="Output"`, amounts),
    ].join('\n');
    const audits = audited
      ? tag('AuditPool', '', tag('Created', `TimeStamp="2026-05-01T08:00:0${i}Z" AgentName="order"`))
      : '';
    return tag(
      'JDF',
      `ID="n${i}" JobPartID="part${i}" Type="${type}" xsi:type="${p}${type}" Status="Waiting"${foreign ? ` xmlns:g="urn:example:g${i}" g:own="${i}"` : ''}`,
      `\n${audits}${foreign ? `<g:note>n${i} <f:in/></g:note>` : ''}${tag('ResourcePool', '', `\n${own}\n${ownInfo ? info(i) : ''}\n`)}${tag('ResourceLinkPool', '', links)}\n`,
    );
  };
  const all = processes.map((process, i) => ({ process, text: node(process, i) }));
  const grouped = [1, 2].flatMap((group) => {
    const inner = all.filter(({ process }) => process.group === group);
    return inner.length === 0
      ? []
      : [
          tag(
            'JDF',
            `ID="g${group}" JobPartID="group${group}" Type="ProcessGroup" xsi:type="${p}ProcessGroup" Status="Waiting"`,
            inner.map(({ text }) => text).join('\n'),
          ),
        ];
  });
  const loose = all.filter(({ process }) => process.group === 0).map(({ text }) => text);
  const shared = [
    tag(
      'Media',
      'ID="paper" Class="Consumable" Status="Available" MediaType="Paper" f:rack="7"',
      '<f:batch>&#233; &amp; B</f:batch>',
    ),
    tag(
      'CustomerInfo',
      'ID="customer" Class="Parameter" Status="Available" CustomerID="K7"',
      tag('ContactRef', 'rRef="contact"'),
    ),
    tag('Contact', 'ID="contact" Class="Parameter" Status="Available" ContactTypes="Customer"'),
    ...[...processes.keys(), processes.length].map(component),
    ...processes.flatMap(({ ownInfo }, i) => (ownInfo ? [] : [info(i)])),
  ].join('\n    ');
  const xmlns = `xmlns${p === '' ? '' : ':j'}="http://www.CIP4.org/JDFSchema_1_1"`;
  return `<?xml version="1.0" encoding="UTF-8"?>
${tag(
  'JDF',
  `${xmlns} xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance" xmlns:f="urn:example:foreign" ID="root" JobID="J7" JobPartID="all" Type="Product" xsi:type="${p}Product" Status="Waiting" Version="1.9" MaxVersion="1.9"`,
  `
  ${tag('ResourcePool', '', `\n    ${shared}\n  `)}
  ${tag('ResourceLinkPool', '', `${tag('CustomerInfoLink', 'rRef="customer" Usage="Input"')}${tag('ComponentLink', `rRef="c${processes.length}" Usage="Output"`)}`)}
  ${[...grouped, ...loose].join('\n  ')}
`,
)}
`;
}

/** One thing to be spawned, edited and merged, with what is spawned from it in turn. */
export interface Work {
  readonly nodeId: string;
  readonly parts: readonly PartKeys[];
  readonly edits: readonly Edit[];
  readonly inner: readonly Work[];
  readonly spawnId: string;
}

export interface Edit {
  readonly kind: (typeof EDITS)[number];
  readonly value: number;
  /** Unique in the ticket. */
  readonly key: string;
}

/** The schedules in outer pools that have to be changed out there, besides what is made there. */
export function schedulesOf(plan: TicketPlan, { nodeId, parts }: Work): string[] {
  if (parts.length > 0) return [];
  return plan.processes.flatMap(({ ownInfo, group }, i) =>
    !ownInfo && (nodeId === `n${i}` || nodeId === `g${group}`) ? [`info${i}`] : [],
  );
}

/** The work of a plan as far as its pieces don't overlap: each node, or each part of one, is out once at most. */
export function workOf(plan: TicketPlan): Work[] {
  const groups = [1, 2].filter((group) => plan.processes.some((one) => one.group === group));
  const targets = [...plan.processes.map((_, i) => `n${i}`), ...groups.map((group) => `g${group}`)];
  const memberOf = (id: string): string =>
    id.startsWith('n') ? `g${plan.processes[Number(id.slice(1))]!.group}` : id;
  const taken = new Set<string>();
  const found: (Omit<Work, 'inner'> & { inner: Work[] })[] = [];
  const entries = [...plan.work.entries()].map(([at, work]) => ({
    at,
    work,
    nodeId: targets[work.target % targets.length]!,
  }));
  // Groups come first, so that something can leave from inside them.
  for (const { at, work, nodeId } of entries.sort((a, b) => a.nodeId.localeCompare(b.nodeId))) {
    const edits = work.edits.map((edit, i) => ({ ...edit, key: `w${at}e${i}` }));
    const base = { nodeId, edits, spawnId: `t${at}`, inner: [] };
    const outer = found.find((one) => one.nodeId === memberOf(nodeId) && one.nodeId !== nodeId);
    const sheets = sheetsOf(plan);
    const parts =
      work.partial && nodeId.startsWith('n') ? [{ SheetName: sheets[work.target % sheets.length]! }] : [];
    const names =
      parts.length === 0
        ? [nodeId, ...sheets.map((sheet) => `${nodeId}/${sheet}`)]
        : parts.map(({ SheetName }) => `${nodeId}/${SheetName}`);
    // A group is not out as long as one of its nodes is, and a node leaves with its group or from it.
    const blocked =
      nodeId.startsWith('g') && [...taken].some((name) => memberOf(name.split('/')[0]!) === nodeId);
    if (blocked || names.some((name) => taken.has(name)) || taken.has(nodeId)) continue;
    if (outer !== undefined && !work.nested) continue;
    for (const name of names) taken.add(name);
    (outer?.inner ?? found).push({ ...base, parts });
  }
  return found;
}

const LEFT_OUT = ['SpawnStatus', 'SpawnIDs', 'Locked'];
const SORTED = ['JDF', 'ResourcePool', 'ResourceLinkPool', 'AuditPool'];

/**
 * What a ticket says, for comparing: without prefixes and white space, without locks and records of spawning, nodes and pools in
 * the order of their content.
 */
export function saidBy(el: XmlElement): string {
  const attributes = el.attributes
    .filter(({ name, uri, local }) => !name.startsWith('xmlns') && !(uri === '' && LEFT_OUT.includes(local)))
    .map(({ uri, local, value }) => `${uri}|${local}=${JSON.stringify(value.replace(/^j:/, ''))}`)
    .sort();
  const children = el.children.flatMap((child): string[] => {
    if (child.kind !== 'element') return child.value.trim() === '' ? [] : [JSON.stringify(child.value)];
    if (child.local === 'Spawned' || child.local === 'Merged') return [];
    const said = saidBy(child);
    return child.local === 'AuditPool' && !said.includes('(') ? [] : [said];
  });
  const ordered = SORTED.includes(el.local) ? children.sort() : children;
  return `<${el.uri}|${el.local} ${attributes.join(' ')}${ordered.length === 0 ? '' : ` (${ordered.join('\n')})`}>`;
}

/** Whether anything in the ticket still says that something is out. */
export function marksLeft(doc: XmlDocument): string[] {
  return [...descendants(doc.root)].flatMap((el) =>
    ['SpawnStatus', 'SpawnIDs', 'SpawnID'].flatMap((name) =>
      attributeOf(el, name) === undefined ? [] : [`${el.local} ${name}`],
    ),
  );
}
