import { done, error, type Problem, type Result, refuse } from '#libs/kernel';
import { kindOf } from '../ticket/kind.js';
import { inheritedAttribute, lineageOf } from '../ticket/node.js';
import { attributeOf, type XmlDocument, type XmlElement } from '../xml/index.js';
import { ancestorIds, namedAncestors } from './ancestors.js';
import { inventoryOf } from './inventory.js';
import { where } from './places.js';
import { openRecords, recordsOf, type SpawnRecord } from './records.js';

/** Where a returned ticket belongs. */
export interface Return {
  readonly record: SpawnRecord;
  readonly records: readonly SpawnRecord[];
  /** The node that was left behind. */
  readonly stub: XmlElement;
  readonly partial: boolean;
}

/** Finds where a returned ticket belongs, or says why it does not. Errors: JDF_MERGE, and those of what is no JDF. */
export function returnOf(parent: XmlDocument, child: XmlDocument): Result<Return> {
  for (const doc of [parent, child]) {
    const kind = kindOf(doc);
    if (!kind.ok) return kind;
    if (kind.value !== 'jdf')
      return refuse(error('KIND_UNKNOWN', `${doc.root.name} is no JDF.`, where(doc, doc.root)));
  }
  const no = (message: string, hint: string, doc = child, el = child.root): Result<never> =>
    refuse(error('JDF_MERGE', message, { ...where(doc, el), hint }));
  const token = attributeOf(child.root, 'SpawnID');
  const records = recordsOf(parent.root);
  const open = openRecords(records);
  if (token === undefined) return no('The ticket has no SpawnID.', 'Only a spawned ticket can be merged.');
  const merged = records.find((record) => record.kind === 'Merged' && record.token === token);
  if (merged !== undefined)
    return no(
      `The ticket with SpawnID "${token}" has been merged already.`,
      'Spawn the node again to change more.',
      parent,
      merged.audit,
    );
  const record = open.find((one) => one.token === token);
  if (record === undefined) {
    const known =
      open.length === 0 ? 'Nothing of it is out.' : `Out are: ${open.map((one) => one.token).join(', ')}.`;
    return no(`Nothing was spawned from this ticket with SpawnID "${token}".`, known);
  }
  const stub = inventoryOf(parent.root).nodes.get(record.nodeId);
  if (stub === undefined)
    return no(
      `The node "${record.nodeId}" that was spawned is not there any more.`,
      'Put it back, with Status Spawned.',
      parent,
      record.audit,
    );
  const wrong = misfit(parent, child, record, stub);
  if (wrong !== undefined) return refuse(wrong);
  const inner = openRecords(recordsOf(child.root)).filter((one) => one.token !== token);
  if (inner.length > 0)
    return no(
      `Parts of the ticket are out: ${inner.map((one) => one.token).join(', ')}.`,
      'Merge them into it first.',
      child,
      inner[0]!.audit,
    );
  return done({ record, records, stub, partial: record.parts.length > 0 });
}

function misfit(
  parent: XmlDocument,
  child: XmlDocument,
  record: SpawnRecord,
  stub: XmlElement,
): Problem | undefined {
  const at = (doc: XmlDocument, el: XmlElement, message: string, hint: string): Problem =>
    error('JDF_MERGE', message, { ...where(doc, el), hint });
  const { nodeId, parts } = record;
  const id = attributeOf(child.root, 'ID') ?? '';
  if (id !== nodeId)
    return at(
      child,
      child.root,
      `The ticket is the node "${id}", but "${nodeId}" was spawned.`,
      'The ID of the root must stay as it was sent.',
    );
  const jobId = inheritedAttribute(parent, stub, 'JobID')?.value;
  const own = attributeOf(child.root, 'JobID');
  if (jobId !== undefined && own !== undefined && jobId !== own)
    return at(
      child,
      child.root,
      `The ticket is of job "${own}", not "${jobId}".`,
      'Merge it into the ticket of its own job.',
    );
  const around = ancestorIds(parent, stub);
  const named = namedAncestors(child.root);
  const ids = named.map((ancestor) => attributeOf(ancestor, 'NodeID') ?? '');
  if (named.length > 0 && ids.join(' ') !== around.join(' '))
    return at(
      child,
      named[0]!,
      `The ticket comes from ${ids.join(' / ')}, this one is ${around.join(' / ')}.`,
      'Merge it into the ticket that its AncestorPool names.',
    );
  const outer = lineageOf(parent, stub)
    .slice(1)
    .find((one) => attributeOf(one, 'Status') === 'Spawned');
  if (outer !== undefined)
    return at(
      parent,
      outer,
      `${outer.name} "${attributeOf(outer, 'ID')}" around it is itself out.`,
      'Merge into the ticket that it left in.',
    );
  const status = attributeOf(stub, 'Status') ?? '';
  const expected = parts.length > 0 ? 'Part' : 'Spawned';
  return status === expected
    ? undefined
    : at(
        parent,
        stub,
        `The node "${nodeId}" has Status ${status}, not ${expected}.`,
        `Set it back to ${expected}, or undo the spawning.`,
      );
}
