import { codes, done, error, hasErrors, type Problem, type Result, refuse } from '#libs/kernel';
import {
  children,
  type Fields,
  Findings,
  oneOf,
  optional,
  readFields,
  required,
  text,
  time,
  tokens,
} from '../codec/index.js';
import { employee } from '../elements/device.js';
import { versions } from '../enumerations.js';
import { type MessageContents, standardMessages } from '../messages/index.js';
import {
  attributeOf,
  childElements,
  JDF_NAMESPACE,
  pathOf,
  type XmlDocument,
  type XmlElement,
  XSI_NAMESPACE,
} from '../xml/index.js';
import { headFields } from './head.js';
import { type Family, families, type Jmf, type Message, type MessageHead } from './message.js';
import { warnOfUnknown } from './unknown-content.js';

const envelopeFields = {
  senderId: required('SenderID', text),
  deviceId: optional('DeviceID', text),
  timeStamp: required('TimeStamp', time),
  version: required('Version', oneOf(versions)),
  maxVersion: optional('MaxVersion', oneOf(versions)),
  responseUrl: optional('ResponseURL', text),
  agentName: optional('AgentName', text),
  agentVersion: optional('AgentVersion', text),
  icsVersions: optional('ICSVersions', tokens),
  employees: children(employee),
};

// Read before the fields of a message are.
const messageNames = { type: required('Type', text) };

/**
 * Reads a JMF document. The whole is refused (JMF_CONTENT) only when it is no JMF, its envelope is faulty or it has no
 * message; a fault inside one message stays with that message, so that the others can be served and each be answered.
 */
export function readJmf(doc: XmlDocument, contents: MessageContents = standardMessages): Result<Jmf> {
  const { root } = doc;
  if (root.local !== 'JMF' || root.uri !== JDF_NAMESPACE) {
    const where = { line: root.line, path: `/${root.name}` };
    return refuse(error('JMF_CONTENT', `${root.name} is not the root of a JMF document.`, where));
  }
  const findings = new Findings(doc, { missing: 'JMF_CONTENT', wrong: 'JMF_CONTENT' });
  const envelope = readFields(envelopeFields, root, findings);
  const elements = childElements(root).filter((el) => (families as readonly string[]).includes(el.local));
  if (elements.length === 0) findings.missing(root, 'message');
  if (envelope === undefined || findings.problems.length > 0) return refuse(...findings.problems);
  const seen = new Set<string>();
  const messages = elements.map((el) => {
    const message = readMessage(doc, el, contents);
    if (!seen.has(message.id)) {
      seen.add(message.id);
      return message;
    }
    const where = { line: message.line, path: message.path };
    return unread(message, [
      error('JDF_ID_DOUBLE', `Another message has the ID "${message.id}" too.`, where),
    ]);
  });
  return done({ ...envelope, messages });
}

/** The ReturnCode that answers a message: 0, or that of its first fault. */
export function returnCodeOf(problems: readonly Problem[]): number {
  const first = problems.find((problem) => problem.severity === 'error');
  return first === undefined ? 0 : codes[first.code].jmf;
}

function readMessage(doc: XmlDocument, el: XmlElement, contents: MessageContents): Message {
  const family = el.local as Family;
  const envelope = new Findings(doc, { missing: 'JMF_CONTENT', wrong: 'JMF_CONTENT' });
  const head = readFields(headFields[family], el, envelope) as MessageHead | undefined;
  const type = attributeOf(el, 'Type') ?? '';
  const found = {
    ...(head ?? { id: attributeOf(el, 'ID') ?? '' }),
    family,
    type,
    element: el,
    line: el.line,
    path: pathOf(doc, el),
  };
  if (type === '') envelope.missing(el, 'attribute Type');
  else checkTypeName(el, family, type, envelope);
  if (envelope.problems.length > 0) return unread(found, envelope.problems);
  const kind = family + type;
  const content = Object.hasOwn(contents, kind) ? contents[kind] : undefined;
  if (content === undefined) {
    envelope.error('JMF_TYPE', el, `${family} of type ${type} is not known.`);
    return unread(found, envelope.problems);
  }
  const inner = new Findings(doc, { missing: 'JMF_PARAMETER_MISSING', wrong: 'JMF_PARAMETER' });
  const body = content.read(el, inner);
  if (body === undefined || hasErrors(inner.problems)) return unread(found, inner.problems);
  // The kind was looked up in the contents, so the body is what that kind carries.
  if (content.fields !== undefined) {
    warnOfUnknown(el, allFields(family, content.fields), inner);
  }
  return { ...found, kind, body, problems: inner.problems } as unknown as Message;
}

// So that what is known of a kind is worked out once.
const fieldsOfKind = new WeakMap<Fields, Map<Family, Fields>>();

function allFields(family: Family, fields: Fields): Fields {
  const byFamily = fieldsOfKind.get(fields) ?? new Map<Family, Fields>();
  fieldsOfKind.set(fields, byFamily);
  const before = byFamily.get(family);
  if (before !== undefined) return before;
  const all = { ...(headFields[family] as Fields), ...messageNames, ...fields };
  byFamily.set(family, all);
  return all;
}

/** xsi:type, where given, must say the same as element name and Type; a name of a foreign namespace is not judged. */
function checkTypeName(el: XmlElement, family: string, type: string, findings: Findings): void {
  const schemaType = attributeOf(el, 'type', XSI_NAMESPACE);
  if (schemaType === undefined || type.includes(':')) return;
  const local = schemaType.slice(schemaType.indexOf(':') + 1);
  if (local !== family + type && local !== family) {
    findings.error('JMF_CONTENT', el, `xsi:type="${schemaType}" does not go with ${family} Type="${type}".`);
  }
}

function unread(found: Omit<Message, 'kind' | 'body' | 'problems'>, problems: readonly Problem[]): Message {
  return { ...found, kind: 'unread', body: null, problems };
}
