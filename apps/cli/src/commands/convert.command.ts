import { statSync } from 'node:fs';
import { resolve } from 'node:path';
import { encodeXml, type Generation, type Lost, writeXml } from '#libs/jdf';
import type { Problem } from '#libs/kernel';
import {
  kindOfPart,
  mediaTypeByName,
  type Package,
  type PackagePart,
  packageKind,
  readPackage,
  ticketIn,
} from '#libs/wire';
import { asJson, text } from '../args.js';
import { type Call, type Command, EXIT, WrongUse } from '../command.js';
import { convertBytes } from '../convert/convert-bytes.js';
import { convertPackage } from '../convert/convert-package.js';
import { convertToFolder } from '../convert/convert-to-folder.js';
import { packed } from '../convert/pack.js';
import { readFiles } from '../files.js';
import { sayJson } from '../output.js';
import { sayProblem } from '../say-problems.js';
import { writeTo } from '../write-to.js';

const FORMS = ['document', 'multipart', 'zip'] as const;
type Form = (typeof FORMS)[number];

export const convert: Command = {
  name: 'convert',
  usage: `FILE --to jdf|xjdf [--node ID] [--as ${FORMS.join('|')}] [--out FILE|DIR/] [--json]`,
  summary:
    "Convert a ticket, message or package between the standard's two generations; says what could not be carried over. --node: one node of a JDF by its ID or JobPartID; a folder as --out: an XJDF for each step.",
  options: {
    ...asJson,
    to: { type: 'string' },
    node: { type: 'string' },
    as: { type: 'string' },
    out: { type: 'string' },
  },
  takes: [1, 1],
  async run(call) {
    const to = generationOf(call);
    const form = formOf(call);
    const node = text(call, 'node');
    const { files, unread } = readFiles(call);
    const [read] = files;
    if (read === undefined) {
      if (call.values.json) sayJson(call, nothing(unread.map(({ problem }) => problem)));
      return EXIT.use;
    }
    const { file, bytes } = read;
    const folder = folderOf(call);
    if (node !== undefined && to !== 'xjdf') throw new WrongUse('--node makes an XJDF: say --to xjdf.');
    if (folder !== undefined) {
      if (to !== 'xjdf' || node !== undefined || form !== undefined)
        throw new WrongUse('Into a folder goes an XJDF for each step: --to xjdf, without --node and --as.');
      return steps(call, file, bytes, folder);
    }
    const container = packageKind(bytes, null);
    if (container === null || form === 'document') return alone(call, file, bytes, to, form, node);
    return whole(call, file, bytes, to, form ?? container, node);
  },
};

/** The document by itself, or the ticket of a package; wrapped into a package where that is asked for. */
async function alone(
  call: Call,
  file: string,
  bytes: Uint8Array,
  to: Generation,
  form: Form | undefined,
  node: string | undefined,
): Promise<number> {
  const found = await ticketIn(bytes, null);
  if (!found.ok) return refused(call, file, found.problems);
  const converted = convertBytes(found.value.bytes, to, node);
  if (!converted.ok) return refused(call, file, converted.problems);
  const { doc, lost } = converted.value;
  const document = writeXml(doc);
  const all = [...lost, ...leftBehind(found.value.within)];
  if (form === undefined || form === 'document') return said(call, file, document, document, all);
  const name = `${doc.root.local.endsWith('JMF') ? 'message' : 'ticket'}.${doc.root.local.toLowerCase()}`;
  const part: PackagePart = {
    name,
    contentId: `${name}@sidelay`,
    mediaType: mediaTypeByName(name),
    bytes: encodeXml(doc),
  };
  return said(call, file, document, await packed([part], form), all);
}

/** A package, everything in it. */
async function whole(
  call: Call,
  file: string,
  bytes: Uint8Array,
  to: Generation,
  container: Package['container'],
  node: string | undefined,
): Promise<number> {
  const pack = await readPackage(bytes, null);
  if (!pack.ok) return refused(call, file, pack.problems);
  const converted = convertPackage(pack.value, to, container, node);
  if (!converted.ok) return refused(call, file, converted.problems);
  const { parts, lost } = converted.value;
  const first = parts.find((part) => kindOfPart(part) === 'ticket') ?? parts[0]!;
  const document = new TextDecoder().decode(first.bytes);
  return said(call, file, document, await packed(parts, container), lost);
}

async function steps(call: Call, file: string, bytes: Uint8Array, folder: string): Promise<number> {
  const found = await ticketIn(bytes, null);
  if (!found.ok) return refused(call, file, found.problems);
  const made = convertToFolder(found.value.bytes, folder);
  if (!made.ok) return refused(call, file, made.problems);
  const { documents } = made.value;
  const lost = [...made.value.lost, ...leftBehind(found.value.within)];
  sayLost(call, file, lost);
  if (call.values.json) sayJson(call, { document: null, documents, lost: lost.map(placeOnly) });
  else for (const one of documents) call.out(one.file);
  return EXIT.done;
}

/** Of a package of which only the ticket goes on, the other parts. */
function leftBehind(within: { readonly pack: Package; readonly part: PackagePart } | null): readonly Lost[] {
  const others = within === null ? [] : within.pack.parts.filter((part) => part !== within.part);
  return others.map(({ name }) => ({ path: `${name}!`, what: 'stays behind in the package', line: null }));
}

const placeOnly = ({ path, what }: Lost): { path: string; what: string } => ({ path, what });

function sayLost(call: Call, file: string, lost: readonly Lost[]): void {
  for (const { path, what, line } of lost)
    call.err(`${file}${line === null ? '' : `:${line}`}: not carried over: ${path} ${what}`);
}

function said(
  call: Call,
  file: string,
  document: string,
  content: string | Uint8Array,
  lost: readonly Lost[],
): number {
  const out = text(call, 'out');
  if (out !== undefined) writeTo(resolve(call.folder, out), content);
  sayLost(call, file, lost);
  if (call.values.json) sayJson(call, { document, lost: lost.map(placeOnly) });
  else if (out === undefined) call.raw(content);
  return EXIT.done;
}

/** The folder that --out names: one that is there, or a name that ends like one. */
function folderOf(call: Call): string | undefined {
  const out = text(call, 'out');
  if (out === undefined) return undefined;
  const path = resolve(call.folder, out);
  const isFolder = /[/\\]$/.test(out) || statSync(path, { throwIfNoEntry: false })?.isDirectory() === true;
  return isFolder ? path : undefined;
}

function formOf(call: Call): Form | undefined {
  const as = text(call, 'as');
  const form = FORMS.find((one) => one === as);
  if (as !== undefined && form === undefined)
    throw new WrongUse(`There is no form ${as}: ${FORMS.join(', ')}.`);
  return form;
}

function generationOf(call: Call): Generation {
  const to = text(call, 'to');
  if (to === 'jdf' || to === 'xjdf') return to;
  throw new WrongUse(
    to === undefined ? 'Say --to jdf or --to xjdf.' : `There is no generation ${to}: jdf or xjdf.`,
  );
}

function refused(call: Call, file: string, problems: readonly Problem[]): number {
  for (const problem of problems) call.err(sayProblem(file, problem));
  if (call.values.json) sayJson(call, nothing(problems));
  return EXIT.faults;
}

const nothing = (problems: readonly Problem[]) => ({ document: null, lost: [], problems });
