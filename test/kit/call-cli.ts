import { run } from '../../apps/cli/src/run.js';

/** What a call of the command line ended with and said. */
export interface Said {
  readonly exit: number;
  readonly out: string;
  readonly err: string;
}

/** Calls the command line in this process, as from a folder and where there is one with a server to ask. */
export async function callCli(argv: readonly string[], folder: string, server?: string): Promise<Said> {
  const said = { out: '', err: '' };
  const exit = await run([...argv], {
    env: server === undefined ? {} : { SIDELAY_SERVER: server },
    folder,
    out: (text) => {
      said.out += `${text}\n`;
    },
    err: (text) => {
      said.err += `${text}\n`;
    },
    raw: (data) => {
      said.out += typeof data === 'string' ? data : Buffer.from(data).toString();
    },
    isTerminal: false,
  });
  return { exit, ...said };
}
