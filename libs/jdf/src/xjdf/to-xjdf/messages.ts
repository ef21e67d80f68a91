import { done, error, type Result, refuse } from '#libs/kernel';
import {
  attributeOf,
  childElements,
  documentOf,
  firstChild,
  indented,
  type XmlDocument,
  type XmlElement,
} from '../../xml/index.js';
import { addAll } from '../add-all.js';
import { xjdfVocabulary } from '../facts.js';
import { attributeNode } from '../ledger.js';
import { ENTRY_OPERATIONS, newerType, PIPE_OPERATIONS } from '../message-names.js';
import { type Overflow, overflowFor, sourceOf, without } from '../source.js';
import { carryAttribute, complete, Draft, fillDraft, finish } from '../translate.js';
import { asToken } from '../values.js';
import { declaredAtRoot } from '../write.js';
import type { Converted } from './convert.js';
import { Job } from './job.js';
import { Resources, shapeOf } from './resources.js';

/** A JMF as XJMF. Refused where none of its messages exists there. Error: JMF_TYPE. */
export function messagesToXjmf(doc: XmlDocument): Result<Converted> {
  const job = new Job(doc);
  const resources = new Resources(job);
  const { root } = doc;
  const draft = new Draft('XJMF', shapeOf('XJMF'));
  draft.attributes.set('Version', '2.2');
  const messages = root.children.flatMap((child) =>
    child.kind === 'element' && child.uri === root.uri ? (message(job, resources, child) ?? []) : [],
  );
  if (messages.length === 0) {
    const path = `/${root.name}`;
    return refuse(error('JMF_TYPE', 'XJMF has none of these messages.', { path, line: root.line || null }));
  }
  draft.children.push(header(job, resources, root), ...messages);
  job.ledger.carry(root);
  job.ledger.carryNamed(root, 'Version', 'MaxVersion');
  const written = finish(resources.direction, draft);
  return done({ doc: documentOf(indented(declaredAtRoot(written, root))), lost: job.ledger.losses() });
}

const OF_HEADER: readonly (readonly [older: string, newer: string])[] = [
  ['AgentName', 'AgentName'],
  ['AgentVersion', 'AgentVersion'],
  ['Author', 'Author'],
  ['ICSVersions', 'ICSVersions'],
  ['ID', 'ID'],
  ['refID', 'refID'],
  ['SenderID', 'DeviceID'],
  ['Time', 'Time'],
  ['TimeStamp', 'Time'],
];
const IN_HEADER: readonly string[] = OF_HEADER.map(([older]) => older);

/** Who sent it, when, and what it answers; a message takes from the document what it does not say itself. */
function header(job: Job, resources: Resources, el: XmlElement): XmlElement {
  const { direction } = resources;
  const { root } = job.doc;
  const draft = new Draft('Header', shapeOf('Header'));
  const overflow = overflowFor({});
  for (const [older, newer] of OF_HEADER) {
    const stated = attributeNode(el, older);
    if (stated !== undefined) carryAttribute(direction, 'Header', stated, draft, overflow, { local: newer });
  }
  const person = firstChild(el, 'Employee');
  const id = person && attributeNode(person, 'PersonalID');
  if (id !== undefined && carryAttribute(direction, 'Header', id, draft, overflow)) job.ledger.carry(person);
  for (const [name, value] of overflow.originals) job.ledger.note(el, `${name} was "${value}"`);
  if (!draft.attributes.has('DeviceID')) {
    draft.attributes.set('DeviceID', asToken(attributeOf(root, 'SenderID') ?? 'Unknown'));
  }
  const sent = attributeOf(root, 'TimeStamp');
  if (!draft.attributes.has('Time') && sent !== undefined) draft.put('Time', sent);
  if (!draft.attributes.has('Time')) draft.attributes.set('Time', '1970-01-01T00:00:00Z');
  return finish(direction, draft);
}

