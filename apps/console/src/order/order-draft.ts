/**
 * The order form: its fields, how they become the JSON order, and which field a problem
 * means. It asks for what this version plans: flat sheets, and saddle-stitched work on one paper.
 */
import type { Problem } from '../server/shapes.js';
import { words } from '../words/index.js';

export type FieldName = keyof typeof words.order.fields;

/** Everything as typed. Numbers stay text: what is no number is sent as it is, and the server says so by name. */
export interface OrderDraft {
  readonly text: Readonly<Record<FieldName, string>>;
  /** Process inks ticked, per field of inks. */
  readonly ticked: Readonly<Record<InkField, readonly string[]>>;
}

export const inkFields = ['inksFront', 'inksBack'] as const;
export type InkField = (typeof inkFields)[number];
export const isInkField = (name: FieldName): name is InkField =>
  (inkFields as readonly string[]).includes(name);

/** The contract's names of the four process inks, in printing order of the trade (common practice, no source). */
export const processInks = ['Black', 'Cyan', 'Magenta', 'Yellow'] as const;

const NUMBERS: ReadonlySet<FieldName> = new Set([
  'quantity',
  'trimWidthMm',
  'trimHeightMm',
  'pages',
  'bleedMm',
  'priority',
]);
/** Fields that the order cannot do without. */
export const needed: ReadonlySet<FieldName> = new Set([
  'jobId',
  'name',
  'quantity',
  'trimWidthMm',
  'trimHeightMm',
  'pages',
  'binding',
  'stock',
]);

export const bindingNames = Object.keys(words.order.bindings);

export function emptyDraft(): OrderDraft {
  const names = Object.keys(words.order.fields) as FieldName[];
  const text = Object.fromEntries(names.map((name) => [name, ''])) as Record<FieldName, string>;
  return {
    text: { ...text, binding: 'SaddleStitch' },
    ticked: { inksFront: [...processInks], inksBack: [...processInks] },
  };
}

/** The JSON order. Empty fields are left out, so that the plant's own defaults or the server's refusal speak. */
export function orderOf(draft: OrderDraft): Record<string, unknown> {
  const order: Record<string, unknown> = {};
  for (const name of Object.keys(draft.text) as FieldName[]) {
    const value = typedValue(draft, name);
    if (value !== undefined) order[name] = value;
  }
  return order;
}

function typedValue(draft: OrderDraft, name: FieldName): unknown {
  const text = draft.text[name].trim();
  if (isInkField(name)) return [...draft.ticked[name], ...listOf(text, ',')];
  if (text === '') return undefined;
  if (name === 'files') return listOf(text, '\n');
  if (name === 'due') return Number.isNaN(Date.parse(text)) ? text : new Date(text).toISOString();
  if (!NUMBERS.has(name)) return text;
  const number = Number(text.replace(',', '.'));
  return Number.isFinite(number) ? number : text;
}

const listOf = (text: string, mark: string): string[] =>
  text
    .split(mark)
    .map((part) => part.trim())
    .filter((part) => part !== '');

/** The field that a problem's JSON Pointer lies in, or null for one that belongs to no field. */
export function fieldOf(problem: Pick<Problem, 'path'>): FieldName | null {
  const [first] = (problem.path ?? '').replace(/^\//, '').split('/');
  return (Object.keys(words.order.fields) as FieldName[]).find((name) => name === first) ?? null;
}

/** Trimmed sizes of ISO 216, width by height in millimetres. */
export const namedSizes: Readonly<Record<string, readonly [widthMm: number, heightMm: number]>> = {
  A3: [297, 420],
  A4: [210, 297],
  A5: [148, 210],
  A6: [105, 148],
};

/** Media types by a file's ending, as the open standard names them; what is not known is left to the server to look at. */
export function mediaTypeOf(fileName: string): string {
  const ending = /\.([a-z0-9]+)$/i.exec(fileName)?.[1]?.toLowerCase() ?? '';
  return MEDIA_TYPES[ending] ?? 'application/octet-stream';
}

const MEDIA_TYPES: Readonly<Record<string, string>> = {
  jdf: 'application/vnd.cip4-jdf+xml',
  xml: 'application/xml',
  json: 'application/json',
  zip: 'application/zip',
};

/**
 * The media type of a multipart package from its first lines: the boundary stands in its Content-Type, or the body
 * begins with it. Null for anything else; without a boundary nobody can take a package apart.
 */
export function packageType(start: string): string | null {
  const lines = start.split(/\r?\n/);
  const first = lines.find((line) => line !== '') ?? '';
  if (first.startsWith('--') && first.length > 2) return related(first.slice(2).trimEnd());
  const empty = lines.indexOf('');
  const header = lines.slice(0, empty === -1 ? undefined : empty).join(' ');
  if (!/content-type:\s*multipart\/related/i.test(header)) return null;
  const named = /boundary=(?:"([^"]+)"|([^\s;]+))/i.exec(header);
  return named === null ? null : related(named[1] ?? named[2]!);
}

const related = (boundary: string): string => `multipart/related; boundary="${boundary}"`;
