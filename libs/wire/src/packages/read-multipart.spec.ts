import { valueIn } from '../../../../test/kit/value-in.js';
import { type PackageLimits, packageLimits } from './package.js';
import { packageKind, readPackage } from './read-package.js';
import { resolveCid } from './resolve-reference.js';

const JMF = 'application/vnd.cip4-jmf+xml';
const JDF = 'application/vnd.cip4-jdf+xml';

/**
 * Written by another implementation (the `email` library of Python 3.11), with the message and the addresses of the
 * standard's own samples building/mimeMultipartRelatedJMF.jdf and mimeMultipartRelatedJDF.jdf (JDF 1.9).
 */
const byAnother = `Content-Type: multipart/related; boundary="===============7420=="
MIME-Version: 1.0

--===============7420==
Content-Type: application/vnd.cip4-jmf+xml
MIME-Version: 1.0
Content-Transfer-Encoding: base64
Content-ID: <jmf@hub.example>
Content-Disposition: attachment; filename="a.jmf"

PEpNRj48Q29tbWFuZCBUeXBlPSJTdWJtaXRRdWV1ZUVudHJ5Ij48UXVldWVTdWJtaXNzaW9uUGFy
YW1zIFVSTD0iY2lkOkpERjFAaG9zdG5hbWUuY29tIi8+PC9Db21tYW5kPjwvSk1GPgo=

--===============7420==
Content-Type: application/vnd.cip4-jdf+xml
MIME-Version: 1.0
Content-Transfer-Encoding: quoted-printable
Content-ID: <JDF1@hostname.com>
Content-Disposition: attachment; filename*=utf-8''gr%C3%B6%C3%9Fe.jdf

<JDF=20DescriptiveName=3D"Festival=20=3D=20Gr=C3=B6=C3=9Fe"/>

--===============7420==--
`;

const text = (bytes: Uint8Array): string => Buffer.from(bytes).toString('utf8');
const bytesOf = (source: string): Uint8Array => Buffer.from(source, 'latin1');
const plain = (...bodies: string[]): string =>
  [...bodies.map((body) => `--b\r\n${body}\r\n`), '--b--\r\n'].join('');
const part = (type: string, body: string, more = ''): string => `Content-Type: ${type}\r\n${more}\r\n${body}`;
const read = (source: string, limits?: PackageLimits) =>
  readPackage(bytesOf(source), 'multipart/related; boundary=b', limits);

