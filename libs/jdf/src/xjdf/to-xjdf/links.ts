import { splitTokens } from '../../codec/index.js';
import { keysOf, type PartKeys } from '../../elements/part.js';
import { attributeOf, childElements, firstChild, type XmlElement } from '../../xml/index.js';
import type { Job, Use } from './job.js';
import type { Steps } from './steps.js';

/** All links to one resource that use it in the same way. */
export interface UseOfResource {
  readonly links: readonly XmlElement[];
  readonly use: Use;
  readonly parts: readonly PartKeys[];
}

/** How the nodes use each resource. Links of a group that repeat those of its steps add nothing. */
export function usesOf(job: Job, steps: Steps): ReadonlyMap<XmlElement, readonly UseOfResource[]> {
  const found = new Map<
    XmlElement,
    Map<string, { links: XmlElement[]; indexes: Set<number>; link: XmlElement }>
  >();
  for (const [node, indexes] of steps.indexes) {
    const pool = firstChild(node, 'ResourceLinkPool');
    for (const link of pool === undefined ? [] : childElements(pool)) {
      const rRef = attributeOf(link, 'rRef');
      const target = rRef === undefined ? undefined : job.target(rRef);
      if (target === undefined || !link.local.endsWith('Link')) {
        job.ledger.reason(link, `there is no resource ${rRef ?? ''}`);
        continue;
      }
      const key = [
        attributeOf(link, 'Usage') ?? '',
        attributeOf(link, 'ProcessUsage') ?? '',
        childElements(link, 'Part')
          .map((part) => JSON.stringify(keysOf(part)))
          .join(),
      ].join(' ');
      const uses = found.get(target) ?? new Map();
      found.set(target, uses);
      const use = uses.get(key) ?? { links: [], indexes: new Set<number>(), link };
      uses.set(key, use);
      use.links.push(link);
      for (const index of indexesOf(link, indexes)) use.indexes.add(index);
    }
  }
  const result = new Map<XmlElement, readonly UseOfResource[]>();
  for (const [resource, uses] of found) {
    result.set(
      resource,
      [...uses.values()].map(({ links, indexes, link }) => ({
        links,
        use: {
          usage: attributeOf(link, 'Usage'),
          processUsage: attributeOf(link, 'ProcessUsage'),
          indexes: trimmed([...indexes], steps, links),
        },
        parts: childElements(link, 'Part').map(keysOf),
      })),
    );
  }
  return result;
}

/** The processes of a node that a link is for: those it names, else all of them. */
function indexesOf(link: XmlElement, own: readonly number[]): readonly number[] {
  const named = splitTokens(attributeOf(link, 'CombinedProcessIndex') ?? '').map(Number);
  return named.length === 0 ? own : named.flatMap((index) => own[index] ?? []);
}

/** Where every process is meant and no link said so, nothing needs to be said. */
function trimmed(indexes: readonly number[], steps: Steps, links: readonly XmlElement[]): readonly number[] {
  const all = indexes.length === steps.types.length;
  const stated = links.some((link) => attributeOf(link, 'CombinedProcessIndex') !== undefined);
  return all && !stated ? [] : [...indexes].sort((a, b) => a - b);
}
