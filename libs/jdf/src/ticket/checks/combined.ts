import { type Findings, integers } from '../../codec/index.js';
import { isTakenByAll, processRules } from '../../standard/index.js';
import { attributeOf } from '../../xml/index.js';
import type { TicketCheck, TicketLink, TicketNode } from './ticket-check.js';

/**
 * JDF Types, CombinedProcessIndex: what a link says of the processes of its node fits them, each process of a
 * Combined node has its parameters, and each makes something that the next one takes.
 */
export const combined: TicketCheck = {
  number: 9,
  name: 'combined processes',
  run({ nodes }, findings) {
    for (const node of nodes) {
      // Without Types there is nothing that CombinedProcessIndex could count.
      if (node.types.length === 0) continue;
      for (const link of node.links) checkIndexes(node, link, findings);
      if (node.type !== 'Combined') continue;
      checkParameters(node, findings);
      checkExchange(node, findings);
    }
  },
};

function checkIndexes(node: TicketNode, link: TicketLink, findings: Findings): void {
  const { element } = link;
  for (const index of indexesOf(link)) {
    const process = node.types[index];
    if (process === undefined) {
      findings.error(
        'JDF_LINK',
        element,
        `CombinedProcessIndex ${index} of ${element.name} names no process.`,
        `Types has ${node.types.length}, counted from 0.`,
      );
    } else if (!has(process, link)) {
      const does = link.usage === 'Input' ? 'takes' : 'makes';
      findings.tell(
        node.grayBox ? 'warning' : 'error',
        'JDF_LINK',
        element,
        `CombinedProcessIndex ${index} is ${process}, which ${does} no ${link.name}.`,
        'Name the process that it is for, counted from 0 in Types.',
      );
    }
  }
}

function indexesOf({ element }: TicketLink): readonly number[] {
  return integers.read(attributeOf(element, 'CombinedProcessIndex') ?? '') ?? [];
}

/** Whether the process takes or makes such a resource; true of processes that are not the standard's. */
function has(process: string, { name, usage }: TicketLink): boolean {
  const rule = processRules.get(process);
  if (rule === undefined || usage === '' || (usage === 'Input' && isTakenByAll(name))) return true;
  return rule.links.some((one) => one.usage === usage && (one.name === name || one.name === 'any'));
}

/**
 * Each process has the parameters that it cannot do without. Where no process of the node has any, the node has not been
 * filled in yet, and that is worth a warning only.
 */
function checkParameters(node: TicketNode, findings: Findings): void {
  const needed = node.types.flatMap((process, index) =>
    (processRules.get(process)?.links ?? [])
      .filter(({ usage, name, least }) => usage === 'Input' && least > 0 && name.endsWith('Params'))
      .map(({ name }) => ({ process, index, name })),
  );
  const { forAll, forOne } = indexedLinks(node);
  const missing = needed.filter(({ index, name }) => !forAll.has(name) && !forOne.has(`${index} ${name}`));
  const severity = missing.length < needed.length ? 'error' : 'warning';
  for (const { process, index, name } of missing) {
    const hint = `Add ${name}Link with Usage="Input" and CombinedProcessIndex="${index}".`;
    findings.tell(severity, 'JDF_LINK', node.element, `${process}, process ${index}, has no ${name}.`, hint);
  }
}

/** What is linked for all processes of a node, by name, and what for one of them, by its index and name. */
function indexedLinks({ links }: TicketNode): Readonly<Record<'forAll' | 'forOne', ReadonlySet<string>>> {
  const [forAll, forOne] = [new Set<string>(), new Set<string>()];
  for (const link of links) {
    const indexes = indexesOf(link);
    if (indexes.length === 0) forAll.add(link.name);
    for (const index of indexes) forOne.add(`${index} ${link.name}`);
  }
  return { forAll, forOne };
}

/** What passes from one process to the next need not be linked, but there must be something that can pass. */
function checkExchange(node: TicketNode, findings: Findings): void {
  for (const [index, process] of node.types.slice(1).entries()) {
    const before = node.types[index]!;
    const made = processRules.get(before)?.links.filter(({ usage }) => usage === 'Output');
    const taken = processRules.get(process)?.links.filter(({ usage }) => usage === 'Input');
    if (made === undefined || taken === undefined) continue;
    const passes = (name: string): boolean =>
      name === 'any' || isTakenByAll(name) || taken.some((one) => one.name === name || one.name === 'any');
    if (made.some(({ name }) => passes(name))) continue;
    const names = [...new Set(made.map(({ name }) => name))].join(' or ') || 'nothing';
    findings.warning(
      'JDF_NETWORK',
      node.element,
      `${before} makes ${names}, which the next process, ${process}, does not take.`,
      'Name the processes in Types in the order in which they are done.',
    );
  }
}
