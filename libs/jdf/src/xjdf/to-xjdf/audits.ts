import { keysOf } from '../../elements/part.js';
import { inheritedAttribute } from '../../ticket/node.js';

import { attributeOf, childElements, firstChild, type XmlElement } from '../../xml/index.js';
import { addAll } from '../add-all.js';
import { attributeNode } from '../ledger.js';
import { type Overflow, type Source, sourceOf } from '../source.js';
import { carryAttribute, complete, Draft, fillDraft, finish } from '../translate.js';
import { asToken } from '../values.js';
import { actualAudits } from './actual-audits.js';
import { type Job, newerResource } from './job.js';
import { selectedLeaves } from './leaves.js';
import { type Resources, shapeOf } from './resources.js';

interface Desk {
  readonly job: Job;
  readonly resources: Resources;
  readonly node: XmlElement;
}

type Writer = (desk: Desk, audit: XmlElement, overflow: Overflow) => XmlElement | undefined;

const WRITERS: Readonly<Record<string, readonly [name: string, write: Writer]>> = {
  Created: ['AuditCreated', () => undefined],
  PhaseTime: ['AuditStatus', phase],
  ProcessRun: ['AuditProcessRun', (desk, audit, overflow) => same(desk, audit, 'ProcessRun', overflow)],
  ResourceAudit: ['AuditResource', resourceInfo],
  Notification: ['AuditNotification', (desk, audit, overflow) => same(desk, audit, 'Notification', overflow)],
};

/** The audits of all nodes in one pool. Spawning, merging and changes of the document have no audit there. */
export function convertAudits(
  job: Job,
  resources: Resources,
  nodes: readonly XmlElement[],
): XmlElement | undefined {
  const pool = new Draft('AuditPool', shapeOf('AuditPool'));
  for (const node of nodes) {
    for (const audit of childElements(node, 'AuditPool').flatMap((one) => childElements(one))) {
      const written = convertAudit({ job, resources, node }, audit);
      if (written !== undefined) pool.children.push(written);
    }
    addAll(pool.children, actualAudits(job, resources, node));
  }
  if (pool.children.length === 0) return undefined;
  // Audits stand in the order in which they were written, whatever their kinds.
  return { ...finish(resources.direction, pool), children: [...pool.children] };
}

function convertAudit(desk: Desk, audit: XmlElement): XmlElement | undefined {
  const { ledger } = desk.job;
  const writer = Object.hasOwn(WRITERS, audit.local) ? WRITERS[audit.local] : undefined;
  if (writer === undefined) {
    ledger.reason(audit, 'the newer generation has no such audit');
    return undefined;
  }
  const [name, write] = writer;
  const mark = ledger.mark;
  const overflow: Overflow = { nodes: [], originals: [], keys: {} };
  const head = header(desk, audit);
  const payload = write(desk, audit, overflow);
  if (payload === undefined && audit.local !== 'Created') {
    ledger.back(mark);
    ledger.reason(audit, 'does not say what the newer generation asks for');
    return undefined;
  }
  const draft = new Draft(name, shapeOf(name));
  draft.children.push(head, ...(payload === undefined ? [] : [payload]));
  addAll(
    draft.children,
    overflow.nodes.filter(({ uri }) => uri !== desk.resources.direction.uri),
  );
  ledger.carry(audit);
  return finish(desk.resources.direction, draft);
}

const OF_HEADER = ['AgentName', 'AgentVersion', 'Author', 'ID', 'refID', 'DescriptiveName'] as const;

