import { parseArgs } from 'node:util';
import { Fault } from '#libs/kernel';
import { type Call, type Command, EXIT, NoServer, WrongUse } from './command.js';
import { commands } from './commands/index.js';

type Surroundings = Omit<Call, 'args' | 'values'>;

/** Finds the command, reads its options strictly, runs it, and gives its exit status. Never throws. */
export async function run(argv: readonly string[], around: Surroundings): Promise<number> {
  const [name, ...rest] = argv;
  if (name === undefined || name === '--help' || name === 'help') {
    around.err(overview());
    return name === undefined ? EXIT.use : EXIT.done;
  }
  const command = commands.find((candidate) => candidate.name === name);
  if (command === undefined) {
    around.err(`There is no command "${name}".\n\n${overview()}`);
    return EXIT.use;
  }
  if (rest.includes('--help')) {
    around.err(helpOf(command));
    return EXIT.done;
  }
  try {
    return await command.run({ ...around, ...readArgs(command, rest) });
  } catch (cause) {
    return told(cause, around);
  }
}

function readArgs(command: Command, argv: readonly string[]): Pick<Call, 'args' | 'values'> {
  const [least, most] = command.takes;
  try {
    const { positionals, values } = parseArgs({
      args: [...argv],
      options: command.options ?? {},
      allowPositionals: true,
    });
    if (positionals.length < least || positionals.length > most)
      throw new WrongUse('That is not how it is called.');
    return { args: positionals, values: values as Call['values'] };
  } catch (cause) {
    const message = cause instanceof Error ? cause.message.split('. ')[0] : String(cause);
    throw new WrongUse(`${message}\n${helpOf(command)}`);
  }
}

function told(cause: unknown, around: Surroundings): number {
  if (cause instanceof WrongUse) {
    around.err(cause.message);
    return EXIT.use;
  }
  if (cause instanceof NoServer) {
    around.err(cause.message);
    return EXIT.noServer;
  }
  if (cause instanceof Fault) {
    around.err(cause.message);
    return cause.code === 'DATABASE' ? EXIT.noServer : EXIT.use;
  }
  around.err(`Something broke: ${cause instanceof Error ? (cause.stack ?? cause.message) : String(cause)}`);
  return EXIT.use;
}

function helpOf({ name, usage, summary }: Command): string {
  return `sidelay ${name} ${usage}\n  ${summary}`;
}

function overview(): string {
  const width = Math.max(...commands.map(({ name }) => name.length));
  const lines = commands.map(({ name, summary }) => `  ${name.padEnd(width)}  ${summary}`);
  return `sidelay COMMAND …   (sidelay COMMAND --help tells more)\n\n${lines.join('\n')}`;
}
