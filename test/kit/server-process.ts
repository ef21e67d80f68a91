import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { createServer } from 'node:net';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const top = fileURLToPath(new URL('../../', import.meta.url));

/** A port below those that closing clients still hold. */
export async function freePort(): Promise<number> {
  for (;;) {
    const port = 20_000 + Math.floor(Math.random() * 12_000);
    const probe = createServer();
    const free = await new Promise<boolean>((settle) => {
      probe.once('error', () => settle(false));
      probe.listen(port, '127.0.0.1', () => settle(true));
    });
    if (!free) continue;
    probe.close();
    await once(probe, 'close');
    return port;
  }
}

export interface Running {
  readonly process: ChildProcess;
  readonly url: string;
  /** Everything the process wrote so far, for the message of a failing test. */
  output(): string;
  kill(signal: NodeJS.Signals): Promise<void>;
}

const clean = (): NodeJS.ProcessEnv =>
  Object.fromEntries(
    Object.entries(process.env).filter(([name]) => !name.startsWith('SIDELAY_') && name !== 'NODE_OPTIONS'),
  );

/** Runs a command of the built product and waits until it says it is ready. */
export async function startServer(
  env: Record<string, string>,
  args: readonly string[] = ['start'],
): Promise<Running> {
  const child = spawn(process.execPath, [join(top, 'scripts', 'sidelay.mjs'), ...args], {
    cwd: top,
    env: { ...clean(), ...env },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  const lines: string[] = [];
  const ready = new Promise<string>((settle, fail) => {
    const hear = (chunk: Buffer): void => {
      lines.push(chunk.toString());
      const said = /Sidelay is ready at (\S+)/.exec(lines.join(''));
      if (said !== null) settle(said[1]!);
    };
    child.stdout.on('data', hear);
    child.stderr.on('data', hear);
    child.once('exit', (code, signal) =>
      fail(new Error(`the server ended (${code ?? signal}) before it was ready:\n${lines.join('')}`)),
    );
  });
  const url = await ready;
  return {
    process: child,
    url,
    output: () => lines.join(''),
    async kill(signal) {
      if (child.exitCode !== null || child.signalCode !== null) return;
      const gone = once(child, 'exit');
      child.kill(signal);
      await gone;
    },
  };
}

/** Runs another node program of the build beside the server. */
export function startProgram(path: string, args: readonly string[]): Running {
  const child = spawn(process.execPath, [join(top, 'dist', path), ...args], {
    cwd: top,
    env: clean(),
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  const lines: string[] = [];
  child.stdout.on('data', (chunk: Buffer) => lines.push(chunk.toString()));
  child.stderr.on('data', (chunk: Buffer) => lines.push(chunk.toString()));
  return {
    process: child,
    url: '',
    output: () => lines.join(''),
    async kill(signal) {
      if (child.exitCode !== null || child.signalCode !== null) return;
      const gone = once(child, 'exit');
      child.kill(signal);
      await gone;
    },
  };
}

/** Asks again and again until the answer is there; real time passes, so the deadline is generous and only ends a hang. */
export async function until<T>(
  ask: () => Promise<T | null | false | undefined>,
  what: string,
  deadlineMs = 120_000,
): Promise<T> {
  const end = Date.now() + deadlineMs;
  for (;;) {
    const answer = await ask().catch(() => null);
    if (answer) return answer;
    if (Date.now() > end) throw new Error(`never came: ${what}`);
    await new Promise((settle) => setTimeout(settle, 150));
  }
}
