import { type Findings, parseDateTime } from '../../codec/index.js';
import { partAttribute, partitionLeaves } from '../../partition/index.js';
import type { XmlElement } from '../../xml/index.js';
import type { TicketCheck } from './ticket-check.js';

/** Pairs of times of which the first may not be later than the second. */
const ORDER: readonly (readonly [early: string, late: string])[] = [
  ['FirstStart', 'Start'],
  ['Start', 'LastStart'],
  ['FirstStart', 'LastStart'],
  ['FirstEnd', 'End'],
  ['End', 'LastEnd'],
  ['FirstEnd', 'LastEnd'],
  ['FirstStart', 'LastEnd'],
];

/** JDF NodeInfo FirstStart to LastEnd: the times of each part of NodeInfo follow one another. */
export const schedule: TicketCheck = {
  number: 23,
  name: 'schedule',
  run({ nodes }, findings) {
    for (const { resources } of nodes) {
      for (const resource of resources) if (resource.local === 'NodeInfo') checkTimes(resource, findings);
    }
  },
};

function checkTimes(nodeInfo: XmlElement, findings: Findings): void {
  for (const leaf of partitionLeaves(nodeInfo)) {
    const at = leaf.chain.at(-1)!;
    const time = (name: string) => parseDateTime(partAttribute(leaf, name) ?? '');
    for (const [early, late] of ORDER) {
      const [before, after] = [time(early), time(late)];
      if (before === undefined || after === undefined || before <= after) continue;
      findings.warning(
        'JDF_SCHEDULE',
        at,
        `${early} of ${at.name} is later than ${late}.`,
        `Correct ${early} or ${late}.`,
      );
    }
    const [start, end] = [time('Start'), time('End')];
    if (start === undefined || end === undefined || start < end) continue;
    findings.warning('JDF_SCHEDULE', at, `${at.name} ends before it begins.`, 'Correct Start or End.');
  }
}
