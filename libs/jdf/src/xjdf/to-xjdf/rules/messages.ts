import { attributeOf, childElements, type XmlElement } from '../../../xml/index.js';
import { xjdfVocabulary } from '../../facts.js';
import { attributeNode } from '../../ledger.js';
import { type Overflow, type Source, sourceOf, without } from '../../source.js';
import { carryAttribute, Draft, fillDraft, finish } from '../../translate.js';
import { asToken } from '../../values.js';
import { NEWER, newerResource } from '../job.js';
import type { Newer, Rule } from './rule.js';

const shapeOf = (name: string) => xjdfVocabulary.named(name)!;

/** A phase of the newer generation begins and counts where the older says so with names of their own. */
const jobPhase: Rule = (newer, source, out, overflow) => {
  const pairs = [
    ['PhaseStartTime', 'StartTime'],
    ['PhaseAmount', 'Amount'],
    ['PhaseWaste', 'Waste'],
  ] as const;
  for (const [older, name] of pairs) {
    const stated = attributeNode(source.el, older);
    if (stated !== undefined)
      carryAttribute(newer.direction, 'JobPhase', stated, out, overflow, { local: name });
  }
  return without(
    source,
    [],
    pairs.map(([older]) => older),
  );
};

/** The device is an element; the older generation may name it by its number only. */
const deviceInfo: Rule = (newer, source, out, overflow) => {
  const id = attributeNode(source.el, 'DeviceID');
  if (id === undefined || source.children.some(({ local }) => local === 'Device')) return source;
  const device = new Draft('Device', shapeOf('Device'));
  if (carryAttribute(newer.direction, 'Device', id, device, overflow))
    out.children.push(finish(newer.direction, device));
  return without(source, [], ['DeviceID']);
};

const STATUS: Readonly<Record<string, readonly [status: string, activation?: string]>> = {
  Running: ['InProgress'],
  Held: ['Waiting', 'Held'],
  PendingReturn: ['Completed', 'PendingReturn'],
  Removed: ['Completed', 'Removed'],
};

/** What the older generation says by the status of an entry the newer says by two attributes. */
const queueEntry: Rule = (newer, source, out) => {
  const status = attributeNode(source.el, 'Status');
  const said = status && STATUS[status.value];
  if (said === undefined || status === undefined) return source;
  out.attributes.set('Status', said[0]);
  if (said[1] !== undefined) out.attributes.set('Activation', said[1]);
  newer.job.ledger.carry(status);
  return without(source, [], ['Status']);
};

const submission: Rule = (newer, source, out) => {
  const hold = attributeNode(source.el, 'Hold');
  if (hold?.value === 'true' && !source.attributes.some(({ local }) => local === 'Activation')) {
    out.attributes.set('Activation', 'Held');
    newer.job.ledger.carry(hold);
  } else if (hold?.value === 'false') newer.job.ledger.carry(hold);
  return without(source, [], ['Hold']);
};

/** The resource of a message is a set of one Resource, with its amount. */
function setOf(newer: Newer, source: Source, out: Draft, overflow: Overflow): Source {
  const resource = source.children.find((child) => newerResource(child.local) !== undefined);
  const { direction, job } = newer;
  const named = attributeNode(source.el, 'ResourceName');
  const name =
    resource === undefined
      ? named?.value
      : (newerResource(resource.local)?.host ?? newerResource(resource.local)?.name);
  if (name === undefined || !out.shape.byName.has('ResourceSet')) return source;
  const set = new Draft('ResourceSet', shapeOf('ResourceSet'));
  set.attributes.set('Name', asToken(name));
  if (named?.value === name) job.ledger.carry(named);
  for (const attribute of source.attributes) {
    if (['Usage', 'ProcessUsage', 'Unit'].includes(attribute.local)) {
      carryAttribute(direction, 'ResourceSet', attribute, set, overflow);
    }
  }
  const written = resource === undefined ? bare() : newer.placer.inlineElement(resource, overflow);
  const amounts = amountOf(newer, source, overflow);
  if (written !== undefined) set.children.push({ ...written, children: [...amounts, ...written.children] });
  out.children.push(finish(direction, set));
  return without(source, resource === undefined ? [] : [resource], [
    'ResourceName',
    'Usage',
    'ProcessUsage',
    'Unit',
  ]);
}

