import { parsedXml } from '../../../../test/kit/value-in.js';
import {
  attributeOf,
  comment,
  element,
  encodeXml,
  parseXml,
  replaceElements,
  text,
  textOf,
  withAttributes,
  withChildren,
  writeXml,
  type XmlDocument,
} from './index.js';

/** Each character as the byte of its number. */
const bytesOf = (latin1: string): Uint8Array => Uint8Array.from(latin1, (c) => c.charCodeAt(0));
const utf8 = (value: string): Uint8Array => new TextEncoder().encode(value);
const utf16 = (value: string, little: boolean, mark = true): Uint8Array => {
  const all = (mark ? '\ufeff' : '') + value;
  const view = new DataView(new ArrayBuffer(all.length * 2));
  for (let i = 0; i < all.length; i++) view.setUint16(i * 2, all.charCodeAt(i), little);
  return new Uint8Array(view.buffer);
};
const declared = (name: string, body: string): string => `<?xml version="1.0" encoding="${name}"?>${body}`;

function refusal(bytes: Uint8Array) {
  const result = parseXml(bytes);
  return result.ok ? null : result.problems[0]!;
}

describe('ISO-8859-1', () => {
  // Source: ISO/IEC 8859-1 with the C1 controls of ISO/IEC 6429, as Unicode's table 8859-1.TXT has it: byte = code point.
  const every = Array.from({ length: 0x100 - 0x80 }, (_, i) => String.fromCharCode(0x80 + i)).join('');

  it('is read byte for code point, 0x80 to 0x9F too, and written back', () => {
    const bytes = bytesOf(declared('ISO-8859-1', `<a b="${every}">${every}</a>`));
    const doc = parsedXml(bytes);
    expect([attributeOf(doc.root, 'b'), textOf(doc.root), doc.encoding]).toEqual([
      every,
      every,
      'iso-8859-1',
    ]);
    expect(encodeXml(doc)).toEqual(bytes);
    expect(writeXml(doc)).toBe(declared('UTF-8', `<a b="${every}">${every}</a>`));
  });

  it.each(['iso-8859-1', 'ISO_8859-1', 'latin1', 'Latin1', 'l1', 'cp819'])('may be called %s', (name) => {
    expect(textOf(parsedXml(bytesOf(declared(name, '<a>\u00e9</a>'))).root)).toBe('\u00e9');
  });

  const doc = () => parsedXml(bytesOf(declared('latin1', '<a b=\'\u00e9\'><c d="1"/>\u00fc</a>')));
  const changed = (change: (root: XmlDocument['root']) => XmlDocument['root']): Uint8Array => {
    const before = doc();
    return encodeXml(replaceElements(before, new Map([[before.root, change(before.root)]])));
  };

  it('has what it lacks written as numeric references in texts and attribute values', () => {
    const bytes = changed((root) =>
      withAttributes(withChildren(root, [...root.children, text('\u20ac\u{1f600}\u00ff')]), {
        b: '\u0159\u00e9',
      }),
    );
    const expected = '<a b=\'&#x159;\u00e9\'><c d="1"/>\u00fc&#x20AC;&#x1F600;\u00ff</a>';
    expect(bytes).toEqual(bytesOf(declared('latin1', expected)));
    expect(textOf(parsedXml(bytes).root)).toBe('\u00fc\u20ac\u{1f600}\u00ff');
  });

  it('gives way to UTF-8, and says so, where no reference may stand', () => {
    const bodies = [
      changed((root) => withChildren(root, [comment('\u20ac')])),
      changed((root) => withChildren(root, [{ kind: 'cdata', value: '\u20ac' }])),
      changed((root) => withChildren(root, [{ kind: 'instruction', target: 'p', value: '\u20ac' }])),
      changed((root) => withChildren(root, [element('\u0159', {}, [], '')])),
      changed((root) => withAttributes(root, { '\u0159': '1' })),
    ].map((bytes) => new TextDecoder('utf-8', { fatal: true }).decode(bytes));
    expect(bodies.map((body) => body.slice(0, 38))).toEqual(bodies.map(() => declared('UTF-8', '')));
    expect(bodies.map((body) => body.slice(38))).toEqual([
      "<a b='\u00e9'><!--\u20ac--></a>",
      "<a b='\u00e9'><![CDATA[\u20ac]]></a>",
      "<a b='\u00e9'><?p \u20ac?></a>",
      "<a b='\u00e9'><\u0159/></a>",
      '<a b=\'\u00e9\' \u0159="1"><c d="1"/>\u00fc</a>',
    ]);
  });
});

describe('US-ASCII', () => {
  it('is read and written, what it lacks as references', () => {
    const bytes = bytesOf(declared('US-ASCII', '<a b="&#233;"/>'));
    const doc = parsedXml(bytes);
    expect(encodeXml(doc)).toEqual(bytes);
    const next = replaceElements(doc, new Map([[doc.root, withChildren(doc.root, [text('\u00fc')])]]));
    expect(encodeXml(next)).toEqual(bytesOf(declared('US-ASCII', '<a b="&#233;">&#xFC;</a>')));
  });

  it('is refused with the line of a byte that it does not have', () => {
    expect(refusal(bytesOf(declared('ascii', '<a>\n\r\n\r \u00e9</a>')))).toMatchObject({
      ...{
        code: 'NOT_TEXT',
        line: 4,
        message: 'The XML declaration says US-ASCII, but there is a byte 0xE9.',
      },
    });
  });
});

