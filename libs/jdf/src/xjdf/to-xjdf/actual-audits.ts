import { attributeOf, childElements, firstChild, type XmlElement } from '../../xml/index.js';
import { attributeNode } from '../ledger.js';
import type { Overflow } from '../source.js';
import { carryAttribute, Draft, finish } from '../translate.js';
import { asToken } from '../values.js';
import { actualPool } from './amounts.js';
import { type Job, newerResource } from './job.js';
import { type Resources, shapeOf } from './resources.js';

const NOWHERE: Overflow = { nodes: [], originals: [], keys: {} };

/**
 * What the links of a node say was really used or made, as audits: the newer generation has actual amounts nowhere else in
 * a ticket. Where a ResourceAudit of the node tells of the same resource, that says it.
 */
export function actualAudits(job: Job, resources: Resources, node: XmlElement): XmlElement[] {
  const audits = childElements(node, 'AuditPool').flatMap((pool) => childElements(pool));
  const told = new Set(
    audits
      .filter(({ local }) => local === 'ResourceAudit')
      .flatMap((audit) => childElements(audit).find(({ local }) => local.endsWith('Link')) ?? [])
      .map((link) => attributeOf(link, 'rRef')),
  );
  const links = childElements(node, 'ResourceLinkPool').flatMap((pool) => childElements(pool));
  return links.flatMap((link) => {
    if (told.has(attributeOf(link, 'rRef'))) return [];
    const set = resourceSet(job, resources, link);
    if (set === undefined) return [];
    const info = new Draft('ResourceInfo', shapeOf('ResourceInfo'));
    info.children.push(set);
    const audit = new Draft('AuditResource', shapeOf('AuditResource'));
    audit.children.push(header(job, resources, link, audits), finish(resources.direction, info));
    return [finish(resources.direction, audit)];
  });
}

function resourceSet(job: Job, resources: Resources, link: XmlElement): XmlElement | undefined {
  const { direction } = resources;
  const target = job.target(attributeOf(link, 'rRef') ?? '');
  const newer = target && newerResource(target.local);
  const amounts = target && newer && actualPool(job, resources, target, link);
  if (amounts === undefined) return undefined;
  const resource = new Draft('Resource', shapeOf('Resource'));
  resource.children.push(amounts);
  const set = new Draft('ResourceSet', shapeOf('ResourceSet'));
  set.attributes.set('Name', newer!.host ?? newer!.name);
  for (const name of ['Usage', 'ProcessUsage']) {
    const attribute = attributeNode(link, name);
    if (attribute !== undefined) carryAttribute(direction, 'ResourceSet', attribute, set, NOWHERE);
  }
  set.children.push(finish(direction, resource));
  return finish(direction, set);
}

/** Written as of the node's last audit, by who wrote that; where there is none, nobody knows when it was counted. */
function header(job: Job, resources: Resources, link: XmlElement, audits: readonly XmlElement[]): XmlElement {
  const last = audits.findLast((audit) => attributeOf(audit, 'TimeStamp') !== undefined);
  const device = audits.flatMap((audit) => firstChild(audit, 'Device') ?? []).at(-1);
  const who = (device && attributeOf(device, 'DeviceID')) ?? (last && attributeOf(last, 'AgentName'));
  const draft = new Draft('Header', shapeOf('Header'));
  draft.attributes.set('DeviceID', asToken(who ?? 'Unknown'));
  draft.put('Time', last === undefined ? '' : attributeOf(last, 'TimeStamp')!);
  if (!draft.attributes.has('Time')) {
    draft.attributes.set('Time', '1970-01-01T00:00:00Z');
    job.ledger.note(
      link,
      'nothing says when the actual amounts were counted; the audit has the first time there is',
    );
  }
  return finish(resources.direction, draft);
}
