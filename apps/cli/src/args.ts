import { parseArgs } from 'node:util';
import { type Call, type Command, WrongUse } from './command.js';

/** Options that several commands know. */
export const asJson = { json: { type: 'boolean' } } as const;
export const atServer = { server: { type: 'string' }, token: { type: 'string' } } as const;

/** Reads what follows the name of a command. Strict: what is not known is refused by name, with what is possible. */
export function readArgs(command: Command, argv: readonly string[]): Pick<Call, 'args' | 'values'> {
  const [least, most] = command.takes;
  const reading = parse(command, argv);
  const { length } = reading.args;
  if (length < least)
    throw new WrongUse(`${command.name} needs ${length === 0 ? 'more' : 'another argument'}.`);
  if (length > most) throw new WrongUse(`${command.name} does not take "${reading.args[most]}".`);
  return reading;
}

function parse(command: Command, argv: readonly string[]): Pick<Call, 'args' | 'values'> {
  try {
    const { positionals, values } = parseArgs({
      args: [...argv],
      options: command.options ?? {},
      allowPositionals: true,
    });
    return { args: positionals, values: values as Call['values'] };
  } catch (cause) {
    const code = (cause as NodeJS.ErrnoException).code ?? '';
    if (!code.startsWith('ERR_PARSE_ARGS')) throw cause;
    // Node goes on to explain its own escapes, which help nobody here.
    throw new WrongUse(`${(cause as Error).message.split(/[.\n]/)[0]}. Possible: ${possible(command)}.`);
  }
}

function possible({ options = {} }: Command): string {
  return [...Object.keys(options), 'help'].map((name) => `--${name}`).join(', ');
}

/** The value of an option that takes a text. */
export function text(call: Pick<Call, 'values'>, option: string): string | undefined {
  const value = call.values[option];
  return typeof value === 'string' ? value : undefined;
}

/** All values of an option that may be given several times. */
export function texts(call: Pick<Call, 'values'>, option: string): readonly string[] {
  const value = call.values[option];
  return Array.isArray(value) ? value : [];
}

/** The value of an option that takes a number of at least `least`. */
export function number(call: Pick<Call, 'values'>, option: string, least = -Infinity): number | undefined {
  const value = text(call, option);
  if (value === undefined) return undefined;
  const parsed = Number(value);
  if (value.trim() === '' || !Number.isFinite(parsed)) {
    throw new WrongUse(`--${option} needs a number, not "${value}".`);
  }
  if (parsed < least) throw new WrongUse(`--${option} must be at least ${least}, not ${value}.`);
  return parsed;
}

/** As `number`, for whole numbers. */
export function wholeNumber(
  call: Pick<Call, 'values'>,
  option: string,
  least = -Infinity,
): number | undefined {
  const value = number(call, option, least);
  if (value !== undefined && !Number.isInteger(value)) {
    throw new WrongUse(`--${option} needs a whole number, not ${value}.`);
  }
  return value;
}