function message(job: Job, resources: Resources, el: XmlElement): XmlElement | undefined {
  const { ledger } = job;
  const type = attributeOf(el, 'Type') ?? '';
  const name = `${el.local}${newerType(type)}`;
  const shape = xjdfVocabulary.named(name);
  if (shape === undefined || name === el.local || !xjdfVocabulary.isMember('Message', name)) {
    ledger.reason(el, `XJMF has no ${name}`);
    return undefined;
  }
  const mark = ledger.mark;
  const draft = new Draft(name, shape);
  draft.children.push(header(job, resources, el));
  const overflow = overflowFor({});
  const source = without(sourceOf(el), childElements(el, 'Employee'), [...IN_HEADER, 'Type']);
  const wrapped = shape.byName.has('ModifyQueueEntryParams')
    ? entryParams(resources, el, ENTRY_OPERATIONS[type]!, overflow)
    : shape.byName.has('PipeParams')
      ? pipeParams(resources, el, PIPE_OPERATIONS[type]!, overflow)
      : undefined;
  if (wrapped !== undefined) {
    draft.children.push(wrapped);
    fillDraft(resources.direction, { ...source, children: [] }, draft, overflow);
  } else fillDraft(resources.direction, source, draft, overflow);
  const missing = complete(resources.direction, source, draft);
  if (missing !== undefined) {
    ledger.back(mark);
    ledger.reason(el, `XJMF asks for ${missing}, which is not said here`);
    return undefined;
  }
  ledger.carry(el);
  ledger.carryNamed(el, 'Type');
  addAll(
    draft.children,
    overflow.nodes.filter(({ uri }) => uri !== resources.direction.uri),
  );
  for (const [what, value] of overflow.originals) ledger.note(el, `${what} was "${value}"`);
  return finish(resources.direction, draft);
}

/** What is to be done with which entries of the queue. */
function entryParams(
  resources: Resources,
  el: XmlElement,
  operation: string,
  overflow: Overflow,
): XmlElement | undefined {
  const { direction } = resources;
  const { ledger } = direction;
  const params = new Draft('ModifyQueueEntryParams', shapeOf('ModifyQueueEntryParams'));
  const filter = new Draft('QueueFilter', shapeOf('QueueFilter'));
  const inner = childElements(el).find(({ local }) => local.endsWith('Params'));
  const completes = inner !== undefined && attributeOf(inner, 'EndStatus') === 'Completed';
  params.attributes.set('Operation', operation === 'Abort' && completes ? 'Complete' : operation);
  const ids: string[] = [];
  const around = [el, ...(inner === undefined ? [] : [inner])];
  for (const filters of around.flatMap((one) => childElements(one, 'QueueFilter'))) {
    const defs = childElements(filters, 'QueueEntryDef');
    fillDraft(direction, without(sourceOf(filters), defs), filter, overflow);
    ledger.carry(filters);
    for (const def of defs) addAll(ids, idOf(resources, def));
  }
  for (const def of childElements(el, 'QueueEntryDef')) addAll(ids, idOf(resources, def));
  if (inner !== undefined) {
    addAll(ids, idOf(resources, inner));
    fillDraft(direction, { ...sourceOf(inner), children: [] }, params, overflow);
    ledger.carry(inner);
    ledger.carryNamed(inner, 'EndStatus');
  }
  if (ids.length > 0) filter.attributes.set('QueueEntryIDs', ids.map(asToken).join(' '));
  params.children.push(finish(direction, filter));
  return finish(direction, params);
}

function idOf(resources: Resources, el: XmlElement): string[] {
  const id = attributeNode(el, 'QueueEntryID');
  resources.direction.ledger.carry(el, id);
  return id === undefined ? [] : [id.value];
}

function pipeParams(
  resources: Resources,
  el: XmlElement,
  operation: string,
  overflow: Overflow,
): XmlElement | undefined {
  const found = firstChild(el, 'PipeParams');
  if (found === undefined) return undefined;
  const draft = new Draft('PipeParams', shapeOf('PipeParams'));
  draft.attributes.set('Operation', operation);
  fillDraft(resources.direction, sourceOf(found), draft, overflow);
  if (complete(resources.direction, sourceOf(found), draft) !== undefined) return undefined;
  resources.direction.ledger.carry(found);
  return finish(resources.direction, draft);
}
