/**
 * `check` and `plan` over the standard's own samples (CIP4 schema repositories, JDF 1.9 and XJDF 2.3 working trees; verdicts
 * of the schema in samples.json): what the schema calls valid must be sound here too, unless the reference table of
 * tickets.spec.ts knows more than the schema.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { callCli } from '../kit/call-cli.js';
import { type Sample, standardsFolder } from './samples.js';

const folder = standardsFolder();
const all = JSON.parse(readFileSync(join(folder, 'samples.json'), 'utf8')) as readonly Sample[];

async function call(...argv: string[]): Promise<{ exit: number; json: unknown }> {
  const { exit, out } = await callCli(argv, folder);
  return { exit, json: JSON.parse(out) };
}

interface Verdict {
  readonly file: string;
  readonly kind: string;
  readonly version: string | null;
  readonly ok: boolean;
  readonly problems: readonly { severity: string; code: string; path: string | null }[];
}

describe('check --json', () => {
  let verdicts: ReadonlyMap<string, Verdict>;
  let exit: number;
  beforeAll(async () => {
    const answer = await call('check', '--json', ...all.map(({ path }) => path));
    verdicts = new Map((answer.json as Verdict[]).map((verdict) => [verdict.file, verdict]));
    exit = answer.exit;
  });

  it('judges every sample of both generations, by its own kind', () => {
    const kinds = all.map(({ path }) => verdicts.get(path)?.kind);
    expect(kinds).toEqual(all.map(({ root }) => root.toLowerCase()));
  });

  it('calls sound every sample that is valid and has no issue beyond the schema', () => {
    const sound = all.filter(({ valid, semantic_issues }) => valid && semantic_issues.length === 0);
    expect(sound.length).toBeGreaterThan(150);
    const refused = sound.flatMap(({ path }) => {
      const verdict = verdicts.get(path);
      return verdict?.ok ? [] : [[path, verdict?.problems]];
    });
    expect(refused).toEqual([]);
  });

  it('exits 1 exactly when one of them is not sound', () => {
    expect(exit).toBe([...verdicts.values()].every(({ ok }) => ok) ? 0 : 1);
  });

  it('finds the sparse partition that is wrong by its name, and nothing else in the newer generation', () => {
    const newer = all.filter(({ path }) => path.startsWith('xjdf/'));
    const unsound = newer.filter(({ path }) => !verdicts.get(path)?.ok).map(({ path }) => path);
    expect([newer.length > 150, unsound]).toEqual([true, ['xjdf/samples/resources/badsparsepartition.xjdf']]);
  });
});

describe('plan --json', () => {
  it("plans the standard's own product ticket, with a warning for each thing that the plant had to add", async () => {
    const { exit, json } = await call('plan', '--json', 'jdf/samples/lifecycle/ProductIntentNode.jdf');
    const plan = json as {
      quantity: number;
      product: Record<string, unknown>;
      problems: Verdict['problems'];
    };
    expect(exit).toBe(0);
    expect(plan.quantity).toBe(10_000);
    // Dimensions="612 792" points are 215.9 × 279.4 mm (1 pt = 25.4/72 mm, the standard's unit).
    expect(plan.product).toMatchObject({ pages: 16, binding: 'SaddleStitch' });
    expect(plan.product.trimWidthMm).toBeCloseTo(215.9, 1);
    expect(plan.product.trimHeightMm).toBeCloseTo(279.4, 1);
    const taken = plan.problems.filter(({ code }) => code === 'DEFAULT_TAKEN');
    expect(taken.length).toBeGreaterThanOrEqual(3);
    expect(taken.every(({ severity }) => severity === 'warning')).toBe(true);
  });
});

describe('convert --json', () => {
  it.each([
    ['xjdf', 'jdf/samples/lifecycle/ProductIntentNode.jdf', '<XJDF ', '/JDF/'],
    ['jdf', 'xjdf/samples/further/book-product-simple-3.xjdf', '<JDF ', '/xjdf:XJDF/'],
  ])('writes %s, and lists what could not be carried over by its place', async (to, file, root, place) => {
    const { exit, json } = await call('convert', file, '--to', to, '--json');
    const { document, lost } = json as { document: string; lost: { path: string; what: string }[] };
    expect([exit, document.includes(root), lost.length > 0]).toEqual([0, true, true]);
    expect(lost.every(({ path, what }) => path.startsWith(place) && what !== '')).toBe(true);
  });
});
