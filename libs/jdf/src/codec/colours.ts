import { placesOf } from './geometry.js';
import { float, number, share } from './numbers.js';
import type { ValueType } from './value-type.js';

/** Ink of each process colour, 0 to 1. */
export const cmykColor = placesOf(share, 'c', 'm', 'y', 'k');
export const labColor = placesOf(number, 'l', 'a', 'b');
/** Light of each colour, 0 to 1. */
export const srgbColor = placesOf(share, 'r', 'g', 'b');

/** The same in XJDF, whose schema sets no limits. */
export const floatCmykColor = placesOf(float, 'c', 'm', 'y', 'k');
export const floatLabColor = placesOf(float, 'l', 'a', 'b');
export const floatSrgbColor = placesOf(float, 'r', 'g', 'b');

const HUES = [
  'White',
  'Black',
  'Gray',
  'Red',
  'Yellow',
  'Green',
  'Blue',
  'Turquoise',
  'Violet',
  'Orange',
  'Brown',
  'Gold',
  'Silver',
  'Pink',
  'Buff',
  'Ivory',
  'Goldenrod',
  'Mustard',
  'Cyan',
  'Magenta',
  'MultiColor',
] as const;
type Hue = (typeof HUES)[number];

export type NamedColor = `${'' | 'Clear'}${'' | 'Dark' | 'Light'}${Hue}` | 'NoColor';

const CLEARNESS = ['', 'Clear'] as const;
const LIGHTNESS = ['', 'Dark', 'Light'] as const;

/** Every colour name of the standard. Source: the official JDF 1.9 schema. */
const namedColors: readonly NamedColor[] = [
  ...CLEARNESS.flatMap((clear) =>
    LIGHTNESS.flatMap((light) => HUES.map((hue): NamedColor => `${clear}${light}${hue}`)),
  ),
  'NoColor',
];

const known = new Set<string>(namedColors);

// The schema's type keeps white space, so that a blank before the name makes it another one.
export const namedColor: ValueType<NamedColor> = {
  expects: 'a colour name such as Blue, LightBlue or ClearDarkBlue, or NoColor',
  read: (text) => (known.has(text) ? (text as NamedColor) : undefined),
  write: (value) => value,
};
