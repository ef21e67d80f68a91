/** Our tree against that of another parser (fast-xml-parser 5, order preserving) over every official sample of both generations and over documents made by chance. */

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { XMLParser } from 'fast-xml-parser';
import type { XmlElement, XmlNode } from '#libs/jdf';
import { generatedXml } from '../kit/generated-xml.js';
import { parsedXml } from '../kit/value-in.js';
import { standardsFolder } from './samples.js';

/** What both trees can say: names, attributes with their order, texts, comments, CDATA, instructions. */
type Plain =
  | { name: string; attributes: [string, string][]; children: Plain[] }
  | { text: string }
  | { cdata: string }
  | { comment: string };

const reader = new XMLParser({
  preserveOrder: true,
  ignoreAttributes: false,
  attributeNamePrefix: '',
  trimValues: false,
  parseTagValue: false,
  parseAttributeValue: false,
  commentPropName: '#comment',
  cdataPropName: '#cdata',
  processEntities: true,
  htmlEntities: false,
});

type Other = Record<string, unknown> & { ':@'?: Record<string, string> };

function fromOther(node: Other): Plain[] {
  const name = Object.keys(node).find((key) => key !== ':@') ?? '';
  const inner = node[name];
  if (name === '#text') return [{ text: String(inner) }];
  const textIn = (value: unknown): string => String((value as Other[])[0]?.['#text'] ?? '');
  if (name === '#comment') return [{ comment: textIn(inner) }];
  if (name === '#cdata') return [{ cdata: textIn(inner) }];
  if (name.startsWith('?')) return [];
  return [
    {
      name,
      attributes: Object.entries(node[':@'] ?? {}).map(([key, value]) => [key, blanks(value)]),
      children: joined((inner as Other[]).flatMap(fromOther)),
    },
  ];
}

// XML 1.0 section 3.3.3: a line end or tab in an attribute is a blank. The other parser leaves that to its caller.
const blanks = (value: string): string => value.replace(/\r\n|[\r\n\t]/g, ' ');

function fromOurs(node: XmlNode): Plain[] {
  switch (node.kind) {
    case 'element':
      return [
        {
          name: node.name,
          attributes: node.attributes.map(({ name, value }) => [name, value]),
          children: joined(node.children.flatMap(fromOurs)),
        },
      ];
    case 'text':
      return [{ text: node.value }];
    case 'cdata':
      return [{ cdata: node.value }];
    case 'comment':
      return [{ comment: node.value }];
    default:
      return [];
  }
}

/** Neighbouring texts are one text: where a parser cuts them is its own affair. */
function joined(nodes: Plain[]): Plain[] {
  const out: Plain[] = [];
  for (const node of nodes) {
    const last = out.at(-1);
    if ('text' in node && last !== undefined && 'text' in last) last.text += node.text;
    else if (!('text' in node) || node.text !== '') out.push({ ...node });
  }
  return out;
}

const paths = (
  JSON.parse(readFileSync(join(standardsFolder(), 'samples.json'), 'utf8')) as { path: string }[]
).map(({ path }) => path);

/** Both trees of a text: ours, and the other one. */
function trees(text: string): [ours: unknown, other: unknown] {
  const ours = parsedXml(text);
  const other = (reader.parse(text) as Other[]).flatMap(fromOther).find((node) => 'name' in node);
  const root: XmlElement = ours.root;
  return [fromOurs(root)[0], other];
}

/**
 * Without what the other parser is known to do otherwise: it leaves numeric references and lone carriage returns as they
 * are, and refuses a name of which JavaScript makes something else.
 */
const tame = (text: string): string =>
  text
    .replace(/&#\w+;/g, 'n')
    .replace(/\r\n?/g, '\n')
    .replaceAll('__proto__', 'proto')
    .replaceAll('constructor', 'maker');

describe('the tree that another parser reads', () => {
  it.each(paths)('is ours too, of %s', (path) => {
    const [ours, other] = trees(readFileSync(join(standardsFolder(), path), 'utf8'));
    expect(ours).toEqual(other);
  });

  it('is ours too, of documents made by chance', () => {
    fc.assert(
      fc.property(generatedXml, ({ text }) => {
        const [ours, other] = trees(tame(text));
        expect(ours).toEqual(other);
      }),
      { seed: 6, numRuns: 300 },
    );
  });
});
