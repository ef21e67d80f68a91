import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gathered, type PartToSend, writeMultipart } from '#libs/wire';
import { judge } from '../../apps/cli/src/judge.js';

/** The standard's own two documents of one package: samples building/mimeMultipartRelatedJMF.jdf and …JDF.jdf (1.9). */
const sample = (name: string): Buffer =>
  readFileSync(join(process.env.SIDELAY_STANDARDS_DIR ?? '', 'jdf', 'samples', 'building', name));

const part = (name: string, contentId: string, mediaType: string, content: Buffer): PartToSend => ({
  name,
  contentId,
  mediaType,
  content,
});
const message = part('a.jmf', 'jmf@x', 'application/vnd.cip4-jmf+xml', sample('mimeMultipartRelatedJMF.jdf'));
const ticket = part(
  'a.jdf',
  'JDF1@hostname.com',
  'application/vnd.cip4-jdf+xml',
  sample('mimeMultipartRelatedJDF.jdf'),
);
const asset = part('cards.pdf', 'Asset01@hostname.com', 'application/pdf', Buffer.from('%PDF-1.4'));

async function judged(...parts: PartToSend[]) {
  const { body, contentType } = writeMultipart({ parts, encoding: 'base64' }, { next: () => 'n' });
  const file = Buffer.concat([
    Buffer.from(`MIME-Version: 1.0\r\nContent-Type: ${contentType}\r\n\r\n`),
    await gathered(body),
  ]);
  const verdict = await judge(
    file,
    () => {
      throw new Error('no plant is needed');
    },
    null,
  );
  const found = verdict.problems.filter(({ code }) => code.startsWith('PACKAGE'));
  return { kind: verdict.kind, version: verdict.version, found };
}

describe('the package of the standard’s samples', () => {
  it('is one in which every address has its part', async () => {
    expect(await judged(message, ticket, asset)).toEqual({ kind: 'package', version: '1.9', found: [] });
  });

  it('misses its asset, or its ticket, where they were left out', async () => {
    const missing = { severity: 'error', code: 'PACKAGE_PART_MISSING' };
    expect((await judged(message, ticket)).found).toMatchObject([
      { ...missing, path: 'a.jdf!/JDF/ResourcePool/RunList/LayoutElement/FileSpec' },
    ]);
    expect((await judged(message, asset)).found).toMatchObject([
      { ...missing, path: 'a.jmf!/JMF/Command/QueueSubmissionParams' },
      { severity: 'warning', code: 'PACKAGE_PART_UNUSED', path: 'cards.pdf!' },
    ]);
  });
});
