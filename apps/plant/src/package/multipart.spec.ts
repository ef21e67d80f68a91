import { isMultipart, partOf, readMultipart, writeMultipart } from './multipart.js';

/** As in RFC 2387, section 5.1, shortened: two parts, the first refers to the second by its Content-ID. */
const example = [
  'Preamble that nobody reads',
  '--example-1',
  'Content-Type: application/vnd.cip4-jmf+xml',
  '',
  '<JMF/>',
  '--example-1',
  'Content-Type: application/vnd.cip4-jdf+xml;',
  '  name="ticket.jdf"',
  'Content-ID: <950120.aaCC@XIson.test>',
  'Content-Transfer-Encoding: BASE64',
  '',
  'PEpERi8+',
  '--example-1--',
  'Epilogue',
].join('\r\n');

describe('a package', () => {
  it('is read part by part, folded headers and base64 included', () => {
    const parts = readMultipart(Buffer.from(example), 'multipart/related; boundary=example-1; type="x/y"')!;
    expect(parts.map(({ bytes }) => Buffer.from(bytes).toString())).toEqual(['<JMF/>', '<JDF/>']);
    expect(parts[1]!.contentType).toBe('application/vnd.cip4-jdf+xml; name="ticket.jdf"');
  });

  it('gives the part that a cid: names without regard to case and escapes', () => {
    const parts = readMultipart(Buffer.from(example), 'multipart/related; boundary="example-1"')!;
    expect(partOf(parts, 'cid:950120.AAcc%40xison.test')).toBe(parts[1]);
    expect(partOf(parts, 'cid:nobody@xison.test')).toBeNull();
    expect(partOf(parts, 'cid:%')).toBeNull();
  });

  it('is refused when it breaks off, names no boundary or has an unknown encoding', () => {
    const type = 'multipart/related; boundary=example-1';
    expect(readMultipart(Buffer.from(example.replace('--example-1--', '')), type)).toBeNull();
    expect(readMultipart(Buffer.from(example), 'multipart/related')).toBeNull();
    expect(readMultipart(Buffer.from(example.replace('BASE64', 'x-own')), type)).toBeNull();
  });

  it('is read as it was written', () => {
    const bytes = Buffer.from(`é ${'long '.repeat(100)}`, 'utf8');
    const { body, contentType } = writeMultipart(
      [
        { contentType: 'a/b', contentId: null, bytes: Buffer.from('') },
        { contentType: 'c/d', contentId: 'x@y', bytes },
      ],
      'b1',
    );
    expect(isMultipart(contentType)).toBe(true);
    const parts = readMultipart(Buffer.from(body), contentType)!;
    expect(Buffer.from(parts[1]!.bytes)).toEqual(bytes);
    expect(parts[0]!.bytes).toHaveLength(0);
    expect(Math.max(...body.split('\r\n').map((line) => line.length))).toBeLessThanOrEqual(76);
  });
});