describe('a multipart/related package', () => {
  it.each(['\n', '\r\n'])(
    'is read as another implementation wrote it, with line ends %j',
    async (lineEnd) => {
      const file = bytesOf(byAnother.replaceAll('\n', lineEnd));
      expect(packageKind(file, null)).toBe('multipart');
      const pack = valueIn(await readPackage(file, null));
      expect(pack.parts.map(({ name, contentId, mediaType }) => [name, contentId, mediaType])).toEqual([
        ['a.jmf', 'jmf@hub.example', JMF],
        ['größe.jdf', 'JDF1@hostname.com', JDF],
      ]);
      expect(text(pack.parts[0]!.bytes)).toContain('URL="cid:JDF1@hostname.com"');
      const named = resolveCid(pack, 'cid:jdf1%40HOSTNAME.com');
      expect(named.ok && text(named.value.bytes).trim()).toBe('<JDF DescriptiveName="Festival = Größe"/>');
      expect(resolveCid(pack, 'cid:Asset01@hostname.com')).toMatchObject({
        problems: [{ code: 'PACKAGE_PART_MISSING' }],
      });
    },
  );

  it('keeps text that merely begins like the boundary', async () => {
    const pack = await read(plain(part('text/xml', '<JDF>\r\n--bc\r\n--b-\r\n --b\r\n</JDF>')));
    expect(pack.ok && text(pack.value.parts[0]!.bytes)).toBe('<JDF>\r\n--bc\r\n--b-\r\n --b\r\n</JDF>');
  });

  it('leaves out what stands before the first and after the last boundary', async () => {
    const pack = await read(`preamble --b\r\n${plain(part(JDF, '<JDF/>'))}--b\r\nepilogue`);
    expect(pack.ok && pack.value.parts.length).toBe(1);
  });

  it('puts the part first that "start" names', async () => {
    const body = plain(
      part('application/pdf', '%PDF', 'Content-ID: <a@x>\r\n'),
      part(JDF, '<JDF/>', 'Content-ID: <Job@x>\r\n'),
    );
    const pack = await readPackage(
      bytesOf(body),
      'Multipart/Related; boundary="b"; start="<job@X>"; type="text/xml"',
    );
    expect(pack.ok && pack.value.parts.map(({ contentId }) => contentId)).toEqual(['Job@x', 'a@x']);
  });

  it('knows message and ticket by their root element when the type says nothing', async () => {
    const utf16 = Buffer.from('\ufeff<?xml version="1.0"?><!-- <JDF> --><j:JMF xmlns:j="x"/>', 'utf16le');
    const body = `Content-Type: text/xml\r\nContent-Transfer-Encoding: base64\r\n\r\n${utf16.toString('base64')}`;
    expect((await read(plain(body, part('text/xml', '<JDF/>')))).ok).toBe(true);
    expect((await read(plain(part('text/xml', '<JDF/>'), body))).ok).toBe(false);
  });

  it.each<[string, string, string | null]>([
    ['no boundary inside', 'hello', null],
    ['the closing boundary missing', `--b\r\n${part(JDF, '<JDF/>')}\r\n--b\r\n${part(JDF, 'x')}`, 'part 2'],
    ['no part', '--b--', null],
    ['a header without end', plain('Content-Type: text/xml'), 'part 1'],
    ['a type that is none', plain(part('text', '<JDF/>')), 'part 1'],
    ['a message of mail', plain(part(JDF, '<JDF/>'), part('message/rfc822', 'x')), 'part 2'],
    ['a field given twice', plain(part(JDF, '', `Content-Type: ${JMF}\r\n`)), 'part 1'],
    ['a parameter given twice', plain(part('text/xml; a=1; a=2', '<JDF/>')), 'part 1'],
    ['a malformed header line', plain(part(JDF, '', 'no colon\r\n')), 'part 1'],
    ['a Content-ID without brackets', plain(part(JDF, '', 'Content-ID: a@b\r\n')), 'part 1'],
    ['broken base64', plain(part(JDF, 'PEpE!!', 'Content-Transfer-Encoding: base64\r\n')), 'part 1'],
    ['base64 cut short', plain(part(JDF, 'PEpER', 'Content-Transfer-Encoding: base64\r\n')), 'part 1'],
    ['an unknown encoding', plain(part(JDF, 'x', 'Content-Transfer-Encoding: x-zip\r\n')), 'part 1'],
    [
      'broken quoted-printable',
      plain(part(JDF, '=ZZ', 'Content-Transfer-Encoding: quoted-printable\r\n')),
      'part 1',
    ],
    ['content first', plain(part('application/pdf; name=a.pdf', '%PDF'), part(JDF, '<JDF/>')), 'a.pdf'],
    [
      'a message behind the ticket',
      plain(part(JDF, '<JDF/>'), part(`${JMF}; name=m.jmf`, '<JMF/>')),
      'm.jmf',
    ],
    [
      'one Content-ID twice',
      plain(...['A@x', 'a@X'].map((id) => part(JDF, '<JDF/>', `Content-ID: <${id}>\r\n`))),
      'a@X',
    ],
  ])('is refused as broken, naming the part, with %s', async (_what, source, path) => {
    expect(await read(source)).toMatchObject({ ok: false, problems: [{ code: 'PACKAGE_BROKEN', path }] });
  });

  it('is refused when a header is too long, and beyond the limits of parts, of bytes and of one part', async () => {
    const over = { ok: false, problems: [{ code: 'PACKAGE_LIMIT' }] };
    expect(await read(plain(part(JDF, '<JDF/>', `X: ${'y'.repeat(8192)}\r\n`)))).toMatchObject(over);
    const many = (n: number): string => plain(...Array.from({ length: n }, () => part(JDF, '<JDF/>')));
    expect((await read(many(1000))).ok).toBe(true);
    expect(await read(many(1001))).toMatchObject(over);
    expect(await read(many(3), { ...packageLimits, maxBytes: 17 })).toMatchObject(over);
    expect(await read(many(3), { ...packageLimits, maxPartBytes: 5 })).toMatchObject(over);
    expect((await read(many(3), { ...packageLimits, maxPartBytes: 6, maxBytes: 18 })).ok).toBe(true);
  });

  it.each([
    'multipart/mixed; boundary=b',
    'multipart/related',
    'multipart/related; boundary=""',
    `multipart/related; boundary=${'b'.repeat(71)}`,
  ])('is refused under the content type %s', async (type) => {
    expect((await readPackage(bytesOf(plain(part(JDF, '<JDF/>'))), type)).ok).toBe(false);
  });
});

describe('reading what comes in', () => {
  it('takes a plain document for no package, and the header for what it is', async () => {
    expect(packageKind(bytesOf('<JDF/>'), JDF)).toBeNull();
    expect(packageKind(bytesOf('<JDF/>'), null)).toBeNull();
    expect((await readPackage(bytesOf(plain(part(JDF, '<JDF/>'))), 'multipart/related; boundary=b')).ok).toBe(
      true,
    );
    expect((await readPackage(bytesOf(byAnother), 'application/octet-stream')).ok).toBe(true);
  });
});
