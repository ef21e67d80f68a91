import { done, type Instant, type Result, refuse } from '#libs/kernel';
import {
  duration,
  elementCodec,
  Findings,
  integers,
  number,
  optional,
  percent,
  readFields,
  text,
  time,
} from '../codec/index.js';
import { amountPool, type PartAmount } from '../elements/amounts.js';
import type { PartKeys } from '../elements/part.js';
import { type Activation, type NodeStatus, nodeStatuses } from '../enumerations.js';
import { effectivePart, partAttribute, resolveParts, selectPart } from '../partition/index.js';
import { attributeOf, type XmlDocument, type XmlElement } from '../xml/index.js';
import { singleInput } from './administration.js';
import { linksOf, type ResourceLink } from './links.js';
import { activationOf, inheritedAttribute, nodesOf, processesOf } from './node.js';

/** A resource that a process uses or makes. Amounts are in the unit of the resource. */
export interface LinkedResource {
  /** Element name: Media, Component … */
  readonly name: string;
  readonly id: string;
  readonly usage: 'Input' | 'Output';
  readonly processUsage?: string;
  readonly combinedProcessIndex?: readonly number[];
  /** Planned: of the link, else of the resource. */
  readonly amount?: number;
  readonly actualAmount?: number;
  readonly partAmounts?: readonly PartAmount[];
  readonly status: string;
  /** Which parts the link selects; empty for all. */
  readonly parts: readonly PartKeys[];
  /** Keys of the leaves that are selected: `{ SheetName, Side, Separation }` of each plate. */
  readonly leaves: readonly PartKeys[];
  /** The selected part with all that it inherits; with several parts, the whole. */
  readonly view: XmlElement;
  readonly link: XmlElement;
  readonly resource: XmlElement;
}

/** What a device has to know of its step. */
export interface ProcessNode {
  readonly node: XmlElement;
  readonly id: string;
  readonly jobId: string;
  readonly jobPartId: string;
  readonly descriptiveName?: string;
  /** Processes in the order in which the device does them. */
  readonly types: readonly string[];
  readonly status: NodeStatus;
  readonly activation: Activation;
  readonly workStepId?: string;
  readonly setupS?: number;
  readonly cleanupS?: number;
  /** Set-up, run and clean-up together. */
  readonly totalS?: number;
  /** What of the total is neither set-up nor clean-up. */
  readonly runS?: number;
  readonly jobPriority?: number;
  readonly start?: Instant;
  readonly end?: Instant;
  readonly inputs: readonly LinkedResource[];
  readonly outputs: readonly LinkedResource[];
}

const nodeInfo = {
  workStepId: optional('WorkStepID', text),
  setupS: optional('SetupDuration', duration),
  cleanupS: optional('CleanupDuration', duration),
  totalS: optional('TotalDuration', duration),
  jobPriority: optional('JobPriority', percent),
  start: optional('Start', time),
  end: optional('End', time),
};

const linkAmounts = elementCodec('', {
  combinedProcessIndex: optional('CombinedProcessIndex', integers),
  amount: optional('Amount', number),
  actualAmount: optional('ActualAmount', number),
  partAmounts: amountPool,
});

/**
 * The step that a ticket sent to a device is about: the node with this JobPartID, or without one the first node that
 * names processes and has no nodes inside. Errors: JDF_STRUCTURE (no such node), JDF_VALUE.
 */
export function readProcessNode(doc: XmlDocument, jobPartId?: string): Result<ProcessNode> {
  const findings = new Findings(doc, { missing: 'JDF_MISSING', wrong: 'JDF_VALUE' });
  const node = [...nodesOf(doc.root)].find(
    (one) =>
      processesOf(one).length > 0 && (jobPartId === undefined || attributeOf(one, 'JobPartID') === jobPartId),
  );
  if (node === undefined) {
    const which = jobPartId === undefined ? '' : ` with JobPartID "${jobPartId}"`;
    findings.error('JDF_STRUCTURE', doc.root, `There is no node to execute${which}.`);
    return refuse(...findings.problems);
  }
  const step = readStep(doc, node, findings);
  return findings.problems.length > 0 ? refuse(...findings.problems) : done(step);
}

function readStep(doc: XmlDocument, node: XmlElement, findings: Findings): ProcessNode {
  const info = singleInput(doc, node, 'NodeInfo');
  const times = (info && readFields(nodeInfo, info.view, findings)) ?? {};
  const linked = linksOf(doc, node).map((link) => readLinked(link, findings));
  const { totalS, setupS = 0, cleanupS = 0 } = times;
  return {
    node,
    id: attributeOf(node, 'ID') ?? '',
    jobId: inheritedAttribute(doc, node, 'JobID')?.value ?? '',
    jobPartId: attributeOf(node, 'JobPartID') ?? '',
    descriptiveName: attributeOf(node, 'DescriptiveName'),
    types: processesOf(node),
    status: nodeStatuses.find((known) => known === attributeOf(node, 'Status')) ?? 'Waiting',
    activation: activationOf(doc, node).value,
    ...times,
    runS: totalS === undefined ? undefined : Math.max(0, totalS - setupS - cleanupS),
    inputs: linked.filter(({ usage }) => usage === 'Input'),
    outputs: linked.filter(({ usage }) => usage === 'Output'),
  };
}

function readLinked(
  { link, name, usage, processUsage, resource, parts }: ResourceLink,
  findings: Findings,
): LinkedResource {
  const amounts = linkAmounts.read(link, findings) ?? {};
  const [only, ...more] = parts;
  const selected = more.length > 0 ? undefined : selectPart(resource, only ?? {});
  const stated = (attribute: string): string =>
    (selected === undefined ? attributeOf(resource, attribute) : partAttribute(selected, attribute)) ?? '';
  return {
    name,
    id: attributeOf(resource, 'ID') ?? '',
    usage: usage === 'Output' ? 'Output' : 'Input',
    processUsage,
    ...amounts,
    amount: amounts.amount ?? number.read(stated('Amount')),
    status: stated('Status'),
    parts,
    // These two only on demand: many links may lead to one resource of many parts.
    get leaves() {
      return resolveParts(resource, parts).found.map(({ keys }) => keys);
    },
    get view() {
      return selected === undefined ? resource : effectivePart(selected);
    },
    link,
    resource,
  };
}
