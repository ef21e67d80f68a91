import type { DeviceDefinition } from '#libs/craft';
import type { Findings, XmlElement } from '#libs/jdf';

/** Something that a ticket asks of a device, with the devices that can do it. */
export interface Demand<D extends DeviceDefinition> {
  readonly at: XmlElement;
  /** What no device can do, as the end of a sentence: "takes a sheet of 900 × 640 mm". */
  readonly what: string;
  readonly can: (device: D) => boolean;
  /** What a device can do instead, in words: "900 × 640 mm at most". */
  readonly limit: (device: D) => string;
}

/**
 * Warns of each demand that no device of a kind can meet; where each can be met, but not all by one device, of that, at
 * the node.
 */
export function tellDemands<D extends DeviceDefinition>(
  devices: readonly D[],
  node: XmlElement,
  demands: readonly Demand<D>[],
  findings: Findings,
): void {
  const [device] = devices;
  if (device === undefined || devices.some((one) => demands.every(({ can }) => can(one)))) return;
  const beyond = demands.filter(({ can }) => !devices.some(can));
  for (const { at, what, limit } of beyond) {
    const limits = devices.slice(0, SHOWN).map((one) => `${one.name}: ${limit(one)}`);
    const hint = `Have it made elsewhere, or keep to what there is (${limits.join('; ')}).`;
    findings.warning('PLANT_CANNOT', at, `No ${device.kind} of the plant ${what}.`, hint);
  }
  if (beyond.length > 0) return;
  const all = [...new Set(demands.map(({ what }) => what))].join(', ');
  const message = `No one ${device.kind} of the plant does all of this: it ${all}.`;
  findings.warning('PLANT_CANNOT', node, message, 'Make it nodes of their own, or have it made elsewhere.');
}

const SHOWN = 4;
