import { isNode, LineCounter, parseDocument, visit } from 'yaml';
import { done, error, type Problem, type Result, refuse } from '#libs/kernel';

/** Larger than any plant's definition; what is larger was not written by a person. */
const MAX_CHARS = 2_000_000;
/** Enough for shared blocks of a plant, too few for a file that unfolds into gigabytes. */
const MAX_ALIASES = 1000;

function parse(text: string) {
  const lines = new LineCounter();
  const document = parseDocument(text, {
    lineCounter: lines,
    prettyErrors: false,
    strict: true,
    uniqueKeys: true,
    version: '1.2',
  });
  return { lines, document };
}

/**
 * Plain data of one YAML 1.2 document, as a plant definition is written. Refusal: PLANT_DEFINITION for each fault, with
 * its line: bad syntax, a key given twice, an unknown tag, more than one document, aliases that unfold without end.
 */
export function readYaml(text: string): Result<unknown> {
  if (text.length > MAX_CHARS) {
    return refuse(error('PLANT_DEFINITION', `The file is longer than ${MAX_CHARS} characters.`));
  }
  const { lines, document } = parse(text);
  const fault = (message: string, at: number): Problem =>
    error('PLANT_DEFINITION', `${message}.`, { line: lines.linePos(at).line });
  const faults = [...document.errors, ...document.warnings].map(({ message, pos }) => fault(message, pos[0]));
  visit(document, {
    Alias(_key, alias) {
      const at = alias.range?.[0] ?? 0;
      if (alias.resolve(document) === undefined) faults.push(fault(`Nothing is named &${alias.source}`, at));
    },
  });
  if (faults.length > 0) return refuse(...faults);
  try {
    return done(document.toJS({ maxAliasCount: MAX_ALIASES }));
  } catch (cause) {
    const why = cause instanceof Error ? cause.message : 'it cannot be unfolded';
    return refuse(error('PLANT_DEFINITION', `The aliases (&, *) cannot be followed: ${why}.`));
  }
}

/**
 * Line (from 1) of the value that `path` leads to, as keys and indexes; of its nearest parent that is written in the file
 * when it is not; null when not even the first step is. For a checker that finds a fault in the data of `readYaml`.
 */
export function locateYaml(text: string, path: readonly (string | number)[]): number | null {
  const { lines, document } = parse(text);
  for (let length = path.length; length > 0; length--) {
    const node = document.getIn(path.slice(0, length), true);
    if (isNode(node) && node.range) return lines.linePos(node.range[0]).line;
  }
  return null;
}
