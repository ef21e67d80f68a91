import { done, error, type Result, refuse } from '#libs/kernel';
import { splitTokens } from '../../codec/index.js';
import {
  attributeOf,
  childElements,
  documentOf,
  firstChild,
  indented,
  type XmlAttribute,
  type XmlDocument,
  type XmlElement,
  XSI_NAMESPACE,
} from '../../xml/index.js';
import { addAll } from '../add-all.js';
import { jdfVocabulary } from '../facts.js';
import { attributeNode } from '../ledger.js';
import { familyOf, olderPipe } from '../message-names.js';
import { type Overflow, overflowFor, sourceOf, without } from '../source.js';
import type { Converted } from '../to-xjdf/convert.js';
import { carryAttribute, complete, type Direction, Draft, fillDraft, finish } from '../translate.js';
import { declaredAtRoot } from '../write.js';
import { toOlder } from './direction.js';
import { olderResourceInfos } from './resource-info.js';
import { bundlesOf } from './sets.js';
import { Ticket } from './ticket.js';
import { writeBundle } from './write-resource.js';

interface Desk {
  readonly ticket: Ticket;
  readonly direction: Direction;
}

/** An XJMF as JMF. Refused where none of its messages exists there. Error: JMF_TYPE. */
export function messagesToJmf(doc: XmlDocument): Result<Converted> {
  const ticket = new Ticket(doc);
  const direction = toOlder(ticket);
  const { root } = doc;
  const draft = new Draft('JMF', jdfVocabulary.named('JMF')!);
  draft.attributes.set('Version', '1.7');
  const head = firstChild(root, 'Header');
  for (const [newer, older] of OF_ROOT) {
    const stated = head && attributeNode(head, newer);
    if (stated !== undefined)
      carryAttribute(direction, 'Header', stated, draft, overflowFor({}), { local: older });
  }
  if (head !== undefined) {
    ticket.ledger.carry(head);
    ticket.ledger.carryNamed(head, 'ID');
  }
  if (!draft.attributes.has('SenderID')) draft.attributes.set('SenderID', 'Unknown');
  if (!draft.attributes.has('TimeStamp')) draft.attributes.set('TimeStamp', '1970-01-01T00:00:00Z');
  const messages = childElements(root).flatMap((el) =>
    el.local === 'Header' ? [] : (message({ ticket, direction }, el) ?? []),
  );
  if (messages.length === 0) {
    const path = `/${root.name}`;
    return refuse(error('JMF_TYPE', 'JMF has none of these messages.', { path, line: root.line || null }));
  }
  addAll(draft.children, messages);
  ticket.ledger.carry(root);
  ticket.ledger.carryNamed(root, 'Version');
  const written = finish(direction, draft);
  return done({ doc: documentOf(indented(declaredAtRoot(written, root))), lost: ticket.ledger.losses() });
}

const OF_ROOT = [
  ['DeviceID', 'SenderID'],
  ['Time', 'TimeStamp'],
  ['AgentName', 'AgentName'],
  ['AgentVersion', 'AgentVersion'],
  ['ICSVersions', 'ICSVersions'],
] as const;
const OF_MESSAGE = [
  ['ID', 'ID'],
  ['refID', 'refID'],
  ['Time', 'Time'],
  ['DeviceID', 'SenderID'],
  ['AgentName', 'AgentName'],
  ['AgentVersion', 'AgentVersion'],
  ['ICSVersions', 'ICSVersions'],
] as const;

function message(desk: Desk, el: XmlElement): XmlElement | undefined {
  const { ticket, direction } = desk;
  const name = familyOf(el.local);
  if (name === undefined) {
    ticket.ledger.reason(el, 'no message of the older generation');
    return undefined;
  }
  const params = childElements(el).find(({ local }) => local.endsWith('Params'));
  const type = olderType(name.type, params);
  const typed = jdfVocabulary.named(`${name.family}${type}`);
  const shape = typed ?? jdfVocabulary.named(name.family)!;
  const mark = ticket.ledger.mark;
  const draft = new Draft(name.family, shape);
  const head = firstChild(el, 'Header');
  const overflow = overflowFor({});
  for (const [newer, older] of OF_MESSAGE) {
    const stated = head && attributeNode(head, newer);
    if (stated !== undefined) carryAttribute(direction, 'Header', stated, draft, overflow, { local: older });
  }
  ticket.time = (head && attributeOf(head, 'Time')) ?? attributeOf(ticket.doc.root, 'Time');
  if (!draft.attributes.has('ID')) draft.attributes.set('ID', ticket.ids.make('M'));
  draft.attributes.set('Type', type);
  content(desk, el, head, params, type, draft, overflow);
  const missing = complete(direction, sourceOf(el), draft);
  if (missing !== undefined) {
    ticket.ledger.back(mark);
    ticket.ledger.reason(el, `JMF asks for ${missing}, which is not said here`);
    return undefined;
  }
  ticket.ledger.carry(el, head);
  addAll(draft.children, overflow.nodes);
  const written = finish(direction, draft);
  return typed === undefined
    ? written
    : { ...written, attributes: [...written.attributes, typeOf(name.family, type)] };
}

function typeOf(family: string, type: string): XmlAttribute {
  return { name: 'xsi:type', prefix: 'xsi', local: 'type', uri: XSI_NAMESPACE, value: `${family}${type}` };
}

/** Operations are messages of their own in the older generation. An answer does not say what it answers. */
function olderType(type: string, params: XmlElement | undefined): string {
  const operation = params && attributeOf(params, 'Operation');
  if (type === 'PipeControl' && operation !== undefined) return olderPipe(operation) ?? type;
  if (type !== 'ModifyQueueEntry' || params === undefined || operation === undefined) return type;
  if (operation === 'Abort' || operation === 'Complete') return 'AbortQueueEntry';
  if (operation !== 'Move') return `${operation}QueueEntry`;
  return attributeOf(params, 'Priority') === undefined ? 'SetQueueEntryPosition' : 'SetQueueEntryPriority';
}

