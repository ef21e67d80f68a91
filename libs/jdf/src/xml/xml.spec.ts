import { parsedXml } from '../../../../test/kit/value-in.js';
import {
  attributeOf,
  childElements,
  cloneElement,
  documentOf,
  element,
  elementsLike,
  encodeXml,
  findById,
  firstChild,
  indented,
  parseXml,
  pathOf,
  replaceElements,
  textOf,
  withAttributes,
  withChildren,
  writeXml,
} from './index.js';

const TICKET = `<?xml version='1.0'  encoding="UTF-8"?>\r
<!-- before --><?agent  does this?>
<j:JDF xmlns:j="http://www.CIP4.org/JDFSchema_1_1" ID = 'n1'
   x:extra="&#10;kept &amp; &lt;&quot;" xmlns:x="urn:example:extra"  >
  <j:ResourcePool ><j:Media ID="m1"/><j:Media ID="m2"></j:Media  >
  <x:own><![CDATA[<not> markup]]>&#233;\u00e9 &gt;</x:own></j:ResourcePool>
</j:JDF >
<!-- after -->
`;

describe('reading and writing XML', () => {
  it('gives back every byte of what was not changed: quotes, blanks, line ends, references, CDATA, comments', () => {
    expect(writeXml(parsedXml(TICKET))).toBe(TICKET);
  });

  it('reads values as XML 1.0 sections 2.11 and 3.3.3 say: line ends become one, references are resolved', () => {
    const doc = parsedXml('<a b="x\ty&#9;z&#10;" c="&#x41;">p\r\nq\rr<![CDATA[&amp;]]></a>');
    expect([attributeOf(doc.root, 'b'), attributeOf(doc.root, 'c')]).toEqual(['x y\tz\n', 'A']);
    expect(textOf(doc.root)).toBe('p\nq\nr&amp;');
  });

  it('knows the namespace of elements and attributes whatever their prefix', () => {
    const { root } = parsedXml(TICKET);
    expect([root.uri, root.local, root.prefix]).toEqual(['http://www.CIP4.org/JDFSchema_1_1', 'JDF', 'j']);
    expect(attributeOf(root, 'extra')).toBeUndefined();
    expect(attributeOf(root, 'extra', 'urn:example:extra')).toBe('\nkept & <"');
    const pool = firstChild(root, 'ResourcePool')!;
    expect(childElements(pool).map((el) => el.name)).toEqual(['j:Media', 'j:Media']);
    expect(childElements(pool, 'own', 'urn:example:extra')).toHaveLength(1);
  });

  it('keeps the line of every start tag, also where the name ends its line', () => {
    const doc = parsedXml('<a>\n<b\n c="1"/>\r\n<d\r\n/><e/></a>');
    expect(childElements(doc.root).map((el) => el.line)).toEqual([2, 4, 5]);
  });

  it('names an element by an XPath with a position only where siblings share its name', () => {
    const doc = parsedXml(TICKET);
    expect(pathOf(doc, findById(doc, 'm2')!)).toBe('/j:JDF/j:ResourcePool/j:Media[2]');
    expect(pathOf(doc, element('Media'))).toBe('');
  });

  it('reads UTF-16 with a byte order mark and writes the same bytes', () => {
    const text = '<?xml version="1.0" encoding="UTF-16"?><a b="\u00fc\u{1f600}"/>';
    for (const little of [true, false]) {
      const bytes = new Uint8Array((text.length + 1) * 2);
      [`\ufeff${text}`].forEach((t) => {
        for (let i = 0; i < t.length; i++)
          new DataView(bytes.buffer).setUint16(i * 2, t.charCodeAt(i), little);
      });
      const doc = parsedXml(bytes);
      expect(attributeOf(doc.root, 'b')).toBe('\u00fc\u{1f600}');
      expect(encodeXml(doc)).toEqual(bytes);
      expect(writeXml(doc)).toContain('encoding="UTF-8"');
    }
  });

  it('keeps a UTF-8 byte order mark in the bytes', () => {
    const bytes = new TextEncoder().encode('\ufeff<a/>');
    expect(encodeXml(parsedXml(bytes))).toEqual(bytes);
  });
});

