import { attributeOf, childElements, firstChild, type XmlElement } from '../../xml/index.js';
import { addAll } from '../add-all.js';
import { jdfVocabulary } from '../facts.js';
import { attributeNode } from '../ledger.js';
import { type Overflow, overflowFor, type Source, sourceOf, without } from '../source.js';
import { carryAttribute, complete, type Direction, Draft, fillDraft, finish } from '../translate.js';
import { partOf } from './elements.js';
import { toldBy } from './resource-info.js';
import type { Ticket } from './ticket.js';

interface Desk {
  readonly ticket: Ticket;
  readonly direction: Direction;
  readonly audit: XmlElement;
  readonly head: XmlElement | undefined;
}

const KINDS: Readonly<Record<string, readonly [name: string, shape: string, fill: Filler]>> = {
  AuditCreated: ['Created', 'CreatedAudit', () => undefined],
  AuditNotification: ['Notification', 'NotificationAudit', payload('Notification')],
  AuditProcessRun: ['ProcessRun', 'ProcessRunAudit', payload('ProcessRun')],
  AuditResource: ['ResourceAudit', 'ResourceAudit', resource],
  AuditStatus: ['PhaseTime', 'PhaseTimeAudit', phase],
};

type Filler = (desk: Desk, draft: Draft, overflow: Overflow) => void;

/** The audits in the older generation's pool. Resources that they tell of join the ticket's. */
export function olderAudits(ticket: Ticket, direction: Direction): XmlElement | undefined {
  const pool = firstChild(ticket.doc.root, 'AuditPool');
  if (pool === undefined) return undefined;
  const draft = new Draft('AuditPool', jdfVocabulary.named('AuditPool')!);
  for (const audit of childElements(pool)) {
    const written = olderAudit(ticket, direction, audit);
    if (written !== undefined) draft.children.push(written);
  }
  ticket.ledger.carry(pool);
  if (draft.children.length === 0) return undefined;
  return { ...finish(direction, draft), children: [...draft.children] };
}

function olderAudit(ticket: Ticket, direction: Direction, audit: XmlElement): XmlElement | undefined {
  const kind = Object.hasOwn(KINDS, audit.local) ? KINDS[audit.local] : undefined;
  if (kind === undefined) return undefined;
  const [name, key, fill] = kind;
  const { ledger } = ticket;
  const mark = ledger.mark;
  const draft = new Draft(name, jdfVocabulary.shape(key)!);
  const head = firstChild(audit, 'Header');
  const overflow = overflowFor({});
  for (const [newer, older] of OF_HEADER) {
    const stated = head && attributeNode(head, newer);
    if (stated !== undefined) carryAttribute(direction, 'Header', stated, draft, overflow, { local: older });
  }
  person(direction, head, draft, overflow);
  // The program is named already.
  const device = head && attributeNode(head, 'DeviceID');
  const agent = head && attributeOf(head, 'AgentName');
  if (device !== undefined && device.value === agent) ledger.carry(device);
  fill({ ticket, direction, audit, head }, draft, overflow);
  const missing = complete(direction, sourceOf(audit), draft);
  if (missing !== undefined) {
    ledger.back(mark);
    ledger.reason(audit, `the older generation asks for ${missing}, which is not said here`);
    return undefined;
  }
  ledger.carry(audit, head);
  addAll(draft.children, overflow.nodes);
  return finish(direction, draft);
}

const OF_HEADER = [
  ['AgentName', 'AgentName'],
  ['AgentVersion', 'AgentVersion'],
  ['Author', 'Author'],
  ['DescriptiveName', 'DescriptiveName'],
  ['ID', 'ID'],
  ['refID', 'refID'],
  ['Time', 'TimeStamp'],
] as const;

function person(direction: Direction, head: XmlElement | undefined, draft: Draft, overflow: Overflow): void {
  const stated = head && attributeNode(head, 'PersonalID');
  const place = draft.shape.byName.get('Employee');
  if (stated === undefined || place === undefined) return;
  const employee = new Draft('Employee', direction.to.shape(place.shape)!);
  if (carryAttribute(direction, 'Employee', stated, employee, overflow)) {
    draft.children.push(finish(direction, employee));
  }
}

