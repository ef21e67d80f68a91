import { resolve } from 'node:path';
import { convertDocument, type Generation, parseXml, writeXml } from '#libs/jdf';
import { error, type Problem } from '#libs/kernel';
import { asJson, text } from '../args.js';
import { type Call, type Command, EXIT, WrongUse } from '../command.js';
import { readFiles } from '../files.js';
import { sayJson } from '../output.js';
import { sayProblem } from '../say-problems.js';
import { writeTo } from '../write-to.js';

export const convert: Command = {
  name: 'convert',
  usage: 'FILE --to jdf|xjdf [--out FILE] [--json]',
  summary:
    "Convert a ticket or message between the standard's two generations; says what could not be carried over.",
  options: { ...asJson, to: { type: 'string' }, out: { type: 'string' } },
  takes: [1, 1],
  async run(call) {
    const to = generationOf(call);
    const [{ file, bytes }] = readFiles(call).files as [ReturnType<typeof readFiles>['files'][number]];
    if (!MAY_BE_XML.has(bytes[0] ?? 0)) return refused(call, file, [notOne]);
    const parsed = parseXml(bytes);
    if (!parsed.ok) return refused(call, file, parsed.problems);
    const converted = convertDocument(parsed.value, to);
    if (!converted.ok) return refused(call, file, converted.problems);
    const { doc, lost } = converted.value;
    const document = writeXml(doc);
    const out = text(call, 'out');
    if (out !== undefined) writeTo(resolve(call.folder, out), document);
    for (const { path, what, line } of lost) {
      call.err(`${file}${line === null ? '' : `:${line}`}: not carried over: ${path} ${what}`);
    }
    if (call.values.json) sayJson(call, { document, lost: lost.map(({ path, what }) => ({ path, what })) });
    else if (out === undefined) call.raw(document);
    return EXIT.done;
  },
};

/** White space, "<", and the first bytes of byte order marks. */
const MAY_BE_XML: ReadonlySet<number> = new Set([0x09, 0x0a, 0x0d, 0x20, 0x3c, 0xef, 0xfe, 0xff]);

const notOne = error('KIND_UNKNOWN', 'This is no JDF, JMF, XJDF or XJMF document by itself.', {
  hint: 'Take the document out of its package; an order in JSON is planned as it is.',
});

function generationOf(call: Call): Generation {
  const to = text(call, 'to');
  if (to === 'jdf' || to === 'xjdf') return to;
  throw new WrongUse(
    to === undefined ? 'Say --to jdf or --to xjdf.' : `There is no generation ${to}: jdf or xjdf.`,
  );
}

function refused(call: Call, file: string, problems: readonly Problem[]): number {
  for (const problem of problems) call.err(sayProblem(file, problem));
  if (call.values.json) sayJson(call, { document: null, lost: [], problems });
  return EXIT.faults;
}
