import type { Step, Ticket } from '../server/shapes.js';
import { layStrips, shareDone } from './lay-strips.js';

const NOW = Date.UTC(2026, 2, 12, 10, 0);
const iso = (minutes: number): string => new Date(NOW + minutes * 60_000).toISOString();
const minute = (ms: number): number => (ms - NOW) / 60_000;

const step = (id: string, more: Partial<Step> = {}): Step => ({
  id,
  types: ['Folding'],
  status: 'Waiting',
  statusDetails: null,
  activation: 'Active',
  device: `device of ${id}`,
  after: [],
  plannedStart: null,
  plannedEnd: null,
  start: null,
  end: null,
  good: 0,
  waste: 0,
  samples: 0,
  planned: 100,
  unit: 'sheets',
  setupS: 600,
  runS: 1200,
  since: null,
  source: null,
  waitsFor: null,
  entry: null,
  ...more,
});

const ticket = (id: string, steps: readonly Step[], more: Partial<Ticket> = {}): Ticket => ({
  id,
  jobId: id,
  name: id,
  customer: null,
  status: 'InProgress',
  statusDetails: null,
  activation: 'Active',
  quantity: 100,
  due: null,
  priority: 50,
  progressPct: 0,
  intake: 'http',
  created: iso(-60),
  updated: iso(0),
  revision: 1,
  steps,
  problems: [],
  ...more,
});

const spans = (strip: { segments: readonly { step: Step; fromMs: number; toMs: number }[] }) =>
  Object.fromEntries(strip.segments.map((one) => [one.step.id, [minute(one.fromMs), minute(one.toMs)]]));

describe('strips', () => {
  it('lay what is done where it happened, whatever was planned', () => {
    const [strip] = layStrips(
      [ticket('a', [step('fold', { status: 'Completed', start: iso(-50), end: iso(-5) })])],
      NOW,
    );
    expect(spans(strip!)).toEqual({ fold: [-50, -5] });
    expect(strip!.segments[0]).toMatchObject({ state: 'done', doneShare: 1 });
  });

  it('end a running step no earlier than its remaining work allows', () => {
    // 10 min set-up and 20 min run; begun 40 min ago, half of the run done: 10 of 30 min remain.
    const slow = step('fold', { status: 'InProgress', start: iso(-40), good: 50 });
    const [strip] = layStrips([ticket('a', [slow])], NOW);
    expect(shareDone(slow)).toBeCloseTo(20 / 30);
    expect(spans(strip!)).toEqual({ fold: [-40, 10] });
  });

  it('lay a waiting step behind the one it follows, at its planned width', () => {
    const steps = [
      step('fold', { status: 'InProgress', start: iso(0) }),
      step('stitch', { after: ['fold'] }),
    ];
    expect(spans(layStrips([ticket('a', steps)], NOW)[0]!)).toEqual({ fold: [0, 30], stitch: [30, 60] });
  });

  it('never begin before now what has not begun, nor before the planned start', () => {
    const steps = [
      step('cut'),
      step('fold', { plannedStart: iso(45) }),
      step('bind', { plannedStart: iso(-45) }),
    ];
    expect(spans(layStrips([ticket('a', steps)], NOW)[0]!)).toEqual({
      cut: [0, 30],
      fold: [45, 75],
      bind: [0, 30],
    });
  });

  it('give a device one step at a time, the more urgent ticket first', () => {
    const one = ticket('one', [step('print', { device: 'press' })]);
    const rush = ticket('rush', [step('print', { device: 'press' })], { priority: 90 });
    const [first, second] = layStrips([one, rush], NOW);
    expect(spans(second!)).toEqual({ print: [0, 30] });
    expect(spans(first!)).toEqual({ print: [30, 60] });
  });

  it('put steps that run side by side on rows of their own', () => {
    const [strip] = layStrips(
      [ticket('a', [step('body'), step('cover'), step('bind', { after: ['body', 'cover'] })])],
      NOW,
    );
    expect(strip!.rows).toBe(2);
    expect(strip!.segments.map(({ row }) => row)).toEqual([0, 1, 0]);
  });

  it('say by how much the expected end lies behind the due time', () => {
    const [late, early] = layStrips(
      [ticket('a', [step('x')], { due: iso(20) }), ticket('b', [step('y')], { due: iso(40) })],
      NOW,
    );
    expect(late!.lateS).toBe(600);
    expect(early!.lateS).toBe(0);
  });

  it('show the gap from the end of the step before until now, with the reason', () => {
    const steps = [
      step('print', { status: 'Completed', start: iso(-60), end: iso(-25) }),
      step('fold', { after: ['print'], waitsFor: 'in the queue of folder' }),
      step('stitch', { after: ['fold'], waitsFor: 'waits for signatures' }),
    ];
    const { gaps } = layStrips([ticket('a', steps)], NOW)[0]!;
    expect(
      gaps.map(({ step: { id }, reason, fromMs, toMs }) => [id, reason, minute(fromMs), minute(toMs)]),
    ).toEqual([['fold', 'in the queue of folder', -25, 0]]);
  });

  it('leave out steps that wait for each other in a circle instead of never ending', () => {
    const steps = [step('a', { after: ['b'] }), step('b', { after: ['a'] }), step('c')];
    expect(Object.keys(spans(layStrips([ticket('t', steps)], NOW)[0]!))).toEqual(['c']);
  });

  it('lay no work of an aborted ticket into the future', () => {
    const steps = [step('print', { status: 'Aborted', start: iso(-9), end: iso(-4) }), step('fold')];
    const [strip] = layStrips([ticket('t', steps, { status: 'Aborted' })], NOW);
    expect(spans(strip!)).toEqual({ print: [-9, -4] });
  });
});
