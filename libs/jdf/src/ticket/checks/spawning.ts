import { type Findings, splitTokens } from '../../codec/index.js';
import { partsOf } from '../../partition/index.js';
import { type ModeOf, marksOf } from '../../spawn/marks.js';
import { modesOf, openRecords, recordsOf, type SpawnRecord } from '../../spawn/records.js';
import { attributeOf, childElements, type XmlElement } from '../../xml/index.js';
import type { Ticket, TicketCheck, TicketNode } from './ticket-check.js';

/**
 * JDF Spawned, Merged, SpawnIDs: what is out is out once, and audits, nodes and resources agree on it. The
 * marks of a ticket that was itself spawned may come from the ticket it left, and are passed over.
 */
export const spawning: TicketCheck = {
  number: 16,
  name: 'spawning',
  run(ticket, findings) {
    for (const node of ticket.nodes) checkAncestors(ticket, node, findings);
    const records = recordsOf(ticket.doc.root);
    const open = openRecords(records);
    checkTokens(records, findings);
    for (const node of ticket.nodes) checkNode(node, open, findings);
    if (ticket.spawned || attributeOf(ticket.doc.root, 'SpawnID') !== undefined) return;
    if (open.length === 0 && !ticket.elements.some(isMarked)) return;
    for (const { resources } of ticket.nodes) {
      for (const resource of resources) checkMarks(resource, open, findings);
    }
  },
};

/** Nodes hold nodes only if they are products or groups, and none is around itself. */
function checkAncestors({ doc, ids }: Ticket, { element }: TicketNode, findings: Findings): void {
  for (const pool of childElements(element, 'AncestorPool')) {
    if (element !== doc.root) {
      const hint = 'Only the root of a ticket that was spawned has one.';
      findings.error('JDF_SPAWN', pool, 'An AncestorPool is in a node inside the ticket.', hint);
    }
    const seen = new Set<string>();
    for (const ancestor of childElements(pool, 'Ancestor')) {
      const id = attributeOf(ancestor, 'NodeID') ?? '';
      const type = attributeOf(ancestor, 'Type') ?? 'Product';
      if (seen.has(id)) {
        findings.error(
          'JDF_SPAWN',
          ancestor,
          `The ancestor "${id}" is named twice.`,
          'Outermost first, each once.',
        );
      } else if (ids.get(id)?.local === 'JDF') {
        findings.error(
          'JDF_SPAWN',
          ancestor,
          `The ancestor "${id}" is a node in the ticket itself.`,
          'Ancestors are the nodes that stayed behind.',
        );
      } else if (type !== 'Product' && type !== 'ProcessGroup') {
        findings.error(
          'JDF_SPAWN',
          ancestor,
          `The ancestor "${id}" is of Type ${type}, which holds no nodes.`,
          'Name Product and ProcessGroup nodes, outermost first.',
        );
      }
      seen.add(id);
    }
  }
}

/** Each token leaves once, and comes back at most once and not before it left. */
function checkTokens(records: readonly SpawnRecord[], findings: Findings): void {
  const left = new Map<string, SpawnRecord>();
  const back = new Set<string>();
  for (const record of records.filter(({ kind }) => kind === 'Spawned')) {
    if (left.has(record.token)) {
      findings.error(
        'JDF_SPAWN',
        record.audit,
        `NewSpawnID="${record.token}" occurs before.`,
        'Each spawning has a SpawnID of its own.',
      );
    }
    left.set(record.token, record);
  }
  for (const { kind, token, audit, at } of records) {
    if (kind !== 'Merged') continue;
    const from = left.get(token);
    if (from === undefined) {
      findings.error(
        'JDF_SPAWN',
        audit,
        `MergeID="${token}" names no spawning.`,
        'MergeID is the NewSpawnID of a Spawned audit.',
      );
    } else if (back.has(token)) {
      findings.error('JDF_SPAWN', audit, `MergeID="${token}" occurs before: it came back twice.`);
    } else if ((at ?? Infinity) < (from.at ?? -Infinity)) {
      findings.error('JDF_SPAWN', audit, `"${token}" came back before it left.`, 'Correct the TimeStamp.');
    }
    back.add(token);
  }
}

