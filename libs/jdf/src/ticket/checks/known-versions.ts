import type { Findings } from '../../codec/index.js';
import { jdfDictionary, type LinkRule, processRules, type VersionRange } from '../../standard/index.js';
import type { XmlElement } from '../../xml/index.js';
import { minorVersion, versionOfNode } from './look-up/versions.js';
import type { TicketCheck, TicketLink, TicketNode } from './ticket-check.js';

/**
 * JDF/@Version knows the processes of a node, the links of those processes and the resources in its pools: none is newer,
 * and none had been taken out before. Source of the versions: the notes (Version First, Last) of the official JDF schema.
 * That an attribute or element is newer is told with the structure of the document.
 */
export const knownVersions: TicketCheck = {
  number: 13,
  name: 'versions of processes and resources',
  run({ nodes }, findings) {
    for (const node of nodes) {
      const version = versionOfNode(node);
      if (Number.isNaN(version)) continue;
      for (const process of new Set(node.processes)) {
        const range = processRules.get(process)?.versions ?? null;
        tell(node.element, `the process ${process}`, range, version, findings);
      }
      const rules = rulesOf(node);
      for (const link of node.links) checkLink(node, link, rules, version, findings);
      for (const resource of node.resources) {
        const until = jdfDictionary().elementType(resource.local)?.versions?.until ?? null;
        tell(resource, resource.name, { since: null, until }, version, findings);
      }
    }
  },
};

/** What the processes of a node take and make, each process once. */
const rulesOf = (node: TicketNode): readonly LinkRule[] =>
  [...new Set(node.processes)].flatMap((process) => processRules.get(process)?.links ?? []);

/** A link is known as long as one of the processes knows it so. */
function checkLink(
  node: TicketNode,
  link: TicketLink,
  all: readonly LinkRule[],
  version: number,
  findings: Findings,
): void {
  const rules = all.filter(
    ({ name, usage, role }) => name === link.name && usage === link.usage && role === link.role,
  );
  const [first] = rules;
  if (first === undefined || rules.some(({ versions }) => isKnown(versions, version))) return;
  const role = link.role === '' ? '' : ` of ProcessUsage="${link.role}"`;
  const what = `${link.usage} ${link.name}${role} of ${node.processes.join(' + ')}`;
  tell(link.element, what, first.versions, version, findings);
}

function isKnown(range: VersionRange | null, version: number): boolean {
  return !(minorVersion(range?.since) > version) && !(minorVersion(range?.until) < version);
}

function tell(
  at: XmlElement,
  what: string,
  range: VersionRange | null,
  version: number,
  findings: Findings,
): void {
  if (range === null || isKnown(range, version)) return;
  const newer = minorVersion(range.since) > version;
  const known = newer ? `since version ${range.since}` : `up to version ${range.until}`;
  const message = `The standard has ${what} ${known}; this document says 1.${version}.`;
  const hint = newer
    ? `State Version="${range.since}" or higher, or leave it out.`
    : 'Use what has taken its place since.';
  findings.warning('JDF_VERSION', at, message, hint);
}