describe('changing a document', () => {
  it('writes only the changed attributes anew and everything else as it was', () => {
    const doc = parsedXml(TICKET);
    const m2 = findById(doc, 'm2')!;
    const next = replaceElements(doc, new Map([[m2, withAttributes(m2, { ID: 'm3', Weight: 90.5 })]]));
    const expected = TICKET.replace(
      '<j:Media ID="m2"></j:Media  >',
      '<j:Media ID="m3" Weight="90.5"></j:Media  >',
    );
    expect(writeXml(next)).toBe(expected);
    expect(writeXml(doc)).toBe(TICKET);
  });

  it('opens an empty element that gets children and removes an element exchanged for null', () => {
    const doc = parsedXml('<a><b c = "1"/><d/></a>');
    const [b, d] = childElements(doc.root);
    const next = replaceElements(
      doc,
      new Map([
        [b!, withChildren(b!, [element('e', {}, [], '')])],
        [d!, null],
      ]),
    );
    expect(writeXml(next)).toBe('<a><b c = "1"><e/></b></a>');
  });

  it('escapes what it writes so that reading gives the same values', () => {
    const value = 'a<b>&"\'\n\t\r]]>\u00e9';
    const root = element(
      'a',
      { v: value },
      [
        { kind: 'text', value },
        { kind: 'cdata', value },
      ],
      '',
    );
    const again = parsedXml(writeXml(documentOf(root)));
    expect(attributeOf(again.root, 'v')).toBe(value);
    expect(textOf(again.root)).toBe(value + value.replace('\r', '\n'));
  });

  it('gives new elements the prefix of the document they go into', () => {
    const made = elementsLike(parsedXml(TICKET).root)('AuditPool', { a: true, b: undefined });
    expect([made.name, made.uri, made.attributes.length]).toEqual([
      'j:AuditPool',
      parsedXml(TICKET).root.uri,
      1,
    ]);
  });

  it('copies without the text remembered and indents without touching text', () => {
    const copy = cloneElement(parsedXml('<a  b="1"><c>x</c></a>').root);
    expect(writeXml(documentOf(indented(copy)))).toContain('<a b="1">\n  <c>x</c>\n</a>');
  });
});