function header(desk: Desk, audit: XmlElement): XmlElement {
  const { direction } = desk.resources;
  const draft = new Draft('Header', shapeOf('Header'));
  const overflow: Overflow = { nodes: [], originals: [], keys: {} };
  for (const name of OF_HEADER) {
    const attribute = attributeNode(audit, name);
    if (attribute !== undefined) carryAttribute(direction, 'Header', attribute, draft, overflow);
  }
  const time = attributeNode(audit, 'TimeStamp');
  if (time !== undefined) carryAttribute(direction, 'Header', time, draft, overflow, { local: 'Time' });
  const employee = firstChild(audit, 'Employee');
  const person = employee && attributeNode(employee, 'PersonalID');
  if (audit.local !== 'PhaseTime' && person !== undefined) {
    if (carryAttribute(direction, 'Header', person, draft, overflow)) desk.job.ledger.carry(employee);
  }
  const device = firstChild(audit, 'Device');
  const id = device && attributeNode(device, 'DeviceID');
  if (id !== undefined) carryAttribute(direction, 'Header', id, draft, overflow);
  // Who wrote the audit is the device or controller; the older generation names only the program.
  if (!draft.attributes.has('DeviceID'))
    draft.attributes.set('DeviceID', asToken(attributeOf(audit, 'AgentName') ?? 'Unknown'));
  if (!draft.attributes.has('Time')) draft.attributes.set('Time', '1970-01-01T00:00:00Z');
  return finish(direction, draft);
}

/** A payload of the same name and content. */
function same(desk: Desk, audit: XmlElement, name: string, overflow: Overflow): XmlElement | undefined {
  const source = withoutHeader(audit);
  const draft = new Draft(name, shapeOf(name));
  fillDraft(desk.resources.direction, source, draft, overflow);
  if (complete(desk.resources.direction, source, draft) !== undefined) return undefined;
  return finish(desk.resources.direction, draft);
}

function withoutHeader(audit: XmlElement): Source {
  const known = new Set<string>([...OF_HEADER, 'TimeStamp']);
  const source = sourceOf(audit);
  return {
    ...source,
    attributes: source.attributes.filter(({ local, uri }) => uri !== '' || !known.has(local)),
  };
}

const DEVICE_STATUS: Readonly<Record<string, string>> = {
  TestRunInProgress: 'Setup',
  Setup: 'Setup',
  InProgress: 'Production',
  Cleanup: 'Cleanup',
  Stopped: 'Stopped',
  Suspended: 'Idle',
  Spawned: 'Idle',
};

/** A phase is what a Status signal of the time would have said: the device with the job on it. */
function phase(desk: Desk, audit: XmlElement, overflow: Overflow): XmlElement | undefined {
  const { direction } = desk.resources;
  const { ledger } = desk.job;
  const job = new Draft('JobPhase', shapeOf('JobPhase'));
  const info = new Draft('DeviceInfo', shapeOf('DeviceInfo'));
  const onDevice = new Set(['Device', 'DeviceRef', 'Employee', 'EmployeeRef']);
  const source = withoutHeader(audit);
  const of = (yes: boolean): Source => ({
    ...source,
    attributes: yes ? [] : source.attributes,
    children: source.children.filter(
      (child) => onDevice.has(child.local) === yes && child.local !== 'ResourceLink',
    ),
  });
  for (const [from, to] of [
    ['Start', 'StartTime'],
    ['End', 'EndTime'],
  ] as const) {
    const attribute = attributeNode(audit, from);
    if (attribute !== undefined)
      carryAttribute(direction, 'JobPhase', attribute, job, overflow, { local: to });
  }
  fillDraft(direction, of(false), job, overflow);
  fillDraft(direction, of(true), info, overflow);
  jobKeys(desk, job, overflow);
  phaseAmounts(desk, audit, job, overflow);
  info.attributes.set('Status', DEVICE_STATUS[attributeOf(audit, 'Status') ?? ''] ?? 'Idle');
  if (complete(direction, source, job) !== undefined) return undefined;
  info.children.push(finish(direction, job));
  ledger.carry(audit);
  return finish(direction, info);
}

function jobKeys(desk: Desk, draft: Draft, overflow: Overflow): void {
  for (const name of ['JobID', 'JobPartID']) {
    const found = inheritedAttribute(desk.job.doc, desk.node, name);
    const attribute = found && attributeNode(found.at, name);
    if (attribute !== undefined)
      carryAttribute(desk.resources.direction, 'JobPhase', attribute, draft, overflow);
  }
  if (!draft.attributes.has('JobID'))
    draft.attributes.set('JobID', attributeOf(desk.job.doc.root, 'ID') ?? 'Unknown');
}