describe('UTF-8 and UTF-16', () => {
  const body = '<a b="\u00fc\u20ac">\u{1f600}\r\n</a>';

  it.each([
    ['UTF-8', utf8(body)],
    ['UTF-8 that is declared', utf8(declared('utf-8', body))],
    ['UTF-8 with a mark', utf8(`\ufeff${body}`)],
    ['UTF-8 with a mark, declared', utf8(`\ufeff${declared('UTF8', body)}`)],
    ['UTF-16, big end first', utf16(body, false)],
    ['UTF-16, little end first', utf16(body, true)],
    ['UTF-16, declared', utf16(declared('UTF-16', body), true)],
    ['UTF-16, declared with its order', utf16(declared('utf-16BE', body), false)],
  ])('%s comes back byte for byte', (_what, bytes) => {
    const doc = parsedXml(bytes);
    expect(attributeOf(doc.root, 'b')).toBe('\u00fc\u20ac');
    expect(encodeXml(doc)).toEqual(bytes);
  });

  it('are read alike wherever a character falls between two pieces', () => {
    for (const unit of ['\u00e9', '\u20ac', '\u{1f600}', '-', '\r', '\r\n', ']', '--x', '&#13;']) {
      for (let before = 65_525; before < 65_537; before++) {
        const inner = `${'x'.repeat(before)}${unit.repeat(3)}`;
        for (const bytes of [utf8(`<a>${inner}<b/></a>`), utf16(`<a>${inner.slice(32_768)}<b/></a>`, true)]) {
          const same = Buffer.from(encodeXml(parsedXml(bytes))).equals(Buffer.from(bytes));
          expect([unit, before, same]).toEqual([unit, before, true]);
        }
      }
    }
  });

  it('keep the place of a fault, after many pieces and after characters that stand for a fault', () => {
    const good = '\ufffd line\n'.repeat(40_000);
    const bytes = [...utf8(`<a>${good}<b>`)];
    expect(refusal(Uint8Array.from([...bytes, 0xff]))).toMatchObject({ code: 'NOT_TEXT', line: 40_001 });
    expect(refusal(Uint8Array.from([...bytes, 0xe2, 0x82]))).toMatchObject({
      code: 'NOT_TEXT',
      line: 40_001,
    });
  });
});

describe('an encoding that is not read', () => {
  const accepted = /UTF-8.*UTF-16 with a byte order mark, ISO-8859-1 and US-ASCII/;

  it.each([
    ['windows-1252', bytesOf(declared('windows-1252', '<a/>')), 'windows-1252'],
    ['ISO-8859-15', bytesOf(declared('ISO-8859-15', '<a/>')), 'ISO-8859-15'],
    ['Shift_JIS', bytesOf(declared('Shift_JIS', '<a/>')), 'Shift_JIS'],
    ['UTF-7', bytesOf(declared('UTF-7', '<a/>')), 'UTF-7'],
    ['a code page of EBCDIC', Uint8Array.of(0x4c, 0x6f, 0xa7, 0x94, 0x93, 0x40), 'EBCDIC'],
    ['UTF-32', Uint8Array.of(0xff, 0xfe, 0, 0, 0x3c, 0, 0, 0), 'UTF-32'],
    ['UTF-16 without a mark', utf16('<a/>', true, false), 'without a byte order mark'],
    ['UTF-16 that is not', bytesOf(declared('UTF-16', '<a/>')), 'the bytes are UTF-8'],
    ['UTF-8 that is UTF-16', utf16(declared('UTF-8', '<a/>'), true), 'the bytes are UTF-16LE'],
    ['ISO-8859-1 with the mark of UTF-8', utf8(`\ufeff${declared('latin1', '<a/>')}`), 'the bytes are UTF-8'],
    ['the other order', utf16(declared('UTF-16LE', '<a/>'), false), 'the bytes are UTF-16BE'],
  ])('(%s) is refused with what is read instead', (_what, bytes, message) => {
    const problem = refusal(bytes);
    expect(problem).toMatchObject({ code: 'NOT_TEXT', line: 1 });
    expect(problem?.message).toContain(message);
    expect(problem?.hint).toMatch(accepted);
  });

  it('is found out however the declaration is laid out', () => {
    const long = `<?xml version="1.0"${' '.repeat(3000)}encoding = "latin1" ?><a/>`;
    expect(refusal(bytesOf(long))?.code).toBe('NOT_TEXT');
    expect(refusal(bytesOf(`<?xml version = '1.0'\n\tencoding\n=\n'KOI8-R' ?><a/>`))?.code).toBe('NOT_TEXT');
  });
});

describe('characters that XML cannot write', () => {
  it('are written as the replacement character, never as something that cannot be read', () => {
    const root = element('a', { b: 'x\u0000\ud800y' }, [text('\u0007\ufffe\t\u0085'), comment('\u0001')], '');
    const doc: XmlDocument = { declaration: '', before: [], root, after: [], encoding: 'utf-8', bom: false };
    const again = parsedXml(encodeXml(doc));
    expect([attributeOf(again.root, 'b'), textOf(again.root)]).toEqual([
      'x\ufffd\ufffdy',
      '\ufffd\ufffd\t\u0085',
    ]);
  });
});