/** A node is Spawned while it is out and not otherwise; while some of its partitions are out it is Part. */
function checkNode({ element, parent }: TicketNode, open: readonly SpawnRecord[], findings: Findings): void {
  const status = attributeOf(element, 'Status');
  const own = open.filter(({ nodeId }) => nodeId === attributeOf(element, 'ID'));
  const whole = own.find(({ parts }) => parts.length === 0);
  if (status === 'Spawned' && whole === undefined && parent !== undefined) {
    findings.error(
      'JDF_SPAWN',
      element,
      `${element.name} is Spawned, but no open Spawned audit names it.`,
      'Put the audit back, or give the node the status it has.',
    );
  }
  for (const { token, parts, audit } of own) {
    const expected = parts.length === 0 ? 'Spawned' : 'Part';
    if (status === expected) continue;
    findings.error(
      'JDF_SPAWN',
      audit,
      `"${token}" is out, but its node has Status ${status}.`,
      `Merge it, or set Status to ${expected}.`,
    );
  }
}

const isMarked = (el: XmlElement): boolean =>
  el.attributes.some(({ local, uri }) => uri === '' && (local === 'SpawnIDs' || local === 'SpawnStatus'));

function checkMarks(resource: XmlElement, open: readonly SpawnRecord[], findings: Findings): void {
  const id = attributeOf(resource, 'ID') ?? '';
  const modeOf = modesOf(open, id);
  const marked = new Set<string>();
  for (const { place, tokens } of marksOf(resource)) {
    for (const token of tokens) marked.add(token);
    if (isMarked(place)) {
      checkMark(place, tokens, modeOf, findings);
    }
  }
  for (const { token, audit, readOnly, readWrite } of open) {
    if (marked.has(token) || ![...readOnly, ...readWrite].includes(id)) continue;
    findings.error(
      'JDF_SPAWN',
      audit,
      `${resource.name} "${id}" left with "${token}", but its SpawnIDs do not name it.`,
      'Put it into SpawnIDs, or merge it.',
    );
  }
  checkOnce(resource, [], modeOf, findings);
}

/** SpawnStatus and SpawnIDs of a part agree with each other and with the audits. */
function checkMark(place: XmlElement, tokens: readonly string[], modeOf: ModeOf, findings: Findings): void {
  const status = attributeOf(place, 'SpawnStatus') ?? 'NotSpawned';
  const gone = tokens.find((token) => modeOf(token) === undefined);
  if (gone !== undefined) {
    findings.error(
      'JDF_SPAWN',
      place,
      `SpawnIDs of ${place.name} names "${gone}", with which it is not out.`,
      'Take it out of SpawnIDs.',
    );
    return;
  }
  const modes = tokens.map(modeOf);
  const expected = modes.includes('RW') ? 'SpawnedRW' : modes.length > 0 ? 'SpawnedRO' : 'NotSpawned';
  if (status === expected) return;
  findings.error(
    'JDF_SPAWN',
    place,
    `SpawnStatus of ${place.name} is ${status}, but by the audits it is ${expected}.`,
    `Set it to ${expected}.`,
  );
}

/** A part is out to be changed once at a time, parts of it too. */
function checkOnce(el: XmlElement, around: readonly string[], modeOf: ModeOf, findings: Findings): void {
  const own = splitTokens(attributeOf(el, 'SpawnIDs') ?? '').filter((token) => modeOf(token) === 'RW');
  const all = [...new Set([...around, ...own])];
  if (all.length > 1) {
    findings.error(
      'JDF_SPAWN',
      el,
      `${el.name} is out to be changed with ${all.join(' and ')} at once.`,
      'Merge one, or spawn it to be read only.',
    );
    return;
  }
  for (const part of partsOf(el)) checkOnce(part, all, modeOf, findings);
}
