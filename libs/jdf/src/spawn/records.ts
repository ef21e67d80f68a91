import { parseDateTime, splitTokens } from '../codec/index.js';
import type { PartKeys } from '../elements/part.js';
import { partsNamed } from '../partition/index.js';
import { nodesOf } from '../ticket/node.js';
import { attributeOf, childElements, type XmlElement } from '../xml/index.js';
import type { CopyMode, ModeOf } from './marks.js';

/** What an audit says of a part of the ticket that left or came back. */
export interface SpawnRecord {
  readonly kind: 'Spawned' | 'Merged';
  /** NewSpawnID or MergeID. */
  readonly token: string;
  readonly audit: XmlElement;
  /** The node whose AuditPool it lies in. */
  readonly owner: XmlElement;
  /** ID of the node that left. */
  readonly nodeId: string;
  readonly readOnly: readonly string[];
  readonly readWrite: readonly string[];
  readonly overwritten: readonly string[];
  readonly parts: readonly PartKeys[];
  /** TimeStamp, where it can be read. */
  readonly at: number | undefined;
}

/** All that the audits of a node and the nodes in it say of leaving and coming back, in document order. */
export function recordsOf(root: XmlElement): SpawnRecord[] {
  return [...nodesOf(root)].flatMap((owner) =>
    childElements(owner, 'AuditPool').flatMap((pool) =>
      childElements(pool).flatMap((audit) =>
        audit.local === 'Spawned' || audit.local === 'Merged' ? [record(audit, audit.local, owner)] : [],
      ),
    ),
  );
}

function record(audit: XmlElement, kind: 'Spawned' | 'Merged', owner: XmlElement): SpawnRecord {
  const list = (name: string): readonly string[] => splitTokens(attributeOf(audit, name) ?? '');
  return {
    kind,
    token: attributeOf(audit, kind === 'Spawned' ? 'NewSpawnID' : 'MergeID') ?? '',
    audit,
    owner,
    nodeId: attributeOf(audit, 'jRef') ?? '',
    readOnly: list('rRefsROCopied'),
    readWrite: list('rRefsRWCopied'),
    overwritten: list('rRefsOverwritten'),
    parts: partsNamed(audit),
    at: parseDateTime(attributeOf(audit, 'TimeStamp') ?? ''),
  };
}

/** What left and has not come back. */
export function openRecords(records: readonly SpawnRecord[]): SpawnRecord[] {
  const back = new Set(records.filter(({ kind }) => kind === 'Merged').map(({ token }) => token));
  return records.filter(({ kind, token }) => kind === 'Spawned' && !back.has(token));
}

/** How a resource was copied under each token. */
export function modesOf(records: readonly SpawnRecord[], resourceId: string): ModeOf {
  const modes = new Map<string, CopyMode>();
  for (const { kind, token, readOnly, readWrite } of records) {
    if (kind !== 'Spawned') continue;
    if (readWrite.includes(resourceId)) modes.set(token, 'RW');
    else if (readOnly.includes(resourceId)) modes.set(token, 'RO');
  }
  return (token) => modes.get(token);
}
