import { done, type Result, refuse } from '#libs/kernel';
import {
  boolean,
  children,
  duration,
  elementCodec,
  type Field,
  Findings,
  integers,
  number,
  type Of,
  oneOf,
  optional,
  readFields,
  required,
  text,
  time,
  type ValueOf,
  writeFields,
} from '../codec/index.js';
import { amountPool } from '../elements/amounts.js';
import { device, employee, misDetails } from '../elements/device.js';
import { notification } from '../elements/notification.js';
import { part } from '../elements/part.js';
import { phaseStatuses, runEndStatuses, usages } from '../enumerations.js';
import {
  appended,
  childElements,
  element,
  elementsLike,
  firstChild,
  replaceElements,
  text as textNode,
  withChildren,
  type XmlDocument,
  type XmlElement,
  type XmlNode,
} from '../xml/index.js';

const linkFields = {
  rRef: required('rRef', text),
  usage: required('Usage', oneOf(usages)),
  processUsage: optional('ProcessUsage', text),
  combinedProcessIndex: optional('CombinedProcessIndex', integers),
  amount: optional('Amount', number),
  actualAmount: optional('ActualAmount', number),
  parts: children(part),
  partAmounts: amountPool,
};

/** A resource link inside an audit; `name` is that of the resource, such as Component. */
export type AuditLink = ValueOf<typeof linkFields> & { readonly name: string };

const links: Field<readonly AuditLink[], false> = {
  required: false,
  read(el, findings) {
    const found = childElements(el).flatMap((link): AuditLink[] => {
      if (!link.local.endsWith('Link')) return [];
      const read = readFields(linkFields, link, findings);
      return read === undefined ? [] : [{ ...read, name: link.local.slice(0, -'Link'.length) }];
    });
    return found.length === 0 ? undefined : found;
  },
  write: (values) => ({
    children: values.map((value) => {
      const written = writeFields(linkFields, value);
      return element(`${value.name}Link`, written.attributes, written.children);
    }),
  }),
};

const common = {
  id: optional('ID', text),
  timeStamp: required('TimeStamp', time),
  agentName: optional('AgentName', text),
  agentVersion: optional('AgentVersion', text),
  author: optional('Author', text),
  queueEntryId: optional('QueueEntryID', text),
  /** ID of the audit that this one corrects. */
  refId: optional('refID', text),
};

const phaseTime = elementCodec('PhaseTime', {
  ...common,
  start: required('Start', time),
  end: optional('End', time),
  status: required('Status', oneOf(phaseStatuses)),
  statusDetails: optional('StatusDetails', text),
  devices: children(device),
  employees: children(employee),
  misDetails: children(misDetails),
  links,
  parts: children(part),
});

const processRun = elementCodec('ProcessRun', {
  ...common,
  start: required('Start', time),
  end: required('End', time),
  endStatus: required('EndStatus', oneOf(runEndStatuses)),
  /** Working time without breaks. */
  durationS: optional('Duration', duration),
  submissionTime: optional('SubmissionTime', time),
  returnTime: optional('ReturnTime', time),
  parts: children(part),
});

const resourceAudit = elementCodec('ResourceAudit', {
  ...common,
  reason: optional('Reason', oneOf(['OperatorInput', 'PlanChange', 'ProcessResult'])),
  contentsModified: optional('ContentsModified', boolean),
  nodeStatus: optional('NodeStatus', oneOf(phaseStatuses)),
  /** The first is how it is now, the second how it was planned. */
  links,
  parts: children(part),
});

const created = elementCodec('Created', { ...common, ref: optional('ref', text) });

const codecs = {
  Created: created,
  PhaseTime: phaseTime,
  ProcessRun: processRun,
  ResourceAudit: resourceAudit,
  Notification: notification,
};

export type AuditKind = keyof typeof codecs;
export type Audit = { [K in AuditKind]: { readonly kind: K } & Of<(typeof codecs)[K]> }[AuditKind];

/** The audits of a node that are of a kind known here, in document order. Errors: JDF_MISSING, JDF_VALUE. */
export function readAudits(doc: XmlDocument, node: XmlElement = doc.root): Result<readonly Audit[]> {
  const findings = new Findings(doc, { missing: 'JDF_MISSING', wrong: 'JDF_VALUE' });
  const pool = firstChild(node, 'AuditPool');
  const audits = (pool === undefined ? [] : childElements(pool)).flatMap((el): Audit[] => {
    const kind = el.local as AuditKind;
    const value = Object.hasOwn(codecs, kind) ? codecs[kind].read(el, findings) : undefined;
    // The codec was chosen by the kind, so the value is of that kind.
    return value === undefined ? [] : [{ kind, ...value } as Audit];
  });
  return findings.problems.length > 0 ? refuse(...findings.problems) : done(audits);
}

/**
 * The document with audits added at the end of a node's AuditPool, which is made if it is not there. What was there
 * stays as it was. IDs are the caller's and must be new to the document.
 */
export function appendAudits(
  doc: XmlDocument,
  audits: readonly Audit[],
  node: XmlElement = doc.root,
): XmlDocument {
  const made = audits.flatMap((audit): XmlNode[] => [textNode('\n    '), likeIn(node, writeAudit(audit))]);
  const pool = firstChild(node, 'AuditPool');
  if (pool !== undefined) {
    const { children: old } = pool;
    const last = old.at(-1);
    // Keep the line end before the end tag where it is.
    const closing = last?.kind === 'text' ? [last] : [textNode('\n  ')];
    const kept = last?.kind === 'text' ? old.slice(0, -1) : old;
    return replaceElements(doc, new Map([[pool, withChildren(pool, [...kept, ...made, ...closing])]]));
  }
  const fresh = appended(elementsLike(node)('AuditPool', {}, made), textNode('\n  '));
  return replaceElements(
    doc,
    new Map([[node, withChildren(node, [textNode('\n  '), fresh, ...node.children])]]),
  );
}

function writeAudit({ kind, ...audit }: Audit): XmlElement {
  return codecs[kind].write(audit as never);
}

/** The element and all below it with the prefix of the document it goes into. */
function likeIn(node: XmlElement, el: XmlElement): XmlElement {
  if (node.prefix === '') return el;
  return {
    ...el,
    name: `${node.prefix}:${el.local}`,
    prefix: node.prefix,
    children: el.children.map((child) => (child.kind === 'element' ? likeIn(node, child) : child)),
  };
}
