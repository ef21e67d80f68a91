import type { Severity } from '#libs/kernel';
import type { Findings } from '../../codec/index.js';
import { isTakenByAll, type LinkRule, type ProcessRule, processRules } from '../../standard/index.js';
import type { TicketCheck, TicketLink, TicketNode } from './ticket-check.js';

/**
 * JDF Usage, ProcessUsage: a node links to what its process takes and makes, in the roles and as often as
 * the standard allows. What is missing is a warning: tickets travel before prepress has filled them in.
 */
export const processLinks: TicketCheck = {
  number: 3,
  name: 'links of processes',
  run({ nodes }, findings) {
    for (const node of nodes) checkNode(node, findings);
  },
};

function checkNode(node: TicketNode, findings: Findings): void {
  const rules = rulesOf(node);
  if (rules === undefined) return;
  const severity = node.grayBox ? 'warning' : 'error';
  const allowed = rules.flatMap(({ links }) => links);
  const what = node.type === 'Product' ? 'A product' : node.processes.join(' + ');
  for (const link of node.links) checkLink(link, what, allowed, severity, findings);
  const [only] = rules;
  if (node.processes.length > 1 || only === undefined || node.grayBox) return;
  for (const rule of only.links) countLinks(node, rule, findings);
}

/** The rules of all processes of the node; undefined where one is unknown here, so that anything might be right. */
function rulesOf(node: TicketNode): readonly ProcessRule[] | undefined {
  const names = node.type === 'Product' ? ['Product'] : node.processes;
  const rules = [...new Set(names)].map((name) => processRules.get(name));
  return names.length > 0 && rules.every((rule) => rule !== undefined) ? rules : undefined;
}

function checkLink(
  { element, name, usage, role }: TicketLink,
  what: string,
  allowed: readonly LinkRule[],
  severity: Severity,
  findings: Findings,
): void {
  if (usage === '' || (usage === 'Input' && isTakenByAll(name))) return;
  const named = allowed.filter((rule) => rule.name === name || rule.name === 'any');
  const used = named.filter((rule) => rule.usage === usage);
  if (used.length === 0) {
    const hint = named.length === 0 ? null : `It is ${named[0]!.usage} of ${what}.`;
    const is = usage === 'Input' ? 'takes' : 'makes';
    findings.tell(severity, 'JDF_LINK', element, `${what} ${is} no ${name}.`, hint);
    return;
  }
  if (role === '' || used.some((rule) => rule.role === role || rule.name === 'any')) return;
  const roles = used.flatMap((rule) => (rule.role === '' ? [] : [rule.role]));
  const hint = roles.length === 0 ? 'Leave out ProcessUsage.' : `It may be ${roles.join(', ')}.`;
  findings.warning('JDF_LINK', element, `${what} knows no ProcessUsage="${role}" of ${name}.`, hint);
}

function countLinks(node: TicketNode, rule: LinkRule, findings: Findings): void {
  const { name, usage, role, least, most } = rule;
  if (name === 'any') return;
  const links = node.links.filter((link) => link.name === name && link.usage === usage && link.role === role);
  const asRole = role === '' ? '' : ` of ProcessUsage="${role}"`;
  if (links.length < least) {
    const hint = `Add a ${name}Link with Usage="${usage}"${role === '' ? '' : ` and ProcessUsage="${role}"`}.`;
    findings.warning('JDF_LINK', node.element, `${node.type} has no ${usage} ${name}${asRole}.`, hint);
    return;
  }
  // Several links may select parts of one and the same resource.
  const resources = new Map(links.map((link) => [link.resource ?? link, link]));
  const [first] = [...resources.values()].slice(most);
  if (first === undefined) return;
  const is = usage === 'Input' ? 'takes' : 'makes';
  const message = `${node.type} ${is} ${most} ${name}${asRole}, and this is one more.`;
  findings.error('JDF_LINK', first.element, message, 'Leave out the link, or give it its ProcessUsage.');
}