/** Good and waste of the phase: amounts of the links to what is made. */
function phaseAmounts(desk: Desk, audit: XmlElement, draft: Draft, overflow: Overflow): void {
  const { direction } = desk.resources;
  for (const link of childElements(audit)) {
    if (!link.local.endsWith('Link') || attributeOf(link, 'Usage') !== 'Output') continue;
    const pool = firstChild(link, 'AmountPool');
    const amounts = pool === undefined ? [] : childElements(pool, 'PartAmount');
    const pairs: (readonly [XmlElement, string])[] = [
      [link, 'Amount'],
      ...amounts.map((one) => {
        const waste = childElements(one, 'Part').some((part) => attributeOf(part, 'Condition') === 'Waste');
        return [one, waste ? 'Waste' : 'Amount'] as const;
      }),
    ];
    for (const [el, to] of pairs) {
      const attribute = attributeNode(el, 'ActualAmount');
      if (attribute === undefined) continue;
      if (!carryAttribute(direction, 'JobPhase', attribute, draft, overflow, { local: to })) continue;
      for (const part of childElements(el, 'Part')) desk.job.ledger.carryAll(part);
      desk.job.ledger.carryNamed(link, 'rRef', 'Usage');
    }
  }
}

/** What a process made or used: the resource of the first link, which is the new state. */
function resourceInfo(desk: Desk, audit: XmlElement, overflow: Overflow): XmlElement | undefined {
  const { job, resources } = desk;
  const { direction } = resources;
  const links = childElements(audit).filter(({ local }) => local.endsWith('Link'));
  const [link, old] = links;
  if (old !== undefined)
    job.ledger.reason(old, 'the newer generation has only what was, not what was planned');
  const resource = link && job.target(attributeOf(link, 'rRef') ?? '');
  if (link === undefined || resource === undefined) return undefined;
  const newer = newerResource(resource.local);
  if (newer === undefined) return undefined;
  const parts = childElements(link, 'Part').map(keysOf);
  const set = new Draft('ResourceSet', shapeOf('ResourceSet'));
  set.attributes.set('Name', newer.host ?? newer.name);
  for (const name of ['Usage', 'ProcessUsage']) {
    const attribute = attributeNode(link, name);
    if (attribute !== undefined) carryAttribute(direction, 'ResourceSet', attribute, set, overflow);
  }
  for (const leaf of selectedLeaves(resource, parts)) {
    const written = resources.element(resource, leaf, job.ids.make('Audit'), leaf.keys);
    const actual = attributeNode(link, 'ActualAmount');
    if (written === undefined) continue;
    set.children.push(actual === undefined ? written : withActual(desk, written, actual, overflow));
  }
  if (set.children.length === 0) return undefined;
  job.ledger.carry(link);
  job.ledger.carryNamed(link, 'rRef');
  for (const part of childElements(link, 'Part')) job.ledger.carryAll(part);
  const info = new Draft('ResourceInfo', shapeOf('ResourceInfo'));
  info.children.push(finish(direction, set));
  const source = withoutHeader(audit);
  fillDraft(
    direction,
    { ...source, children: source.children.filter((child) => !links.includes(child)) },
    info,
    overflow,
  );
  return finish(direction, info);
}

function withActual(
  desk: Desk,
  written: XmlElement,
  actual: NonNullable<ReturnType<typeof attributeNode>>,
  overflow: Overflow,
): XmlElement {
  const { direction } = desk.resources;
  const amount = new Draft('PartAmount', shapeOf('PartAmount'));
  if (!carryAttribute(direction, 'PartAmount', actual, amount, overflow, { local: 'Amount' })) return written;
  const pool = new Draft('AmountPool', shapeOf('AmountPool'));
  pool.children.push(finish(direction, amount));
  return { ...written, children: [finish(direction, pool), ...written.children] };
}
