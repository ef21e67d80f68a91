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

/**
 * What the standard allows and the schema's own type of a message has forgotten: with an xsi:type such a message would
 * be invalid, as a message of its family alone it is valid. GangStatus has no type at all. Source: JDF 1.9 schema.
 */
const forgotten: Readonly<Record<string, readonly string[]>> = {
  QueryForceGang: ['Subscription'],
  QueryKnownControllers: ['ControllerFilter'],
  QueryNotification: ['Subscription'],
  QueryRequestForAuthentication: ['Subscription'],
  QueryFlushResources: ['Subscription'],
  ResponseForceGang: ['Queue'],
  SignalKnownControllers: ['ControllerFilter'],
  SignalKnownSubscriptions: ['SubscriptionFilter'],
};

function hasSchemaType(family: Family, type: string, content: readonly XmlElement[]): boolean {
  if (type === 'GangStatus') return false;
  return !content.some(({ local }) => local === 'Employee' || forgotten[family + type]?.includes(local));
}

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
  // In the schema's order: what is of the family before what is of the type.
  const content = [...written.children, ...body];
  const schemaType = known && hasSchemaType(family, type, content) ? family + type : undefined;
  return element(family, { ...written.attributes, Type: type, 'xsi:type': schemaType }, content);
}
