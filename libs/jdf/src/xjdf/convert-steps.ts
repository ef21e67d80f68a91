import { done, error, type Result, refuse } from '#libs/kernel';
import { kindOf } from '../ticket/kind.js';
import { nodesOf } from '../ticket/node.js';
import type { XmlDocument, XmlElement } from '../xml/index.js';
import type { Lost } from './ledger.js';
import { ticketToXjdf } from './to-xjdf/convert.js';
import { typesOf } from './to-xjdf/steps.js';

export interface ConvertedStep {
  readonly node: XmlElement;
  readonly doc: XmlDocument;
}

export interface ConvertedSteps {
  /** In document order. */
  readonly steps: readonly ConvertedStep[];
  /** What is in none of the documents. */
  readonly lost: readonly Lost[];
}

/**
 * A JDF ticket as one XJDF for each node with processes of its own, as devices of the newer generation are given them.
 * What several steps share is in each. Errors: KIND_UNKNOWN (no JDF, or no node with processes), XML_NAMESPACE.
 */
export function convertSteps(doc: XmlDocument): Result<ConvertedSteps> {
  const kind = kindOf(doc);
  if (!kind.ok) return kind;
  const nodes = kind.value === 'jdf' ? [...nodesOf(doc.root)].filter((node) => isStep(node)) : [];
  if (nodes.length === 0) {
    const hint = 'Convert it into one document.';
    return refuse(error('KIND_UNKNOWN', 'This has no process nodes to make documents of.', { hint }));
  }
  const converted = nodes.map((node) => ({ node, ...ticketToXjdf(doc, node) }));
  return done({
    steps: converted.map(({ node, doc: made }) => ({ node, doc: made })),
    lost: lostByAll(converted.map(({ lost }) => lost)),
  });
}

const isStep = (node: XmlElement): boolean => {
  const types = typesOf(node);
  return types.length > 0 && !types.includes('Product');
};

/** Each conversion loses what belongs to the other steps: lost is what every one of them lost, said as exactly as any. */
function lostByAll(lists: readonly (readonly Lost[])[]): Lost[] {
  const sets = lists.map((list) => new Set(list.map(({ path }) => path)));
  const found = new Map<string, Lost>();
  for (const one of lists.flat()) {
    if (found.has(one.path) || !sets.every((paths) => covers(paths, one.path))) continue;
    found.set(one.path, one);
  }
  const all = [...found.values()];
  return all.filter(
    ({ path }) => !all.some((outer) => outer.path !== path && path.startsWith(`${outer.path}/`)),
  );
}

/** Whether a place, or one that it lies in, is in a list. */
function covers(paths: ReadonlySet<string>, path: string): boolean {
  for (let at = path; at !== ''; at = at.slice(0, at.lastIndexOf('/'))) if (paths.has(at)) return true;
  return false;
}