describe('refusing XML', () => {
  const refusal = (input: string | Uint8Array, limits = {}) => {
    const result = parseXml(input, limits);
    return result.ok ? null : { ...result.problems[0], message: undefined, hint: undefined };
  };
  const at = (code: string, line: number | null, path: string | null) =>
    expect.objectContaining({ severity: 'error', code, line, path });

  // The six that a tolerant parser lets through (crossed tags, repeated attribute, NUL, two roots, text only, empty).
  it.each([
    ['crossed tags', '<a>\n<b></a></b>', 2, '/a/b'],
    ['a repeated attribute', '<a b="1"\n b="2"/>', 2, null],
    ['a NUL', '<a>\0</a>', 1, '/a'],
    ['two roots', '<a/>\n<b/>', 2, null],
    ['text only', 'hello', 1, null],
    ['nothing', '', 1, null],
    ['an unclosed tag', '<a><b/><b>\n<c/>', 2, '/a/b[2]'],
    ['an entity nobody declared', '<a>&x;</a>', 1, '/a'],
    ['an unbound prefix', '<a><p:b/></a>', 1, '/a'],
    ['an attribute without quotes', '<a b=1/>', 1, null],
    ['a second declaration', '<a/><?xml version="1.0"?>', 1, null],
  ])('refuses %s as not well-formed, with line and innermost open element', (_what, input, line, path) => {
    expect(refusal(input)).toEqual(at('XML_NOT_WELL_FORMED', line, path));
  });

  it('refuses a document type declaration wherever it stands, before anything is expanded', () => {
    expect(refusal('<?xml version="1.0"?><!-- c -->\n<!DOCTYPE a [<!ENTITY b "c">]><a>&b;</a>')).toEqual(
      at('XML_DOCTYPE', 2, null),
    );
    expect(refusal('<!DOCTYPE a')).toEqual(at('XML_DOCTYPE', 1, null));
    expect(refusal('<!-- c -->\n<!DOCTYPE a\n>\n<a>\n\n\n</a>\n')).toEqual(at('XML_DOCTYPE', 2, null));
    expect(refusal('<!-- <!DOCTYPE a> --><a><![CDATA[<!DOCTYPE a>]]></a>')).toBeNull();
  });

  it('refuses inclusion of other files', () => {
    const include =
      '<a xmlns:i="http://www.w3.org/2001/XInclude"><i:include href="file:///etc/hostname"/></a>';
    expect(refusal(include)?.code).toBe('XML_INCLUDE');
  });

  it.each([
    ['depth', '<a><a><a/></a></a>', { depth: 2 }],
    ['elements', '<a><b/><b/></a>', { elements: 2 }],
    ['nodes', '<a><!----><!----></a>', { nodes: 2 }],
    ['attributes', '<a b="" c="" d=""/>', { attributesPerElement: 2 }],
    ['the length of an attribute', '<a b="12345"/>', { attributeLength: 4 }],
    ['references', '<a b="&#49;">&#50;&amp;</a>', { references: 2 }],
    ['the length of a text', '<a>12345</a>', { textLength: 4 }],
    ['bytes', '<a>12345</a>', { bytes: 11 }],
  ])('refuses more than its limit of %s', (_what, input, limits) => {
    expect(refusal(input, limits)?.code).toBe('XML_LIMIT');
    expect(refusal(input)).toBeNull();
  });

  it.each([
    ['broken UTF-8', [0x3c, 0x61, 0x3e, 0x0a, 0xff, 0x3c, 0x2f, 0x61, 0x3e], 2],
    ['overlong UTF-8', [0x3c, 0xc0, 0xbc, 0x61, 0x2f, 0x3e], 1],
    ['UTF-16 without a mark', [0x3c, 0, 0x61, 0, 0x2f, 0, 0x3e, 0], 1],
    ['half a surrogate pair in UTF-16', [0xff, 0xfe, 0x3c, 0, 0x00, 0xd8], 1],
  ])('refuses %s as not text', (_what, bytes, line) => {
    expect(refusal(Uint8Array.from(bytes))).toEqual(at('NOT_TEXT', line, null));
  });

  it('refuses an encoding in the declaration that the bytes do not have', () => {
    for (const name of ['UTF-16', 'UTF-7', 'windows-1252']) {
      const bytes = new TextEncoder().encode(`<?xml version="1.0" encoding="${name}"?><a/>`);
      expect(refusal(bytes)).toEqual(at('NOT_TEXT', 1, null));
    }
  });

  it('leaves the prototype of objects alone whatever names a document uses', () => {
    const doc = parsedXml('<a __proto__="x" constructor="y"><__proto__ toString="1"/></a>');
    expect(attributeOf(doc.root, '__proto__')).toBe('x');
    expect(Object.getPrototypeOf({})).toBe(Object.prototype);
  });
});

describe('a document that is broken', () => {
  it.each([
    ['nothing at all', '', 1, 'empty', 'whole file'],
    ['a file that was cut off', '<a>\n<b>\n<c x="1"\n', 4, '<b> of line 2', 'cut off'],
    ['text', 'hello\nworld\n', 1, 'before the root', 'begins with "<"'],
    ['text after a declaration', '<?xml version="1.0"?>\n\nhello', 3, 'before the root', 'begins with "<"'],
    ['an end tag of another', '<a>\n<b>\n</c></a>', 3, '<b> of line 2', 'Mend'],
    ['two attributes of one name', '<a>\n<b c="" c=""/></a>', 2, 'duplicate attribute: c', 'Mend'],
  ])('says where, what and how to mend it: %s', (_what, text, line, message, hint) => {
    const read = parseXml(new TextEncoder().encode(text));
    expect(read).toMatchObject({
      ok: false,
      problems: [{ line, message: expect.stringContaining(message), hint: expect.stringContaining(hint) }],
    });
  });
});
