import { isInside, resolveReference } from './resolve-reference.js';

const part = (name: string, contentId: string | null = null) => ({ name, contentId });
const zip = {
  container: 'zip' as const,
  parts: [part('job.xjmf'), part('tickets/job.xjdf'), part('art/Größe 1.pdf')],
};
const multipart = {
  container: 'multipart' as const,
  parts: [part('job.jdf', 'Job@x'), part('a.pdf', 'a%20b@x')],
};

describe('an address inside a package', () => {
  it.each<[string, string, string | null]>([
    ['job.xjmf', 'tickets/job.xjdf', 'tickets/job.xjdf'],
    ['job.xjmf', './tickets//job.xjdf', 'tickets/job.xjdf'],
    ['job.xjmf', '/tickets/job.xjdf', 'tickets/job.xjdf'],
    ['tickets/job.xjdf', '../art/Gr%C3%B6%C3%9Fe%201.pdf', 'art/Größe 1.pdf'],
    ['tickets/job.xjdf', '../art/GRÖSSE 1.pdf', null],
    ['tickets/job.xjdf', '../JOB.xjmf', 'job.xjmf'],
    ['tickets/job.xjdf', '../../job.xjmf', null],
    ['tickets/job.xjdf', '%2e%2e/%2E%2E/job.xjmf', null],
    ['tickets/job.xjdf', '..%2f..%2fjob.xjmf', null],
    ['job.xjmf', 'http://x/job.xjmf', null],
    ['job.xjmf', '//x/job.xjmf', null],
    ['job.xjmf', 'file:///job.xjmf', null],
    ['job.xjmf', 'absent.pdf', null],
    ['job.xjmf', '', null],
  ])('in the ZIP entry %j, %j names %j', (from, url, wanted) => {
    const answer = resolveReference(zip, part(from), url);
    expect(answer.ok ? answer.value.name : null).toBe(wanted);
    if (!answer.ok) expect(answer.problems[0]!.code).toBe('PACKAGE_PART_MISSING');
  });

  it.each<[string, string | null]>([
    ['cid:Job@x', 'job.jdf'],
    ['CID:job%40X', 'job.jdf'],
    ['cid:a b@x', 'a.pdf'],
    ['cid:a%20b@x', 'a.pdf'],
    ['cid:<Job@x>', null],
    ['cid:', null],
    ['cid:c@x', null],
    ['a.pdf', null],
  ])('in a multipart, %j names %j', (url, wanted) => {
    const answer = resolveReference(multipart, multipart.parts[0]!, url);
    expect(answer.ok ? answer.value.name : null).toBe(wanted);
  });

  it.each<[string, boolean]>([
    ['cid:a', true],
    ['a/b.pdf', true],
    ['./a:b.pdf', true],
    ['http://x/', false],
    ['file:a', false],
    ['//x/a', false],
  ])('%j lies in the package: %j', (url, inside) => {
    expect(isInside(url)).toBe(inside);
  });
});