function bare(): XmlElement {
  return finish({ uri: NEWER }, new Draft('Resource', shapeOf('Resource')));
}

function amountOf(newer: Newer, source: Source, overflow: Overflow): XmlElement[] {
  const stock = source.children.find(({ local }) => local === 'AmountPool');
  if (stock !== undefined) return splitAmounts(newer, stock, overflow);
  for (const name of ['ActualAmount', 'Amount', 'AvailableAmount']) {
    const stated = source.attributes.find(({ local, uri }) => local === name && uri === '');
    if (stated === undefined) continue;
    const part = new Draft('PartAmount', shapeOf('PartAmount'));
    if (!carryAttribute(newer.direction, 'PartAmount', stated, part, overflow, { local: 'Amount' })) continue;
    const pool = new Draft('AmountPool', shapeOf('AmountPool'));
    pool.children.push(finish(newer.direction, part));
    return [finish(newer.direction, pool)];
  }
  return [];
}

/** Good and waste, told apart by the condition of a part. */
function splitAmounts(newer: Newer, stock: XmlElement, overflow: Overflow): XmlElement[] {
  const { direction } = newer;
  const part = new Draft('PartAmount', shapeOf('PartAmount'));
  for (const one of childElements(stock, 'PartAmount')) {
    const named = childElements(one, 'Part');
    const condition = named.map((el) => attributeOf(el, 'Condition')).find((value) => value !== undefined);
    const stated = attributeNode(one, 'ActualAmount') ?? attributeNode(one, 'Amount');
    const local = condition === undefined || condition === 'Good' ? 'Amount' : 'Waste';
    if (stated === undefined || !carryAttribute(direction, 'PartAmount', stated, part, overflow, { local }))
      continue;
    newer.job.ledger.carry(stock, one);
    for (const el of named) newer.job.ledger.carryNamed(el, 'Condition');
  }
  if (part.attributes.size === 0) return [];
  const pool = new Draft('AmountPool', shapeOf('AmountPool'));
  pool.children.push(finish(direction, part));
  return [finish(direction, pool)];
}

/** Devices are listed by themselves; the older generation wraps them in what they are doing. */
const deviceList: Rule = (newer, source, out, overflow) => {
  const infos = childElements(source.el, 'DeviceList').flatMap((list) => {
    newer.job.ledger.carry(list);
    return childElements(list, 'DeviceInfo');
  });
  if (infos.length === 0 || !out.shape.byName.has('Device')) return source;
  for (const info of infos) {
    newer.job.ledger.carry(info);
    const device = childElements(info, 'Device')[0];
    const draft = new Draft('Device', shapeOf('Device'));
    if (device !== undefined) fillDraft(newer.direction, sourceOf(device), draft, overflow);
    const id = attributeNode(info, 'DeviceID');
    if (id !== undefined) carryAttribute(newer.direction, 'Device', id, draft, overflow);
    if (!draft.attributes.has('DeviceID')) draft.attributes.set('DeviceID', 'Unknown');
    if (device !== undefined) newer.job.ledger.carry(device);
    out.children.push(finish(newer.direction, draft));
  }
  return without(source, childElements(source.el, 'DeviceList'));
};

export const messageRules: Readonly<Record<string, Rule>> = {
  JobPhase: jobPhase,
  DeviceInfo: deviceInfo,
  QueueEntry: queueEntry,
  QueueSubmissionParams: submission,
  ResourceInfo: setOf,
  ResourceCmdParams: setOf,
  PipeParams: setOf,
  Response: deviceList,
  Signal: deviceList,
};
