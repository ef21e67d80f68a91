import { type Findings, integers, oneOf, splitTokens, tokens, type ValueType } from '../../codec/index.js';
import {
  activations,
  nodeStatuses,
  partUsages,
  resourceClasses,
  resourceStatuses,
  usages,
  versions,
} from '../../enumerations.js';
import { attributeOf, childElements, firstChild, type XmlElement } from '../../xml/index.js';
import { processesOf } from '../node.js';

/** Attributes and structure of one node, without the nodes inside it. */
export function checkNode(node: XmlElement, isRoot: boolean, findings: Findings): void {
  need(node, ['ID', 'Type', 'Status'], findings);
  if (isRoot) need(node, ['Version'], findings);
  allowed(node, 'Status', oneOf(nodeStatuses), findings);
  allowed(node, 'Activation', oneOf(activations), findings);
  allowed(node, 'Version', oneOf(versions), findings);
  allowed(node, 'MaxVersion', oneOf(versions), findings);
  if (attributeOf(node, 'Template')?.trim() === 'true') {
    findings.error('JDF_TEMPLATE', node, `${node.name} is a template: it must not be executed.`);
  }
  checkStructure(node, findings);
  for (const pool of childElements(node, 'ResourcePool')) {
    for (const resource of childElements(pool)) checkResource(resource, findings);
  }
  // Without Types there is nothing that an index could count (a grouping node, or a single process).
  const processes = attributeOf(node, 'Types') === undefined ? 0 : processesOf(node).length;
  for (const pool of childElements(node, 'ResourceLinkPool')) {
    for (const link of childElements(pool)) checkLink(link, processes, findings);
  }
}

/** Standard reference, section 9, check 10: a node that names its processes holds no nodes, and Combined names them. */
function checkStructure(node: XmlElement, findings: Findings): void {
  const type = attributeOf(node, 'Type');
  const names = splitTokens(attributeOf(node, 'Types') ?? '');
  if (type === 'Combined' && names.length === 0) {
    findings.error(
      'JDF_STRUCTURE',
      node,
      'A Combined node has no Types.',
      'Name its processes in order in Types.',
    );
  }
  const inner = firstChild(node, 'JDF');
  if (inner === undefined) return;
  if (type === 'Combined' || (type === 'ProcessGroup' && names.length > 0)) {
    const hint = 'Leave out Types, or the nodes inside.';
    findings.error('JDF_STRUCTURE', inner, `A node of Type="${type}" with Types holds another node.`, hint);
  } else if (type !== undefined && type !== 'Product' && type !== 'ProcessGroup') {
    const hint = 'Only Product and ProcessGroup nodes hold nodes.';
    findings.error('JDF_STRUCTURE', inner, `A node of Type="${type}" holds another node.`, hint);
  }
}

function checkResource(resource: XmlElement, findings: Findings): void {
  need(resource, ['ID', 'Class', 'Status'], findings);
  allowed(resource, 'Class', oneOf(resourceClasses), findings);
  allowed(resource, 'Status', oneOf(resourceStatuses), findings);
  allowed(resource, 'PartUsage', oneOf(partUsages), findings);
}

function checkLink(link: XmlElement, processes: number, findings: Findings): void {
  need(link, ['rRef', 'Usage'], findings);
  allowed(link, 'Usage', oneOf(usages), findings);
  allowed(link, 'CombinedProcessIndex', integers, findings);
  if (processes === 0) return;
  for (const index of integers.read(attributeOf(link, 'CombinedProcessIndex') ?? '') ?? []) {
    if (index >= 0 && index < processes) continue;
    findings.error(
      'JDF_LINK',
      link,
      `CombinedProcessIndex ${index} of ${link.name} names no process.`,
      `Types has ${processes}, counted from 0.`,
    );
  }
}

function need(el: XmlElement, names: readonly string[], findings: Findings): void {
  for (const name of names) {
    const value = attributeOf(el, name);
    if (value === undefined || tokens.read(value)?.length === 0) findings.missing(el, `attribute ${name}`);
  }
}

function allowed<T>(el: XmlElement, name: string, type: ValueType<T>, findings: Findings): void {
  const value = attributeOf(el, name);
  if (value !== undefined && type.read(value) === undefined) findings.wrong(el, name, value, type.expects);
}
