import fc from 'fast-check';
import { type GeneratedXml, generatedXml, joined, type Plain } from '../../../../test/kit/generated-xml.js';
import { parsedXml } from '../../../../test/kit/value-in.js';
import {
  appended,
  descendants,
  documentOf,
  element,
  encodeXml,
  parseXml,
  replaceElements,
  withAttributes,
  withChildren,
  writeXml,
  type XmlDocument,
  type XmlElement,
  type XmlNode,
  XmlReader,
} from './index.js';

const SEED = { seed: 3, numRuns: 120 };

function plain(node: XmlNode): Plain {
  switch (node.kind) {
    case 'element':
      return {
        ...{
          name: node.name,
          uri: node.uri,
          attributes: node.attributes.map((a) => [a.name, a.value] as const),
        },
        children: joined(node.children.map(plain)),
      };
    case 'text':
      return { text: node.value };
    case 'cdata':
      return { cdata: node.value };
    case 'comment':
      return { comment: node.value };
    default:
      return { instruction: node.target, value: node.value };
  }
}

/** The element as if made here: nothing remembers how it was written. */
function forgetful(el: XmlElement): XmlElement {
  const { source: _, ...rest } = el;
  const children = el.children.map((child): XmlNode => {
    if (child.kind === 'element') return forgetful(child);
    const { source: __, ...leaf } = child;
    return leaf;
  });
  return { ...rest, children };
}

const each = (check: (made: GeneratedXml, doc: XmlDocument) => void): void =>
  fc.assert(
    fc.property(generatedXml, (made) => check(made, parsedXml(made.text))),
    SEED,
  );

describe('any document', () => {
  it('comes back as it was written, as text and in every encoding', () => {
    each(({ text }, doc) => {
      expect(writeXml(doc)).toBe(text);
      const bytes = new TextEncoder().encode(text);
      expect(encodeXml(parsedXml(bytes))).toEqual(bytes);
    });
  });

  it('is read as XML and Namespaces in XML say', () => {
    each(({ root }, doc) => expect(plain(doc.root)).toEqual(root));
  });

  it('is the same document when it is written anew', () => {
    each(({ root }, doc) => {
      const anew = parsedXml(writeXml(documentOf(forgetful(doc.root))));
      // Carriage returns within CDATA, comments and instructions cannot be written; reading has made line feeds of them.
      expect(plain(anew.root)).toEqual(root);
    });
  });

  it('is read alike in whatever pieces it comes', () => {
    fc.assert(
      fc.property(
        generatedXml,
        fc.array(fc.nat(40), { minLength: 1, maxLength: 60 }),
        ({ text }, lengths) => {
          const bytes = new TextEncoder().encode(text);
          const reader = new XmlReader();
          let at = 0;
          for (let i = 0; at < bytes.length; i++) {
            const next = at + lengths[i % lengths.length]! + 1;
            reader.push(bytes.subarray(at, next));
            at = next;
          }
          expect(reader.end()).toEqual(parseXml(bytes));
        },
      ),
      SEED,
    );
  });
});

describe('a change', () => {
  const withPick = (check: (made: GeneratedXml, doc: XmlDocument, pick: number) => void): void =>
    fc.assert(
      fc.property(generatedXml, fc.nat(), (made, pick) => check(made, parsedXml(made.text), pick)),
      SEED,
    );
  const exchanged = (doc: XmlDocument, number: number, change: (el: XmlElement) => XmlElement): string => {
    const el = [...descendants(doc.root)][number]!;
    return writeXml(replaceElements(doc, new Map([[el, change(el)]])));
  };
  const instead = (text: string, from: number, to: number, now: string): string =>
    text.slice(0, from) + now + text.slice(to);

  it('of an attribute touches nothing but its value', () => {
    withPick(({ text, values }, doc, pick) => {
      const place = values[pick % Math.max(1, values.length)];
      if (place === undefined) return;
      const { element: number, name, from, to, quote } = place;
      const quoted = quote === '"' ? `&quot;'` : `"&apos;`;
      expect(exchanged(doc, number, (el) => withAttributes(el, { [name]: `new "'\n&<` }))).toBe(
        instead(text, from, to, `new ${quoted}&#10;&amp;&lt;`),
      );
    });
  });

  it('that adds a child touches nothing but the end of its parent', () => {
    withPick(({ text, ends }, doc, pick) => {
      const { element: number, from, to, name } = ends[pick % ends.length]!;
      const now = from === to ? '<New/>' : `><New/></${name}>`;
      const child = element('New', {}, [], '');
      expect(exchanged(doc, number, (el) => appended(el, child))).toBe(instead(text, from, to, now));
    });
  });

  it('that is taken back leaves nothing behind', () => {
    withPick(({ text }, doc, pick) => {
      const all = [...descendants(doc.root)];
      const back = (el: XmlElement): XmlElement => {
        const changed = withAttributes(withChildren(el, []), { other: 1 });
        return withAttributes(withChildren(changed, el.children), { other: undefined });
      };
      expect(exchanged(doc, pick % all.length, back)).toBe(text);
    });
  });
});