function content(
  desk: Desk,
  el: XmlElement,
  head: XmlElement | undefined,
  params: XmlElement | undefined,
  type: string,
  draft: Draft,
  overflow: Overflow,
): void {
  const { ticket, direction } = desk;
  const infos = childElements(el, 'ResourceInfo');
  const devices = draft.shape.byName.has('DeviceList') ? childElements(el, 'Device') : [];
  const source = without(sourceOf(el), [...infos, ...devices, ...(head === undefined ? [] : [head])]);
  const isEntry = params?.local === 'ModifyQueueEntryParams';
  const isPipe = params?.local === 'PipeParams';
  fillDraft(direction, isEntry || isPipe ? without(source, [params]) : source, draft, overflow);
  if (isPipe) addAll(draft.children, pipeParams(desk, params, draft, overflow));
  if (isEntry) addAll(draft.children, entryParams(desk, params, type, draft, overflow));
  const key = draft.shape.byName.get('ResourceInfo')?.shape;
  if (key !== undefined) {
    addAll(
      draft.children,
      infos.flatMap((info) => olderResourceInfos(ticket, direction, info, key, overflow)),
    );
  }
  if (devices.length > 0) draft.children.push(deviceList(desk, devices, draft, overflow));
}

/** A pipe with what goes through it. */
function pipeParams(
  { ticket, direction }: Desk,
  params: XmlElement,
  draft: Draft,
  overflow: Overflow,
): XmlElement[] {
  ticket.ledger.carryNamed(params, 'Operation');
  const key = draft.shape.byName.get('PipeParams')?.shape;
  if (key === undefined) return [];
  const set = firstChild(params, 'ResourceSet');
  const out = new Draft('PipeParams', direction.to.shape(key)!);
  fillDraft(direction, without(sourceOf(params), set === undefined ? [] : [set]), out, overflow);
  if (complete(direction, sourceOf(params), out) !== undefined) return [];
  ticket.ledger.carry(params);
  if (set !== undefined) {
    for (const bundle of bundlesOf(ticket, set)) {
      const resource = writeBundle(ticket, direction, bundle, undefined);
      if (resource !== undefined) out.children.push(resource);
    }
    ticket.ledger.carry(set);
    ticket.ledger.carryNamed(set, 'Name', 'ID');
  }
  return [finish(direction, out)];
}

/** Devices stand in a list of what each is doing, which is not said here. */
function deviceList(
  desk: Desk,
  devices: readonly XmlElement[],
  draft: Draft,
  overflow: Overflow,
): XmlElement {
  const { direction, ticket } = desk;
  const list = new Draft('DeviceList', direction.to.shape(draft.shape.byName.get('DeviceList')!.shape)!);
  for (const device of devices) {
    const info = new Draft('DeviceInfo', direction.to.shape(list.shape.byName.get('DeviceInfo')!.shape)!);
    info.attributes.set('DeviceStatus', 'Unknown');
    const one = new Draft('Device', direction.to.shape(info.shape.byName.get('Device')!.shape)!);
    fillDraft(direction, sourceOf(device), one, overflow);
    ticket.ledger.carry(device);
    info.children.push(finish(direction, one));
    list.children.push(finish(direction, info));
  }
  return finish(direction, list);
}

/** Which entries, and what with them, in the words of each command. */
function entryParams(
  desk: Desk,
  params: XmlElement,
  type: string,
  draft: Draft,
  overflow: Overflow,
): XmlElement[] {
  const { direction, ticket } = desk;
  ticket.ledger.carry(params);
  ticket.ledger.carryNamed(params, 'Operation');
  const filter = firstChild(params, 'QueueFilter');
  const name = [...draft.shape.byName.keys()].find((one) => one.endsWith('Params'));
  const shape = name === undefined ? undefined : direction.to.shape(draft.shape.byName.get(name)!.shape);
  if (name === undefined || shape === undefined) return [];
  const out = new Draft(name, shape);
  const source = sourceOf(params);
  fillDraft(direction, { ...source, children: [] }, out, overflow);
  if (type === 'AbortQueueEntry') {
    out.attributes.set(
      'EndStatus',
      attributeOf(params, 'Operation') === 'Complete' ? 'Completed' : 'Aborted',
    );
  }
  const place = shape.byName.get('QueueFilter');
  const ids = splitTokens((filter && attributeOf(filter, 'QueueEntryIDs')) ?? '');
  if (place === undefined && ids[0] !== undefined && shape.attributes.has('QueueEntryID')) {
    out.attributes.set('QueueEntryID', ids[0]);
    if (ids.length === 1) {
      ticket.ledger.carry(filter);
      ticket.ledger.carryNamed(filter!, 'QueueEntryIDs');
    }
  }
  if (filter !== undefined && place !== undefined) {
    const written = new Draft('QueueFilter', direction.to.shape(place.shape)!);
    fillDraft(direction, without(sourceOf(filter), [], ['QueueEntryIDs']), written, overflow);
    for (const id of ids) {
      const def = new Draft('QueueEntryDef', direction.to.shape('QueueEntryDef')!);
      def.attributes.set('QueueEntryID', id);
      written.children.push(finish(direction, def));
    }
    ticket.ledger.carry(filter);
    ticket.ledger.carryNamed(filter, 'QueueEntryIDs');
    out.children.push(finish(direction, written));
  }
  return [finish(direction, out)];
}
