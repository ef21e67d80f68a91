/** Every message of the standard in every family, made from the official schema, through our reading and writing. */
import fc from 'fast-check';
import {
  documentOf,
  element,
  JDF_NAMESPACE,
  type Message,
  messageTypes,
  type NewMessage,
  partsOfKind,
  readJmf,
  standardMessages,
  writeJmf,
  writeXml,
  type XmlElement,
  XSI_NAMESPACE,
} from '#libs/jdf';
import { parsedXml, valueIn } from '../kit/value-in.js';
import { type Fullness, MessageMaker } from './message-documents.js';
import { messageKinds } from './schema-tree.js';
import { schemaFaults } from './xmllint.js';

const kinds = messageKinds();
// In the standard's text and in none of its schema types (standard: messages of ganging).
const beyondSchema = ['QueryGangStatus', 'ResponseGangStatus', 'SignalGangStatus'];

const SEED = 20_260_101;

interface Made {
  readonly name: string;
  readonly version: string;
  readonly message: XmlElement;
}

function make(fullness: Fullness, version: string, runs: number): Made[] {
  return kinds.flatMap((kind, i) =>
    fc.sample(fc.gen(), { seed: SEED + i, numRuns: runs }).map((draw, run) => {
      const { family, type } = partsOfKind(kind)!;
      const message = new MessageMaker(fullness, version, draw).message(family, type);
      return { name: `${kind}-${version}-${fullness}-${run}.jmf`, version, message };
    }),
  );
}

const made = [
  ...make('least', '1.9', 1),
  ...make('most', '1.9', 1),
  ...make('some', '1.9', 1),
  ...make('most', '1.4', 1),
  ...make('most', '1.2', 1),
];

const source = ({ version, message }: Made): string =>
  writeXml(
    documentOf(
      element(
        'JMF',
        {
          xmlns: JDF_NAMESPACE,
          'xmlns:xsi': XSI_NAMESPACE,
          SenderID: 'sender',
          TimeStamp: '2024-07-25T10:00:00.000Z',
          Version: version,
        },
        [message],
      ),
    ),
  );

function read(text: string): Message {
  return valueIn(readJmf(parsedXml(text))).messages[0]!;
}

const write = (message: Message, version: string): string =>
  writeJmf({ senderId: 'sender', timeStamp: 0, version, messages: [message as NewMessage] });

const sources = made.map(source);
const values = sources.map(read);
const written = values.map((message, i) => write(message, made[i]!.version));
const named = (texts: readonly string[]): Record<string, string> =>
  Object.fromEntries(texts.map((text, i) => [made[i]!.name, text]));

/** Zeros at the end of a fraction of a second say nothing. */
const withoutIdleZeros = (value: string): string =>
  value.replace(/(T\d\d:\d\d:\d\d)(?:\.0+|(\.\d*[1-9])0+)?(?=Z|[+-]\d\d:\d\d$)/, '$1$2');

/** Everything an element says, whatever the order it says it in; an element that says nothing is as good as none. */
function saying(el: XmlElement): string {
  const attributes = el.attributes
    .filter(({ name }) => !name.startsWith('xmlns'))
    .map(({ name, value }) => `${name}=${JSON.stringify(withoutIdleZeros(value))}`)
    .sort();
  const inner = el.children.flatMap((child) => {
    if (child.kind === 'element') return [saying(child)];
    return child.kind === 'text' && child.value.trim() !== '' ? [JSON.stringify(child.value)] : [];
  });
  const told = inner.filter((text) => !/^\w+\(\)\[\]$/.test(text)).sort();
  return `${el.local}(${attributes.join(' ')})[${told.join(' ')}]`;
}

function messageIn(text: string): XmlElement {
  const doc = parsedXml(text);
  return doc.root.children.find((child) => child.kind === 'element')!;
}

describe('the table of messages', () => {
  it('has the types and families of the schema, and of the text where the schema forgot them', () => {
    expect(Object.keys(standardMessages).sort()).toEqual([...kinds, ...beyondSchema].sort());
    expect(
      messageTypes.flatMap(({ type, families }) => families.map((family) => family + type)).sort(),
    ).toEqual(Object.keys(standardMessages).sort());
  });
});

describe('every kind of message', () => {
  it('is made for these tests as the schema has it', () => {
    expect(schemaFaults(named(sources))).toEqual({});
  });

  it('is read without anything left over', () => {
    const problems = values.flatMap((message, i) =>
      message.problems.map((problem) => `${made[i]!.name}: ${problem.message} ${problem.path}`),
    );
    expect(problems).toEqual([]);
  });

  it('says the same when it is written again', () => {
    const changed = made.flatMap(({ name, message }, i) => {
      const [before, after] = [saying(message), saying(messageIn(written[i]!))];
      return before === after ? [] : [[name, before, after]];
    });
    expect(changed.slice(0, 3)).toEqual([]);
  });

  it('is read as the same value from what was written', () => {
    expect(written.map((text, i) => write(read(text), made[i]!.version))).toEqual(written);
  });

  it('is valid against the schema when it is written', () => {
    expect(schemaFaults(named(written))).toEqual({});
  });
});
