import { type XmlDocument } from '#libs/jdf';
import { parsedXml } from '../../../../test/kit/value-in.js';
import { checkReferences } from './check-references.js';

const NS = 'http://www.CIP4.org/JDFSchema_1_1';
const parsed = (text: string): XmlDocument => {
  return parsedXml(Buffer.from(text));
};
const ticket = (...content: string[]): string =>
  `<JDF xmlns="${NS}" ID="a">\n<ResourcePool>\n${content.join('\n')}\n</ResourcePool></JDF>`;
const file = (url: string, more = '', inside = ''): string =>
  `<RunList ID="r" ${more}><LayoutElement><FileSpec URL="${url}">${inside}</FileSpec></LayoutElement></RunList>`;
const message = (url: string): string =>
  `<JMF xmlns="${NS}"><Command Type="SubmitQueueEntry"><QueueSubmissionParams URL="${url}"/></Command></JMF>`;

const named = (name: string, contentId: string | null = null) => ({ name, contentId });
const multipart = (texts: readonly (string | null)[], ...content: ReturnType<typeof named>[]) => {
  const parts = texts.map((_, i) => named(`doc${i}`, `doc${i}@x`));
  return checkReferences(
    { container: 'multipart', parts: [...parts, ...content] },
    texts.map((text, i) => ({ part: parts[i]!, document: text === null ? null : parsed(text) })),
  );
};
const zip = (texts: Readonly<Record<string, string>>, ...content: string[]) => {
  const parts = Object.keys(texts).map((name) => named(name));
  return checkReferences(
    { container: 'zip', parts: [...parts, ...content.map((name) => named(name))] },
    parts.map((part) => ({ part, document: parsed(texts[part.name]!) })),
  );
};

describe('the references of a package', () => {
  it('are sound when each leads to a part and each part is led to', () => {
    const texts = [
      message('cid:DOC1%40X'),
      ticket(file('cid:art@x'), file('http://somewhere.example/a.pdf')),
    ];
    expect(multipart(texts, named('a.pdf', 'Art@x'))).toEqual([]);
    const inZip = {
      'job.xjmf': message('tickets/job.xjdf'),
      'tickets/job.xjdf': ticket(file('../art/a%201.pdf')),
    };
    expect(zip(inZip, 'art/a 1.pdf')).toEqual([]);
  });

  it('say where an address leads to no part, and what there is', () => {
    const [only, ...more] = multipart([ticket(file('cid:absent@x'))]);
    expect(more).toEqual([]);
    expect(only).toMatchObject({
      severity: 'error',
      code: 'PACKAGE_PART_MISSING',
      line: 3,
      path: 'doc0!/JDF/ResourcePool/RunList/LayoutElement/FileSpec',
      hint: 'There are cid:doc0@x.',
    });
    expect(only!.message).toContain('URL="cid:absent@x" of FileSpec');
  });

  it('count cid: in any attribute, also of others', () => {
    const foreign = ticket('<RunList ID="r"><o:X xmlns:o="urn:o" o:preview="cid:absent@x"/></RunList>');
    expect(multipart([foreign])).toMatchObject([{ code: 'PACKAGE_PART_MISSING' }]);
  });

  it('warn of a part that nothing refers to, and of none where a document could not be read', () => {
    expect(multipart([ticket()], named('a.pdf', 'art@x'), named('b.pdf'))).toMatchObject([
      {
        severity: 'warning',
        code: 'PACKAGE_PART_UNUSED',
        path: 'a.pdf!',
        hint: expect.stringContaining('cid:art@x'),
      },
      { severity: 'warning', code: 'PACKAGE_PART_UNUSED', path: 'b.pdf!' },
    ]);
    expect(multipart([message('cid:doc1@x'), null], named('a.pdf', 'art@x'))).toEqual([]);
  });

  it('by a path stand in a ZIP only', () => {
    expect(multipart([ticket(file('a.pdf'))])).toMatchObject([
      { code: 'PACKAGE_PART_MISSING', hint: expect.stringContaining('by cid:') },
    ]);
    expect(zip({ 'job.jdf': ticket(file('a.pdf')) }, 'b.pdf')).toMatchObject([
      { code: 'PACKAGE_PART_MISSING' },
      { code: 'PACKAGE_PART_UNUSED', hint: expect.stringContaining('URL="b.pdf"') },
    ]);
  });

  it.each([
    ['climbs out of the ZIP', '../../a.pdf', 'PACKAGE_PART_MISSING'],
    ['climbs out of it in disguise', '%2e%2e/a.pdf', 'PACKAGE_PART_MISSING'],
    ['is a file address that climbs', 'file:///jobs/../../etc/passwd', 'URL_REFUSED'],
    ['is one that climbs in disguise', 'FILE:///jobs/%2E%2e%2fetc', 'URL_REFUSED'],
  ])('never may be one that %s', (_what, url, code) => {
    expect(zip({ 'job.jdf': ticket(file(url)) })).toMatchObject([{ severity: 'error', code }]);
  });

  // The standard lets relative addresses count from a Directory, or from an archive that the file lies in.
  it.each([
    ['count from a folder', file('a.pdf', 'Directory="file:///jobs/7/"')],
    [
      'count from an archive',
      file('a.pdf', '', '<Container><FileSpec URL="http://x.example/a.zip"/></Container>'),
    ],
    ['are still to be made', file('a.pdf', 'Status="Unavailable"')],
    ['are empty', file('')],
    ['are file addresses', file('file:///C:/jobs/a.pdf')],
  ])('leave alone those that %s', (_what, content) => {
    expect(zip({ 'job.jdf': ticket(content) })).toEqual([]);
  });
});
