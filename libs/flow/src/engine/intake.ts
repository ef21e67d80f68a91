import { type Order, type Plant, type PressStates, planOnPress } from '#libs/craft';
import {
  checkDocument,
  convertDocument,
  kindOf,
  parseXml,
  placeInSource,
  readProduct,
  type XmlDocument,
  type XmlLimits,
} from '#libs/jdf';
import { done, error, hasErrors, type Problem, type Result, refuse } from '#libs/kernel';
import { orderFromProduct, readOrder } from '../definitions/index.js';
import type { DocumentKind } from '../state/ticket.js';
import type { Reading } from './reading.js';

const nothingRead = (kind: DocumentKind, problems: readonly Problem[], jobId = '', name = ''): Reading => ({
  kind,
  jobId,
  name,
  order: null,
  plan: null,
  pressStates: [],
  problems,
});

/**
 * Reads, checks and plans one ticket document. Pure computation; bounded by the reader's limits. `alsoCheck` is asked
 * about what the document alone cannot show: what its addresses lead to in the package around it.
 */
export function readDocument(
  bytes: Uint8Array,
  plant: Plant,
  presses: PressStates = new Map(),
  alsoCheck: (document: XmlDocument) => readonly Problem[] = () => [],
  limits: Partial<XmlLimits> = {},
): Reading {
  const first = firstMark(bytes);
  if (first === '{' || first === '[') return readJsonOrder(bytes, plant, presses);
  const parsed = parseXml(bytes, limits);
  if (!parsed.ok) return nothingRead('unknown', parsed.problems);
  const kind = kindOf(parsed.value);
  if (!kind.ok) return nothingRead('unknown', kind.problems, ...namesOf(parsed.value));
  if (kind.value === 'jdf') return readJdf(parsed.value, plant, presses, alsoCheck(parsed.value));
  if (kind.value === 'xjdf') return readXjdf(parsed.value, plant, presses, alsoCheck(parsed.value));
  const names = namesOf(parsed.value);
  return nothingRead(
    'unknown',
    [error('KIND_UNKNOWN', 'This is a message, not a ticket.', { hint: 'Post messages to /jmf.' })],
    ...names,
  );
}

/** The first character that is neither blank nor a byte order mark. */
function firstMark(bytes: Uint8Array): string {
  for (const byte of bytes.subarray(0, 1024)) {
    if (byte > 0x20 && byte < 0x80) return String.fromCharCode(byte);
  }
  return '';
}

function namesOf(document: XmlDocument): [jobId: string, name: string] {
  const of = (name: string): string => document.root.attributes.find((a) => a.name === name)?.value ?? '';
  return [of('JobID'), of('DescriptiveName')];
}

function readJsonOrder(bytes: Uint8Array, plant: Plant, presses: PressStates): Reading {
  const json = parseJson(bytes);
  if (!json.ok) return nothingRead('order', json.problems);
  const text = (key: string): string => {
    const value = (json.value as Record<string, unknown> | null)?.[key];
    return typeof value === 'string' ? value : '';
  };
  const order = readOrder(json.value, plant);
  if (!order.ok) return nothingRead('order', order.problems, text('jobId'), text('name'));
  return planned('order', order.value, order.problems, plant, presses);
}

function parseJson(bytes: Uint8Array): Result<unknown> {
  let text: string;
  try {
    text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return refuse(error('NOT_TEXT', 'The order is not UTF-8 text.'));
  }
  try {
    return done(JSON.parse(text));
  } catch (cause) {
    return refuse(jsonProblem(text, String(cause instanceof Error ? cause.message : cause)));
  }
}

function jsonProblem(text: string, message: string): Problem {
  const at = /position (\d+)/.exec(message);
  const line = at === null ? null : text.slice(0, Number(at[1])).split('\n').length;
  return error('JSON_NOT_WELL_FORMED', `The JSON can't be read: ${message}`, { line, path: '' });
}

function readJdf(
  document: XmlDocument,
  plant: Plant,
  presses: PressStates,
  besides: readonly Problem[],
): Reading {
  const [jobId, name] = namesOf(document);
  const found = [...checkDocument(document).problems, ...besides];
  if (hasErrors(found)) return nothingRead('jdf', found, jobId, name);
  const product = readProduct(document);
  if (!product.ok) return nothingRead('jdf', [...found, ...product.problems], jobId, name);
  const order = orderFromProduct(product.value, plant);
  const problems = [...found, ...product.problems, ...order.problems];
  if (!order.ok) return nothingRead('jdf', problems, jobId, name);
  return planned('jdf', order.value, problems, plant, presses);
}

/** The newer generation is read as the older says it; what is found has its place in the document that came. */
function readXjdf(
  document: XmlDocument,
  plant: Plant,
  presses: PressStates,
  besides: readonly Problem[],
): Reading {
  const [jobId, name] = namesOf(document);
  const found = [...checkDocument(document).problems, ...besides];
  if (hasErrors(found)) return nothingRead('xjdf', found, jobId, name);
  const converted = convertDocument(document, 'jdf');
  if (!converted.ok) return nothingRead('xjdf', [...found, ...converted.problems], jobId, name);
  const { kind, ...reading } = readJdf(converted.value.doc, plant, presses, []);
  const problems = reading.problems.map((problem) => placeInSource(document, problem));
  return { ...reading, kind: kind === 'jdf' ? 'xjdf' : kind, problems: [...found, ...problems] };
}

function planned(
  kind: DocumentKind,
  order: Order,
  problems: readonly Problem[],
  plant: Plant,
  presses: PressStates,
): Reading {
  const { jobId, name } = order;
  const made = planOnPress(order, plant, { held: presses });
  if (!made.ok) return { ...nothingRead(kind, [...problems, ...made.problems], jobId, name), order };
  const { plan, pressStates } = made.value;
  return { kind, jobId, name, order, plan, pressStates, problems: [...problems, ...made.problems] };
}
