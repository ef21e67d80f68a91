import type { Findings } from '../../codec/index.js';
import { keysOf } from '../../elements/part.js';
import { childElements, type XmlElement } from '../../xml/index.js';
import { spelledKeys } from '../resource-set.js';

/** Keys whose values the standard lists: parts that name all of them name the whole. */
const ALL_VALUES: Readonly<Record<string, readonly string[]>> = { Side: ['Front', 'Back'] };

/** The parts of a set: what holds for all values of a key does not name it, and no part is said twice. */
export function checkParts(set: XmlElement, findings: Findings): void {
  const seen = new Map<string, XmlElement>();
  let first: XmlElement | undefined;
  for (const resource of childElements(set, 'Resource')) {
    const parts = childElements(resource, 'Part');
    overspecified(parts, findings);
    for (const part of parts) mixed(part, first, findings);
    first ??= parts[0];
    for (const part of parts) {
      const key = spelledKeys(keysOf(part));
      const other = seen.get(key);
      if (other !== undefined && other !== resource) {
        findings.warning(
          'JDF_PARTITION',
          part,
          'Another Resource of the set has the same part.',
          'Join the two.',
        );
      }
      seen.set(key, resource);
    }
  }
}

/** Parts of one set have the same keys, so that it is clear which of them is meant. */
function mixed(part: XmlElement, first: XmlElement | undefined, findings: Findings): void {
  if (first === undefined) return;
  const names = [first, part].map((one) => Object.keys(keysOf(one)).sort().join(' '));
  if (names[0] === names[1]) return;
  findings.warning(
    'JDF_PARTITION',
    part,
    `The part says ${names[1]}, others of the set ${names[0]}.`,
    'Divide a set by the same keys throughout.',
  );
}

function overspecified(parts: readonly XmlElement[], findings: Findings): void {
  for (const [key, values] of Object.entries(ALL_VALUES)) {
    const groups = new Map<string, Set<string>>();
    for (const part of parts) {
      const { [key]: value, ...rest } = keysOf(part);
      if (value === undefined) continue;
      const found = groups.get(spelledKeys(rest)) ?? new Set<string>();
      groups.set(spelledKeys(rest), found.add(value));
    }
    if (![...groups.values()].some((found) => values.every((value) => found.has(value)))) continue;
    findings.error(
      'JDF_PARTITION',
      parts[0]!,
      `The parts name every ${key} that there is.`,
      `What holds for all of them is one Part without ${key}.`,
    );
  }
}
