/**
 * Documents made by chance, each with what a reader must find in it: layout and content are drawn together, so that the
 * expected tree comes from no parser. Sources of the rules: XML 1.0 (sections 2.11 and 3.3.3), Namespaces in XML 1.0.
 */
import fc from 'fast-check';

export interface PlainElement {
  readonly name: string;
  readonly uri: string;
  readonly attributes: readonly (readonly [name: string, value: string])[];
  readonly children: readonly Plain[];
}
export type Plain =
  | PlainElement
  | { readonly text: string }
  | { readonly cdata: string }
  | { readonly comment: string }
  | { readonly instruction: string; readonly value: string };

/** Where an attribute's value stands in the text, without its quotes. */
export interface ValuePlace {
  /** Number of the element in document order. */
  readonly element: number;
  readonly name: string;
  readonly from: number;
  readonly to: number;
  readonly quote: string;
}

/** Where another child of an element would be written: before its end tag, or in place of the end of an empty tag. */
export interface ChildPlace {
  readonly element: number;
  readonly from: number;
  readonly to: number;
  readonly name: string;
}

export interface GeneratedXml {
  readonly text: string;
  readonly root: PlainElement;
  readonly values: readonly ValuePlace[];
  readonly ends: readonly ChildPlace[];
}

/** As written, and as read. */
type Chunk = readonly [raw: string, value: string];
interface Drawn {
  readonly name: string;
  readonly attributes: readonly {
    name: string;
    chunks: readonly Chunk[];
    quote: string;
    blanks: readonly string[];
  }[];
  readonly defaultNamespace: string | null;
  readonly children: readonly (Drawn | Leaf)[];
  readonly isEmptyTag: boolean;
  readonly tail: string;
}
type Leaf = { readonly raw: string; readonly plain: Plain };

const URIS: Readonly<Record<string, string>> = {
  j: 'http://www.CIP4.org/JDFSchema_1_1',
  x: 'urn:example:own',
  y: 'urn:y',
};
const same = (...raw: string[]): Chunk[] => raw.map((text) => [text, text] as const);
const both: Chunk[] = [
  ...same('a', 'Sheet 1', '\u00e9', '\u20ac', '\u{1f600}', '\u0085', '>', '/', '='),
  ...([
    ['&amp;', '&'],
    ['&lt;', '<'],
    ['&gt;', '>'],
    ['&#10;', '\n'],
    ['&#x9;', '\t'],
    ['&#13;', '\r'],
  ] as Chunk[]),
  ...([
    ['&apos;', "'"],
    ['&quot;', '"'],
    ['&#x1F600;', '\u{1f600}'],
  ] as Chunk[]),
];
const inValues: Chunk[] = [
  ...both,
  ...same(']]>', ' '),
  ['\t', ' '],
  ['\n', ' '],
  ['\r\n', ' '],
  ['\rz', ' z'],
];
const inTexts: Chunk[] = [
  ...both,
  ...same(' ', '\n', '\t', '"', "'", ']] ', ']]] '),
  ['\r\n', '\n'],
  ['\rz', '\nz'],
];

const blank = fc.constantFrom(' ', ' ', '  ', '\n', '\t', '\r\n ');
const perhaps = fc.constantFrom('', '', '', ' ', '\n', '\r\n\t');
const localName = fc.constantFrom(
  'a',
  'ID',
  'Media',
  '_b.c-d',
  '\u00e9',
  '\u03a9\u00b71',
  'constructor',
  '__proto__',
);
const name = fc
  .tuple(fc.constantFrom('', '', 'j:', 'x:', 'y:'), localName)
  .map(([prefix, local]) => prefix + local);

const normal = (raw: string): string => raw.replace(/\r\n?/g, '\n');
const textLeaf: fc.Arbitrary<Leaf> = fc
  .array(fc.constantFrom(...inTexts), { minLength: 1, maxLength: 5 })
  .map((chunks) => ({
    raw: chunks.map(([raw]) => raw).join(''),
    plain: { text: chunks.map(([, value]) => value).join('') },
  }));
const comment: fc.Arbitrary<Leaf> = fc
  .constantFrom('', ' a ', 'a-b', '\u00e9\r\nx', '<a>&b;', '- - ', '?>')
  .map((raw) => ({ raw: `<!--${raw}-->`, plain: { comment: normal(raw) } }));
const cdata: fc.Arbitrary<Leaf> = fc
  .constantFrom('', ']', ']]', '<&>', 'a]]b', '\u20ac\r\nx', '<![CDATA[', '-->')
  .map((raw) => ({ raw: `<![CDATA[${raw}]]>`, plain: { cdata: normal(raw) } }));
const instruction: fc.Arbitrary<Leaf> = fc
  .tuple(
    fc.constantFrom('p', 'xml-stylesheet', 'Ab.1'),
    fc.constantFrom('', 'a="1"', '?', 'x ? y', 'a\r\nb', '<'),
    blank,
  )
  .map(([target, value, space]) => ({
    raw: `<?${target}${value === '' ? '' : space}${value}?>`,
    plain: { instruction: target, value: normal(value) },
  }));

