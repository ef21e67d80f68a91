import PostalMime from 'postal-mime';
import { readFileName } from './file-name.js';

describe('the file name of a part', () => {
  // Forms: RFC 2183 (plain), RFC 2231 sections 3 and 4 (pieces, character set), RFC 2047 section 6.2 (words).
  it.each<[string | undefined, string | undefined, string | null]>([
    ['attachment; filename=job.jdf', undefined, 'job.jdf'],
    ['attachment; filename="the job \\"A\\".jdf"', undefined, 'the job "A".jdf'],
    ['attachment', 'application/pdf; name="by type.pdf"', 'by type.pdf'],
    ['attachment; filename=first.pdf', 'application/pdf; name=second.pdf', 'first.pdf'],
    ["attachment; filename=plain.pdf; filename*=UTF-8''gr%C3%B6%C3%9Fe.pdf", undefined, 'größe.pdf'],
    ["attachment; filename*=iso-8859-1'de'gr%F6%DFe.pdf", undefined, 'größe.pdf'],
    [
      'attachment; filename*0*=UTF-8\'\'cover%20; filename*1="and body"; filename*2*=%20%E2%82%AC.pdf',
      undefined,
      'cover and body €.pdf',
    ],
    ['attachment; filename*0=fes; filename*1=tival.pdf', undefined, 'festival.pdf'],
    ['attachment; filename="=?UTF-8?B?Z3LDtsOfZS5wZGY=?="', undefined, 'größe.pdf'],
    ['attachment; filename="=?iso-8859-1?Q?gr=F6=DFe_1=2Epdf?="', undefined, 'größe 1.pdf'],
    ['attachment; filename="=?utf-8?q?first?= =?utf-8?q?=20half.pdf?="', undefined, 'first half.pdf'],
    ['attachment; filename="=?no-such-set?Q?x?="', undefined, '=?no-such-set?Q?x?='],
    ["attachment; filename=plain.pdf; filename*=UTF-8''%ZZ", undefined, 'plain.pdf'],
    ["attachment; filename=plain.pdf; filename*=UTF-8''%FF", undefined, 'plain.pdf'],
    ['attachment; filename*=without-a-set', undefined, null],
    ['attachment; filename="../../etc/passwd"', undefined, 'passwd'],
    ["attachment; filename*=UTF-8''..%2F..%2Fetc%2Fpasswd", undefined, 'passwd'],
    ['attachment; filename="C:\\\\jobs\\\\job.jdf"', undefined, 'job.jdf'],
    ['attachment; filename=".."', undefined, null],
    ["attachment; filename*=UTF-8''a%00b", undefined, null],
    ['attachment; filename=a; filename=b', 'application/pdf; name=c', 'c'],
    [undefined, undefined, null],
  ])('of %j and %j is %j', (disposition, contentType, name) => {
    expect(readFileName(disposition, contentType)).toBe(name);
  });

  it.each([
    'attachment; filename*0*=UTF-8\'\'cover%20; filename*1="and body"; filename*2*=%20%E2%82%AC.pdf',
    "attachment; filename*=iso-8859-1'de'gr%F6%DFe.pdf",
    'attachment; filename="=?UTF-8?B?Z3LDtsOfZS5wZGY=?="',
  ])('is what another reader sees in %j (postal-mime)', async (disposition) => {
    const mail = `Content-Type: application/pdf\r\nContent-Disposition: ${disposition}\r\n\r\nx`;
    const { attachments } = await new PostalMime().parse(mail);
    expect(readFileName(disposition, undefined)).toBe(attachments[0]!.filename);
  });
});
