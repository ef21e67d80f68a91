import {
  boolean,
  child,
  children,
  dateTime,
  durationOrInfinity,
  type Findings,
  language,
  type Of,
  oneOf,
  optional,
  percent,
  string,
  url,
  xyPair,
} from '../../codec/index.js';
import { fullElement } from '../../elements/base.js';
import { employee, misDetails } from '../../elements/device.js';
import { gangSource } from '../../elements/work.js';
import { nodeStatuses } from '../../enumerations.js';
import { effectivePart, partitionLeaves } from '../../partition/index.js';
import type { XmlElement } from '../../xml/index.js';
import { referable } from './referable.js';

const schedule = {
  firstStart: optional('FirstStart', dateTime),
  start: optional('Start', dateTime),
  lastStart: optional('LastStart', dateTime),
  firstEnd: optional('FirstEnd', dateTime),
  end: optional('End', dateTime),
  lastEnd: optional('LastEnd', dateTime),
  setupDuration: optional('SetupDuration', durationOrInfinity),
  totalDuration: optional('TotalDuration', durationOrInfinity),
  cleanupDuration: optional('CleanupDuration', durationOrInfinity),
  /** What happens when it is late. */
  dueLevel: optional('DueLevel', oneOf(['Unknown', 'Trivial', 'Penalty', 'JobCancelled'])),
  /** 0 to 100; 50 where left out. */
  jobPriority: optional('JobPriority', percent),
  /** Where the ticket goes when the node is done, and by which way it came. */
  targetRoute: optional('TargetRoute', url),
  route: optional('Route', url),
  naturalLang: optional('NaturalLang', language),
  ippVersion: optional('IPPVersion', xyPair),
  mergeTarget: optional('MergeTarget', boolean),
  employee: referable(employee),
  misDetails: child(misDetails),
};

/** The NodeInfo that an Ancestor holds, and that a node itself held until version 1.2. */
export const inlineNodeInfo = fullElement('NodeInfo', schedule);

/**
 * When a node is to be done, how urgent it is and, for each of its parts, how far it is. Times are as stated, with INF
 * and -INF for never and always; durations may be in months.
 */
export const nodeInfo = fullElement('NodeInfo', {
  ...schedule,
  nodeStatus: optional('NodeStatus', oneOf(nodeStatuses)),
  nodeStatusDetails: optional('NodeStatusDetails', string),
  /** Key of the step in messages. */
  workStepId: optional('WorkStepID', string),
  gangSources: children(gangSource),
});
export type NodeInfo = Of<typeof nodeInfo>;

/** A part of a NodeInfo: its element, to be changed, and what it says together with what it inherits. */
export interface NodeInfoPart {
  readonly keys: Readonly<Record<string, string>>;
  readonly own: XmlElement;
  readonly info: NodeInfo;
}

/** What a NodeInfo says for each of its parts, in document order; one that is not partitioned is its own part. */
export function nodeInfoParts(info: XmlElement, findings: Findings): readonly NodeInfoPart[] {
  return partitionLeaves(info).flatMap((leaf) => {
    const value = nodeInfo.read(effectivePart(leaf), findings);
    return value === undefined ? [] : [{ keys: leaf.keys, own: leaf.chain.at(-1)!, info: value }];
  });
}
