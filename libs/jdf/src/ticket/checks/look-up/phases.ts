import { oncePer } from '#libs/kernel';
import { parseDateTime } from '../../../codec/index.js';
import { partsNamed, spellingOf } from '../../../partition/index.js';
import { attributeOf, childElements, type XmlElement } from '../../../xml/index.js';

/** An audit with a beginning and an end, in milliseconds since 1970. */
export interface Phase {
  readonly el: XmlElement;
  readonly start: number;
  /** Infinite for the phase that is going on. */
  readonly end: number;
  /** The parts that it names, in one spelling whatever their order; '' for the whole. */
  readonly parts: string;
  /** Each device with each part; several devices of one phase work together. */
  readonly doneBy: readonly string[];
}

/** The audits of a node that none of them corrects, in document order. */
export const validAudits = oncePer((node: XmlElement): readonly XmlElement[] => {
  const audits = childElements(node, 'AuditPool').flatMap((pool) => childElements(pool));
  const corrected = new Set(audits.flatMap((audit) => attributeOf(audit, 'refID')?.trim() ?? []));
  return audits.filter((audit) => !corrected.has(attributeOf(audit, 'ID') ?? ''));
});

/** The phases of a node that say when they began, by their beginning. */
export const phasesOf = oncePer((node: XmlElement) => phasesNamed(node, 'PhaseTime'));

/** The same of its runs. */
export const runsOf = oncePer((node: XmlElement) => phasesNamed(node, 'ProcessRun'));

function phasesNamed(node: XmlElement, name: string): readonly Phase[] {
  return validAudits(node)
    .filter(({ local }) => local === name)
    .flatMap(phaseOf)
    .sort((one, other) => one.start - other.start);
}

function phaseOf(el: XmlElement): Phase[] {
  const start = parseDateTime(attributeOf(el, 'Start') ?? '');
  const end = parseDateTime(attributeOf(el, 'End') ?? '') ?? Number.POSITIVE_INFINITY;
  if (start === undefined) return [];
  const parts = partsNamed(el).map(spellingOf);
  const devices = childElements(el, 'Device').map((device) => attributeOf(device, 'DeviceID') ?? '');
  return [{ el, start, end, parts: parts.toSorted().join(' '), doneBy: eachWithEach(devices, parts) }];
}

/** What has no devices, or no parts, is done by whoever it was, or to the whole. */
function eachWithEach(devices: readonly string[], parts: readonly string[]): readonly string[] {
  const [whom, what] = [devices.length > 0 ? devices : [''], parts.length > 0 ? parts : ['']];
  return [...new Set(whom.flatMap((device) => what.map((part) => `${device} ${part}`)))];
}
