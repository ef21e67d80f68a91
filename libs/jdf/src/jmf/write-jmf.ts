import { Fault } from '#libs/kernel';
import { time, writeFields } from '../codec/index.js';
import { employee } from '../elements/device.js';
import { type MessageContents, standardMessages } from '../messages/index.js';
import { partsOfKind } from '../messages/table.js';
import {
  documentOf,
  element,
  indented,
  JDF_NAMESPACE,
  writeXml,
  type XmlElement,
  XSI_NAMESPACE,
} from '../xml/index.js';
import type { Content } from './content.js';
import { headFields } from './head.js';
import { type Family, type NewJmf, type NewMessage, type NewOtherMessage } from './message.js';

/** The version that is written unless the receiver wants another one. */
export const JMF_VERSION = '1.9';

// xs:ID is a name without colon: it cannot begin with a digit, as identifiers of ours may.
const NAME = /^[\p{L}_][\p{L}\p{N}_.-]*$/u;

/** Types of the standard that its schema forgot: an xsi:type would make such a message invalid. Source: JDF 1.9 schema. */
const withoutSchemaType: ReadonlySet<string> = new Set(['GangStatus']);

/** An identifier as the ID of a message: with a letter before it. */
export function messageId(id: string): string {
  return `m-${id}`;
}

/**
 * A JMF document as text, to be sent as UTF-8. Every message of a known kind has its xsi:type. A faulty ID or an
 * unknown kind is a Fault: it is the program that is wrong.
 */
export function writeJmf(jmf: NewJmf, contents: MessageContents = standardMessages): string {
  const root = element(
    'JMF',
    {
      xmlns: JDF_NAMESPACE,
      'xmlns:xsi': XSI_NAMESPACE,
      SenderID: jmf.senderId,
      DeviceID: jmf.deviceId,
      TimeStamp: time.write(jmf.timeStamp),
      Version: jmf.version ?? JMF_VERSION,
      MaxVersion: jmf.maxVersion ?? JMF_VERSION,
      ResponseURL: jmf.responseUrl,
      AgentName: jmf.agentName,
      AgentVersion: jmf.agentVersion,
      ICSVersions: jmf.icsVersions?.join(' '),
      'xsi:type': 'JMFRootMessage',
    },
    [
      ...(jmf.employees ?? []).map(employee.write),
      ...jmf.messages.map((message) => writeMessage(message, contents, jmf.version)),
    ],
  );
  return writeXml(documentOf(indented(root)));
}

function writeMessage(
  message: NewMessage | NewOtherMessage,
  contents: MessageContents,
  version: string | undefined,
): XmlElement {
  if (!NAME.test(message.id)) throw new Fault('BROKEN', `"${message.id}" cannot be the ID of a message.`);
  if (message.kind === 'other') {
    const known = Object.hasOwn(contents, message.family + message.type);
    return build(message, message.family, message.type, known, []);
  }
  const { kind } = message;
  const parts = partsOfKind(kind);
  const content = contents[kind] as Content<unknown> | undefined;
  if (parts === undefined || content === undefined) throw new Fault('BROKEN', `No content for ${kind}.`);
  return build(message, parts.family, parts.type, true, content.write(message.body, version));
}

function build(
  head: NewMessage | NewOtherMessage,
  family: Family,
  type: string,
  known: boolean,
  body: readonly XmlElement[],
): XmlElement {
  const written = writeFields(headFields[family], head as never);
  const schemaType = known && !withoutSchemaType.has(type) ? family + type : undefined;
  // The schema has the content of the family before that of the type.
  return element(family, { ...written.attributes, Type: type, 'xsi:type': schemaType }, [
    ...written.children,
    ...body,
  ]);
}
