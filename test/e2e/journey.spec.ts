import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Hub, type Journey, runJourney } from '../kit/journey.js';

/** The two ways of keeping hints; the truth is in PostgreSQL either way. */
const queues = [
  { name: 'PostgreSQL', url: undefined },
  { name: 'Redis', url: process.env.SIDELAY_TEST_REDIS_URL },
].filter((queue) => queue.name === 'PostgreSQL' || queue.url);

describe.each(queues)('two short runs through the whole plant, hints kept in $name', ({ url }) => {
  let hub: Hub;
  let jobs: readonly Journey[];

  beforeAll(async () => {
    ({ hub, jobs } = await runJourney({
      files: ['tickets/paper-boat-300.jdf', 'tickets/ferrymans-hat-400.jdf'],
      queueUrl: url,
    }));
  }, 240_000);
  afterAll(() => hub?.close());

  it('completes both jobs with every step done and the copies that were ordered', () => {
    expect(jobs.map(({ ticket }) => [ticket.status, ticket.quantity])).toEqual([
      ['Completed', 300],
      ['Completed', 400],
    ]);
    for (const { ticket } of jobs) {
      expect(ticket.progressPct).toBe(100);
      expect(ticket.steps.map((step) => step.status)).toEqual(ticket.steps.map(() => 'Completed'));
      expect(ticket.steps.at(-1)).toMatchObject({ id: 'stitch', good: ticket.quantity });
    }
  });

  it('counts on each step what was planned, and no more than was fed', () => {
    for (const { ticket, plan } of jobs) {
      for (const step of ticket.steps) {
        const planned = plan.steps.find((row) => row.id === step.id)!;
        expect(step.good).toBe(planned.outAmount);
        if (planned.inUnit === planned.unit)
          expect(step.good + step.waste).toBeLessThanOrEqual(planned.inAmount);
      }
    }
  });

  it('books the paper that was fed, the plates that were made, and ink as assumed', () => {
    for (const { ticket, consumption } of jobs) {
      const print = ticket.steps.find((step) => step.types.includes('ConventionalPrinting'))!;
      const paper = consumption.find((row) => row.unit === 'sheets')!;
      expect(paper).toMatchObject({ step: print.id, actual: print.good + print.waste, waste: print.waste });
      expect(consumption.find((row) => row.unit === 'plates')).toMatchObject({
        planned: 8,
        actual: 8,
        waste: 0,
      });
      const inks = consumption.filter((row) => row.unit === 'kg');
      expect(inks).toHaveLength(4);
      for (const ink of inks) expect(ink).toMatchObject({ source: 'assumed' });
    }
  });

  it('tells the story from intake to completion in the order of time', () => {
    for (const { story } of jobs) {
      expect(story[0]!.type).toBe('ticket.accepted');
      expect(
        story.at(-1)!.type === 'ticket.statusChanged' ||
          story.some((event) => event.sentence === 'The ticket is Completed.'),
      ).toBe(true);
      const times = story.map(({ time }) => Date.parse(time));
      expect([...times].sort((a, b) => a - b)).toEqual(times);
      expect(new Set(story.map(({ id }) => id)).size).toBe(story.length);
    }
  });

  it('gives the ticket back with its audits, valid against the schema of the standard', () => {
    const standards = process.env.SIDELAY_STANDARDS_DIR;
    for (const { document, ticket } of jobs) {
      for (const audit of ['<PhaseTime', '<ProcessRun', '<ResourceAudit']) expect(document).toContain(audit);
      expect(document).toContain(`JobID="${ticket.jobId}"`);
      // Whatever left for a machine came back and was merged, the machine's own log with it.
      const count = (what: string): number => document.split(what).length - 1;
      expect(count('<Spawned ')).toBe(ticket.steps.length);
      expect(count('<Merged ')).toBe(ticket.steps.length);
      const runs = document.match(/<ProcessRun [^>]*AgentName="[^"]*"/g) ?? [];
      const byMachine = runs.filter((run) => run.includes('simulated device')).length;
      expect([runs.length, byMachine > 0]).toEqual([ticket.steps.length, true]);
      if (!standards) continue;
      const folder = mkdtempSync(join(tmpdir(), 'sidelay-export-'));
      const file = join(folder, 'ticket.jdf');
      writeFileSync(file, document);
      try {
        expect(() =>
          execFileSync('xmllint', ['--noout', '--schema', join(standards, 'jdf/schema/JDF.xsd'), file], {
            stdio: 'pipe',
          }),
        ).not.toThrow();
      } finally {
        rmSync(folder, { recursive: true });
      }
    }
  });

  it('streams the log to a reader who comes later, from the start, without gap', async () => {
    const ids = await hub.events(0);
    expect(ids.length).toBeGreaterThan(50);
    expect(ids).toEqual(ids.map((_, n) => n + 1));
    const resumed = await hub.events(ids.at(-10)!);
    expect(resumed).toEqual(ids.slice(-9));
  });

  it('balances every item of the store', async () => {
    const { items } = await hub.get<{ items: { item: string; accounts: Record<string, number> }[] }>(
      '/api/v1/stock',
    );
    for (const { item, accounts } of items) {
      expect({
        item,
        sum: Math.abs(Object.values(accounts).reduce((sum, amount) => sum + amount, 0)) < 1e-6,
      }).toEqual({ item, sum: true });
    }
  });
});
