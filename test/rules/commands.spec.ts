import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { root } from './tree.js';

const run = (command: string, args: readonly string[], env: Record<string, string> = {}) => {
  const { status, stdout, stderr } = spawnSync(command, args, {
    cwd: root,
    encoding: 'utf8',
    env: { ...process.env, ...env },
  });
  return { status, stderr, lines: stdout.trimEnd().split('\n') };
};

// What the contract (section 1) promises of the commands themselves.
describe('npm test', () => {
  const missing = { SIDELAY_STANDARDS_DIR: join(root, 'no-such-folder') };

  it('names a lane that it left out, counts it as skipped, and passes', () => {
    const { status, lines } = run(process.execPath, ['scripts/test.mjs', 'standards'], {
      ...missing,
      SIDELAY_REQUIRE_SERVICES: '',
    });
    expect(lines.filter((line) => line.startsWith('  lane standards: '))).toHaveLength(1);
    expect(lines.at(-1)).toBe('Tests: 0 passed, 0 failed, 1 skipped');
    expect(lines.filter((line) => line.startsWith('Tests: '))).toHaveLength(1);
    expect(status).toBe(0);
  });

  it('fails for the same lane where services are required', () => {
    const { status, lines } = run(process.execPath, ['scripts/test.mjs', 'standards'], {
      ...missing,
      SIDELAY_REQUIRE_SERVICES: '1',
    });
    expect(lines.at(-1)).toBe('Tests: 0 passed, 1 failed, 0 skipped');
    expect(status).toBe(1);
  });

  it('refuses a lane that does not exist and says which do', () => {
    const { status, lines } = run(process.execPath, ['scripts/test.mjs', 'nowhere']);
    expect(status).toBe(2);
    expect(lines[0]).toContain('No lane is called nowhere. There are: lint, types, rules, unit');
  });

  it('is called by a CI script that the shell can read', () => {
    expect(run('bash', ['-n', '.ci/run'])).toMatchObject({ status: 0, stderr: '' });
  });
});

describe('npm run bench', () => {
  it('writes one line of the promised fields for each bench', () => {
    const folder = mkdtempSync(join(tmpdir(), 'sidelay-bench-'));
    const file = join(folder, 'bench.json');
    try {
      expect(run(process.execPath, ['scripts/bench.mjs', 'calibration', '--json', file]).status).toBe(0);
      const lines = readFileSync(file, 'utf8').trimEnd().split('\n');
      expect(lines).toHaveLength(1);
      const line = JSON.parse(lines[0]!) as Record<string, unknown>;
      const fields = ['name', 'ours', 'peer', 'unit', 'ratio', 'better', 'target', 'note'];
      expect(Object.keys(line)).toEqual(fields);
      expect(line.ratio).toBe(Number(line.ours) / Number(line.peer));
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  });

  it('refuses a bench that does not exist and says which do', () => {
    const { status, stderr } = run(process.execPath, ['scripts/bench.mjs', 'nothing']);
    expect(status).toBe(2);
    expect(stderr).toContain('There are: ');
  });
});
