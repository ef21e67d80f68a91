import type { Surroundings } from './command.js';
import { printable } from './output.js';
import { bar } from './shapes.js';

/** A step that is being worked on. */
export interface LiveStep {
  readonly name: string;
  readonly status: string;
  readonly good: number;
  readonly planned: number;
  readonly unit: string;
}

/**
 * What people see of `watch`: a line an event and, on a terminal, below them one bar for each step that is being worked
 * on, drawn in place (ECMA-48: CUU, ED). Elsewhere bars would only fill a file, so counts are lines as well.
 */
export class LiveView {
  readonly #steps = new Map<string, LiveStep>();
  #drawn = 0;

  constructor(
    private readonly to: Pick<Surroundings, 'out' | 'raw' | 'isTerminal'>,
    private readonly most = 12,
  ) {}

  /** Says one event; null for one that only moves a bar. */
  line(text: string | null): void {
    if (!this.to.isTerminal) {
      if (text !== null) this.to.out(text);
      return;
    }
    const bars = [...this.#steps.values()].slice(0, this.most).map(barOf);
    const wipe = this.#drawn === 0 ? '' : `\u001b[${this.#drawn}A\u001b[J`;
    const lines = [...(text === null ? [] : text.split('\n')), ...bars].map((one) => `${printable(one)}\n`);
    this.to.raw(wipe + lines.join(''));
    this.#drawn = bars.length;
  }

  /** Notes how far a step is; what is not said stays. */
  step(key: string, change: Partial<LiveStep>): void {
    const known = this.#steps.get(key) ?? { name: key, status: '', good: 0, planned: 0, unit: '' };
    this.#steps.set(key, { ...known, ...change });
  }

  /** The step is no longer worked on. */
  drop(key: string): void {
    this.#steps.delete(key);
  }
}

function barOf({ name, status, good, planned, unit }: LiveStep): string {
  const pct = planned > 0 ? Math.min(100, (100 * good) / planned) : 0;
  return `  ${bar(pct)} ${pct.toFixed(0).padStart(3)} %  ${name} ${status} ${good}/${planned} ${unit}`;
}
