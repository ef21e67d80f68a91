import { attributeOf, type XmlElement } from '../../xml/index.js';
import { addAll } from '../add-all.js';
import { attributeNode } from '../ledger.js';
import type { Overflow } from '../source.js';
import { carryAttribute, Draft, finish } from '../translate.js';
import type { Job, SetDraft } from './job.js';
import { type Resources, shapeOf } from './resources.js';
import type { Steps } from './steps.js';

/**
 * The Status of nodes, which the newer generation has in NodeInfo: put into the NodeInfo that a step has, or into one
 * made for it. Steps in the same Status share one. Only what partitions say goes before it.
 */
export function nodeInfos(job: Job, resources: Resources, steps: Steps): void {
  const made = new Map<string, { readonly info: XmlElement; readonly indexes: number[] }>();
  const there = job.sets.filter(({ name, use }) => name === 'NodeInfo' && use.usage === 'Input');
  const doing = [...steps.indexes].filter(([, indexes]) => indexes.length > 0);
  const statuses = new Set(doing.map(([node]) => attributeOf(node, 'Status')));
  for (const [node, indexes] of steps.indexes) {
    if (indexes.length === 0) {
      follow(job, node, statuses);
      continue;
    }
    const own = setOf(there, indexes, steps.types.length);
    if (own !== undefined) {
      own.resources.forEach((resource, i) => {
        own.resources[i] = withStatus(resources, resource, node);
      });
      continue;
    }
    const info = infoOf(resources, node);
    if (info.attributes.length === 0) continue;
    const key = info.attributes.map(({ name, value }) => `${name}=${value}`).join(' ');
    const like = made.get(key);
    if (like === undefined) made.set(key, { info, indexes: [...indexes] });
    else addAll(like.indexes, indexes);
  }
  for (const { info, indexes } of made.values()) {
    const some =
      new Set(indexes).size === steps.types.length ? [] : [...new Set(indexes)].sort((a, b) => a - b);
    const draft = new Draft('Resource', shapeOf('Resource'));
    draft.children.push(info);
    const use = { usage: 'Input', processUsage: undefined, indexes: some };
    job.set('NodeInfo', use).resources.push(finish(resources.direction, draft));
  }
}

/** The status of a group follows from its steps. */
function follow(job: Job, node: XmlElement, ofSteps: ReadonlySet<string | undefined>): void {
  const status = attributeNode(node, 'Status');
  const others = ofSteps.size - (ofSteps.has(status?.value) ? 1 : 0);
  if (status !== undefined && others === 0) job.ledger.carry(status);
}

function setOf(infos: readonly SetDraft[], indexes: readonly number[], count: number): SetDraft | undefined {
  return infos.find(({ use }) =>
    use.indexes.length === 0
      ? indexes.length === count
      : indexes.every((index) => use.indexes.includes(index)),
  );
}

const NOWHERE: Overflow = { nodes: [], originals: [], keys: {} };

function infoOf(resources: Resources, node: XmlElement): XmlElement {
  const draft = new Draft('NodeInfo', shapeOf('NodeInfo'));
  for (const [from, to] of [
    ['Status', 'NodeStatus'],
    ['StatusDetails', 'NodeStatusDetails'],
  ] as const) {
    const attribute = attributeNode(node, from);
    if (attribute === undefined) continue;
    carryAttribute(resources.direction, 'NodeInfo', attribute, draft, NOWHERE, { local: to });
  }
  return finish(resources.direction, draft);
}

function withStatus(resources: Resources, resource: XmlElement, node: XmlElement): XmlElement {
  const children = resource.children.map((child) => {
    if (child.kind !== 'element' || child.local !== 'NodeInfo') return child;
    // A node that is out is Spawned, which is no status there; its schedule says what it does meanwhile.
    const stated = attributeOf(child, 'Status');
    if (stated !== undefined && stated !== attributeOf(node, 'Status')) return child;
    const info = infoOf(resources, node);
    const more = info.attributes.filter(({ local }) => attributeOf(child, local) === undefined);
    return { ...child, attributes: [...child.attributes, ...more] };
  });
  return { ...resource, children };
}
