import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

/** The inks of one theme, read from the style sheet itself. */
function inks(block: RegExp): Record<string, string> {
  const css = readFileSync(fileURLToPath(new URL('./tokens.css', import.meta.url)), 'utf8');
  const body = block.exec(css)?.[1];
  if (body === undefined) throw new Error(`tokens.css has no block ${block}`);
  return Object.fromEntries(
    [...body.matchAll(/--([\w-]+):\s*(#[0-9a-f]{6})/g)].map(([, name, hex]) => [name, hex]),
  );
}

const light = inks(/^:root \{([^}]*)\}/m);
const dark = inks(/^:root\[data-theme="dark"\] \{([^}]*)\}/m);
const darkByDevice = inks(/:root:not\(\[data-theme="light"\]\) \{([^}]*)\}/);

/** Relative luminance and contrast ratio as WCAG 2.2 defines them. */
function luminance(hex: string): number {
  const channels = [1, 3, 5].map((at) => {
    const value = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * channels[0]! + 0.7152 * channels[1]! + 0.0722 * channels[2]!;
}
function contrast(one: string, other: string): number {
  const [high, low] = [luminance(one), luminance(other)].sort((a, b) => b - a) as [number, number];
  return (high + 0.05) / (low + 0.05);
}

const words = [
  ['ink', 'ground'],
  ['ink', 'paper'],
  ['quiet', 'ground'],
  ['quiet', 'paper'],
  ['spot', 'ground'],
  ['spot', 'paper'],
  ['on-spot', 'spot'],
  ['on-ink', 'ink'],
  ['on-band', 'band'],
] as const;
const shapes = [
  ['line', 'paper'],
  ['spot', 'paper'],
] as const;

describe.each([
  ['light', light],
  ['dark', dark],
])('the inks in %s', (_theme, ink) => {
  it('carry words at 4.5 to 1 or better (WCAG 2.2, criterion 1.4.3)', () => {
    const weak = words.filter(([front, back]) => contrast(ink[front]!, ink[back]!) < 4.5);
    expect(weak).toEqual([]);
  });

  it('draw edges of fields and shapes at 3 to 1 or better (WCAG 2.2, criterion 1.4.11)', () => {
    const weak = shapes.filter(([front, back]) => contrast(ink[front]!, ink[back]!) < 3);
    expect(weak).toEqual([]);
  });
});

describe('contrast', () => {
  it('is computed as the definition has it: black on white 21 to 1', () => {
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 10);
  });

  it('of the dark theme is the same by switch and by device', () => {
    expect(darkByDevice).toEqual(dark);
  });
});
