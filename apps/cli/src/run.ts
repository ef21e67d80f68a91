import { Fault } from '#libs/kernel';
import { readArgs } from './args.js';
import { type Command, EXIT, NoServer, type Surroundings, WrongUse } from './command.js';
import { commands } from './commands/index.js';
import { printable } from './output.js';

/** Finds the command, reads its options strictly, runs it, and gives its exit status. Never throws. */
export async function run(argv: readonly string[], surroundings: Surroundings): Promise<number> {
  const around: Surroundings = {
    ...surroundings,
    out: (text) => surroundings.out(printable(text)),
    err: (text) => surroundings.err(printable(text)),
  };
  const [name, ...rest] = argv;
  if (name === undefined || name === '--help' || name === '-h' || name === 'help') {
    // Who asks is answered; who says nothing used it wrongly.
    if (name === undefined) around.err(overview());
    else around.out(overview());
    return name === undefined ? EXIT.use : EXIT.done;
  }
  const command = commands.find((candidate) => candidate.name === name);
  if (command === undefined) {
    around.err(`There is no command "${name}".\n\n${overview()}`);
    return EXIT.use;
  }
  if (asksForHelp(rest)) {
    around.out(helpOf(command));
    return EXIT.done;
  }
  try {
    return await command.run({ ...around, ...argsOf(command, rest) });
  } catch (cause) {
    return told(cause, around);
  }
}

/** Behind `--` everything is an argument, even a file of that name. */
function asksForHelp(argv: readonly string[]): boolean {
  const end = argv.indexOf('--');
  const options = end < 0 ? argv : argv.slice(0, end);
  return options.includes('--help') || options.includes('-h');
}

function argsOf(command: Command, argv: readonly string[]): ReturnType<typeof readArgs> {
  try {
    return readArgs(command, argv);
  } catch (cause) {
    if (cause instanceof WrongUse) throw new WrongUse(`${cause.message}\n${helpOf(command)}`);
    throw cause;
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
