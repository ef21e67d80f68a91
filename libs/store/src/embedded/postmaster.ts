import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import pg from 'pg';
import { wallClock } from '#libs/kernel';

/** A server that a pid file tells of. */
export interface Postmaster {
  readonly pid: number;
  readonly port: number;
}

export const pause = (ms: number): Promise<void> =>
  new Promise((done) => void wallClock.setTimeout(done, ms));

/** What postmaster.pid in the data folder says; null when there is none. */
export function readPidFile(data: string): Postmaster | null {
  try {
    const [pid, , , port] = readFileSync(join(data, 'postmaster.pid'), 'utf8').split('\n');
    return Number(pid) > 0 ? { pid: Number(pid), port: Number(port) } : null;
  } catch {
    return null;
  }
}

export function isAlive(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (cause) {
    return (cause as NodeJS.ErrnoException).code === 'EPERM';
  }
}

/**
 * Whether a process is a PostgreSQL on this data folder. After a reboot a stale pid file may name any program, another
 * PostgreSQL of the machine among them, which is none of our business.
 */
export function isServerOf(pid: number, data: string): boolean {
  if (!isAlive(pid)) return false;
  try {
    const command =
      process.platform === 'linux'
        ? readFileSync(`/proc/${pid}/cmdline`, 'utf8')
        : execFileSync('ps', ['-p', String(pid), '-o', 'command='], { encoding: 'utf8' });
    return command.includes('postgres') && command.includes(data);
  } catch {
    // Where it can't be asked, believe the pid file: PostgreSQL itself checks it once more.
    return process.platform === 'win32';
  }
}

/** Whether a server answers on the port and serves this very data folder. */
export async function answers(url: string, data: string): Promise<boolean> {
  try {
    const [row] = await ask<{ data_directory: string }>(url, 'SHOW data_directory');
    return row?.data_directory === data;
  } catch {
    return false;
  }
}

export async function ask<R extends pg.QueryResultRow>(url: string, sql: string): Promise<R[]> {
  const client = new pg.Client({ connectionString: url, connectionTimeoutMillis: 3000 });
  client.on('error', () => undefined);
  try {
    await client.connect();
    return (await client.query<R>(sql)).rows;
  } finally {
    await client.end().catch(() => undefined);
  }
}

/** Asks a server to end and waits for it: quickly but cleanly first, then without ceremony. True when it is gone. */
export async function endServer(pid: number): Promise<boolean> {
  for (const [signal, patienceMs] of [
    ['SIGINT', 20_000],
    ['SIGQUIT', 10_000],
  ] as const) {
    try {
      process.kill(pid, signal);
    } catch {
      return !isAlive(pid);
    }
    for (let waited = 0; waited < patienceMs; waited += 50) {
      if (!isAlive(pid)) return true;
      await pause(50);
    }
  }
  return !isAlive(pid);
}