/** What the audit says lies in an element of its own, under the same names. */
function payload(name: string): Filler {
  return ({ ticket, direction, audit }, draft, overflow) => {
    const found = firstChild(audit, name);
    if (found === undefined) return;
    fillDraft(direction, sourceOf(found), draft, overflow);
    ticket.ledger.carry(found);
  };
}

/** A phase: what the device told of the job on it. */
function phase({ ticket, direction, audit, head }: Desk, draft: Draft, overflow: Overflow): void {
  const info = firstChild(audit, 'DeviceInfo');
  const job = info && firstChild(info, 'JobPhase');
  if (info === undefined || job === undefined) return;
  const { ledger } = ticket;
  const times = [
    [job, 'StartTime', 'Start'],
    [job, 'EndTime', 'End'],
    ...(head === undefined ? [] : [[head, 'Time', 'Start'] as const]),
  ] as const;
  for (const [el, newer, older] of times) {
    const stated = attributeNode(el, newer);
    if (stated !== undefined) carryAttribute(direction, 'Header', stated, draft, overflow, { local: older });
  }
  const of: Source = without(sourceOf(job), [], ['StartTime', 'EndTime', 'JobID', 'JobPartID']);
  fillDraft(direction, of, draft, overflow);
  for (const name of ['JobID', 'JobPartID']) {
    const stated = attributeNode(job, name);
    if (stated !== undefined && stated.value === attributeOf(ticket.doc.root, name)) ledger.carry(stated);
  }
  const others = info.children.filter((child) => child !== job);
  fillDraft(
    direction,
    { el: info, attributes: [], children: sourceOf({ ...info, children: others }).children },
    draft,
    overflow,
  );
  device(direction, head, draft, overflow);
  // What the device did follows from the phase of the job, if it is what a device does in it.
  if (FOLLOWS[attributeOf(job, 'Status') ?? ''] === attributeOf(info, 'Status'))
    ledger.carryNamed(info, 'Status');
  ledger.carry(info, job);
}

const FOLLOWS: Readonly<Record<string, string>> = {
  Setup: 'Setup',
  InProgress: 'Production',
  Cleanup: 'Cleanup',
  Stopped: 'Stopped',
  Suspended: 'Idle',
};

/** Who wrote the audit of a phase is the device. */
function device(direction: Direction, head: XmlElement | undefined, draft: Draft, overflow: Overflow): void {
  const id = head && attributeNode(head, 'DeviceID');
  const place = draft.shape.byName.get('Device');
  if (id === undefined || place === undefined || draft.count('Device') > 0) return;
  const made = new Draft('Device', direction.to.shape(place.shape)!);
  if (carryAttribute(direction, 'Header', id, made, overflow)) draft.children.push(finish(direction, made));
}

/** What was used or made: the resource as it was, and a link to it with the amount. */
function resource({ ticket, direction, audit }: Desk, draft: Draft, overflow: Overflow): void {
  const info = firstChild(audit, 'ResourceInfo');
  const set = info && firstChild(info, 'ResourceSet');
  if (info === undefined || set === undefined) return;
  const [told, ...more] = toldBy(ticket, direction, set);
  for (const other of more)
    ticket.ledger.note(other.leaf.resource, 'an audit of the older generation has one resource');
  if (told === undefined) return;
  addAll(
    ticket.pool,
    [told, ...more].map((one) => one.resource),
  );
  const link = new Draft(`${told.name}Link`, jdfVocabulary.shape('ResourceLink')!);
  link.attributes.set('rRef', attributeOf(told.resource, 'ID')!);
  for (const name of ['Usage', 'ProcessUsage']) {
    const stated = attributeNode(set, name);
    if (stated !== undefined) carryAttribute(direction, 'ResourceSet', stated, link, overflow);
  }
  if (!link.attributes.has('Usage')) link.attributes.set('Usage', 'Input');
  if (told.amount !== undefined) {
    carryAttribute(direction, 'PartAmount', told.amount, link, overflow, { local: 'ActualAmount' });
  }
  if (Object.keys(told.leaf.keys).length > 0) draft.children.push(partOf(told.leaf.keys));
  draft.children.push(finish(direction, link));
  fillDraft(direction, without(sourceOf(info), [set]), draft, overflow);
  ticket.ledger.carry(info, set);
  ticket.ledger.carryNamed(set, 'Name', 'ID');
}
