import { files, read } from './tree.js';

const isText = (file: string): boolean => !/\.(png|jpg|gif|ico|pdf|zip|tiff?|woff2?|gz|dump)$/.test(file);

// Put together here, so that this file does not hold what it looks for.
const folders = ['work', 'root', 'tmp'];
const machinePath = new RegExp(`(?<![\\w.~$}-])/(?:${folders.join('|')})/\\w`);
const registryHost = new RegExp(
  `https?://[^\\s"'/<>]*(?:${['regis' + 'try', 'npm' + 'js', 'artifact', 'mirror'].join('|')})[^\\s"'<>]*`,
  'i',
);

function findLines(pattern: RegExp): string[] {
  return files.filter(isText).flatMap((file) =>
    read(file)
      .split('\n')
      .flatMap((line, at) => (pattern.test(line) ? [`${file}:${at + 1}`] : [])),
  );
}

describe('words that belong to one machine', () => {
  it('keeps paths of the machine it was written on out of every file', () => {
    expect(machinePath.test(`see /${folders[0]}/x`)).toBe(true);
    expect(machinePath.test(`https://example.test/${folders[0]}/x`)).toBe(false);
    expect(findLines(machinePath)).toEqual([]);
  });

  it('keeps package registry hosts out of every file', () => {
    expect(registryHost.test(`https://${'regis' + 'try'}.example.test/x`)).toBe(true);
    expect(findLines(registryHost)).toEqual([]);
  });

  it('locks every package by hash and none by the host it came from', () => {
    const lock = JSON.parse(read('package-lock.json')) as {
      packages: Record<string, { resolved?: string; integrity?: string; link?: boolean }>;
    };
    const locked = Object.entries(lock.packages).filter(([name]) => name !== '');
    expect(locked.length).toBeGreaterThan(0);
    expect(locked.filter(([, entry]) => entry.resolved !== undefined).map(([name]) => name)).toEqual([]);
    const bare = locked.filter(([, entry]) => !entry.integrity && !entry.link).map(([name]) => name);
    expect(bare).toEqual([]);
    expect(read('.npmrc')).toContain('omit-lockfile-registry-resolved=true');
  });
});