const attribute = fc.record({
  name,
  chunks: fc.array(fc.constantFrom(...inValues), { maxLength: 4 }),
  quote: fc.constantFrom('"', "'"),
  blanks: fc.tuple(blank, perhaps, perhaps),
});
const attributes = fc.uniqueArray(attribute, { maxLength: 4, selector: (drawn) => drawn.name });

const tree = fc.letrec<{ element: Drawn; child: Drawn | Leaf }>((tie) => ({
  element: fc.record({
    name,
    attributes,
    defaultNamespace: fc.constantFrom(null, null, null, '', 'urn:d', 'urn:e'),
    children: fc.array(tie('child'), { maxLength: 5, depthIdentifier: 'tree' }),
    isEmptyTag: fc.boolean(),
    tail: perhaps,
  }),
  child: fc.oneof(
    { depthIdentifier: 'tree', maxDepth: 6 },
    textLeaf,
    ...[textLeaf, comment, cdata, instruction],
    tie('element'),
    tie('element'),
  ),
}));

/** Writes what was drawn, and notes where. */
class Scribe {
  text = '';
  readonly values: ValuePlace[] = [];
  readonly ends: ChildPlace[] = [];
  #elements = 0;

  element(drawn: Drawn, outer: string, isRoot: boolean): PlainElement {
    const number = this.#elements++;
    const uri = drawn.defaultNamespace ?? outer;
    const found: [string, string][] = [];
    this.text += `<${drawn.name}`;
    for (const [key, value] of isRoot ? Object.entries(URIS) : []) {
      this.text += ` xmlns:${key}='${value}'`;
      found.push([`xmlns:${key}`, value]);
    }
    for (const { name, chunks, quote, blanks } of drawn.attributes) {
      this.text += `${blanks[0]}${name}${blanks[1]}=${blanks[2]}${quote}`;
      const raw = chunks.map(([written]) => written.replaceAll(quote, '&#34;')).join('');
      this.values.push({
        element: number,
        name,
        quote,
        from: this.text.length,
        to: this.text.length + raw.length,
      });
      this.text += raw + quote;
      found.push([name, chunks.map(([, value]) => value).join('')]);
    }
    if (drawn.defaultNamespace !== null) {
      this.text += ` xmlns="${drawn.defaultNamespace}"`;
      found.push(['xmlns', drawn.defaultNamespace]);
    }
    const prefix = drawn.name.includes(':') ? drawn.name.split(':')[0]! : '';
    const isEmptyTag = drawn.children.length === 0 && drawn.isEmptyTag;
    this.text += drawn.tail;
    const end = this.text.length;
    this.text += isEmptyTag ? '/>' : '>';
    const children: Plain[] = [];
    for (const child of drawn.children) {
      children.push('raw' in child ? this.leaf(child) : this.element(child, uri, false));
    }
    const at = { element: number, name: drawn.name };
    this.ends.push({
      ...at,
      from: isEmptyTag ? end : this.text.length,
      to: isEmptyTag ? end + 2 : this.text.length,
    });
    if (!isEmptyTag) this.text += `</${drawn.name}${drawn.tail}>`;
    return {
      ...{ name: drawn.name, uri: prefix === '' ? uri : URIS[prefix]! },
      ...{ attributes: found, children: joined(children) },
    };
  }

  leaf({ raw, plain }: Leaf): Plain {
    this.text += raw;
    return plain;
  }
}

/** Neighbouring texts are one text. */
export function joined(nodes: readonly Plain[]): Plain[] {
  const out: Plain[] = [];
  for (const node of nodes) {
    const last = out.at(-1);
    if ('text' in node && last !== undefined && 'text' in last) {
      out[out.length - 1] = { text: last.text + node.text };
    } else if (!('text' in node) || node.text !== '') out.push(node);
  }
  return out;
}

const outside = fc.array(
  fc.oneof(
    comment,
    instruction,
    blank.map((raw) => ({ raw, plain: { text: normal(raw) } })),
  ),
  {
    maxLength: 3,
  },
);

/** A well-formed document in two or three namespaces, of every kind of node, in every layout that XML allows. */
export const generatedXml: fc.Arbitrary<GeneratedXml> = fc
  .record({
    declaration: fc.constantFrom(
      '',
      '<?xml version="1.0"?>',
      '<?xml version=\'1.0\'  encoding="UTF-8" standalone = "yes" ?>',
    ),
    before: outside,
    root: tree.element,
    after: outside,
  })
  .map(({ declaration, before, root, after }) => {
    const scribe = new Scribe();
    scribe.text = declaration;
    for (const leaf of before) scribe.leaf(leaf);
    const plain = scribe.element(root, '', true);
    for (const leaf of after) scribe.leaf(leaf);
    return { text: scribe.text, root: plain, values: scribe.values, ends: scribe.ends };
  });
