import { parseDateTime } from '../../../codec/index.js';
import { partsNamed } from '../../../partition/index.js';
import { attributeOf, childElements, type XmlElement } from '../../../xml/index.js';

/** An audit with a beginning and an end, in milliseconds since 1970. */
export interface Phase {
  readonly el: XmlElement;
  readonly start: number;
  /** Infinite for the phase that is going on. */
  readonly end: number;
}

/** The audits of a node that none of them corrects, in document order. */
export function validAudits(node: XmlElement): XmlElement[] {
  const audits = childElements(node, 'AuditPool').flatMap((pool) => childElements(pool));
  const corrected = new Set(audits.flatMap((audit) => attributeOf(audit, 'refID')?.trim() ?? []));
  return audits.filter((audit) => !corrected.has(attributeOf(audit, 'ID') ?? ''));
}

/** Those of some audits that have a name and say when they began, by their beginning. */
export function phasesNamed(audits: readonly XmlElement[], name: string): Phase[] {
  return audits
    .filter(({ local }) => local === name)
    .flatMap(phaseOf)
    .sort((one, other) => one.start - other.start);
}

function phaseOf(el: XmlElement): Phase[] {
  const start = parseDateTime(attributeOf(el, 'Start') ?? '');
  const end = parseDateTime(attributeOf(el, 'End') ?? '') ?? Number.POSITIVE_INFINITY;
  return start === undefined ? [] : [{ el, start, end }];
}

/** Each device with each part; several devices of one phase work together. */
export function doneBy(el: XmlElement): string[] {
  const devices = childElements(el, 'Device').map((device) => attributeOf(device, 'DeviceID') ?? '');
  const parts = partsNamed(el).map((part) => JSON.stringify(Object.entries(part).sort()));
  const [whom, what] = [devices.length > 0 ? devices : [''], parts.length > 0 ? parts : ['']];
  return [...new Set(whom.flatMap((device) => what.map((part) => `${device} ${part}`)))];
}

/** The parts that an audit names, in one spelling whatever their order; '' for the whole. */
export function partsOfAudit(audit: XmlElement): string {
  return partsNamed(audit)
    .map((part) => JSON.stringify(Object.entries(part).sort()))
    .sort()
    .join(' ');
}
