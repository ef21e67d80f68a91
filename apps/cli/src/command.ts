import type { ParseArgsConfig } from 'node:util';

/** 0 done · 1 the input has faults · 2 wrong use, or no file could be read · 3 no server answers (contract section 3). */
export const EXIT = { done: 0, faults: 1, use: 2, noServer: 3 } as const;

type Values = Readonly<Record<string, string | boolean | undefined>>;

/** What a command is given. Text for people goes to stderr or, where it is the answer itself, to stdout. */
export interface Call {
  readonly args: readonly string[];
  readonly values: Values;
  readonly env: Readonly<Record<string, string | undefined>>;
  /** Relative files count from here. */
  readonly folder: string;
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
  readonly isTerminal: boolean;
}

export interface Command {
  readonly name: string;
  /** Arguments and options as they are written. */
  readonly usage: string;
  readonly summary: string;
  readonly options?: ParseArgsConfig['options'];
  /** Least and most positional arguments. */
  readonly takes: readonly [number, number];
  run(call: Call): Promise<number>;
}

/** Wrong use, said in words; the command line answers with exit status 2. */
export class WrongUse extends Error {
  constructor(message: string) {
    super(message);
    this.name = 'WrongUse';
  }
}

/** No server answers; exit status 3. */
export class NoServer extends Error {
  constructor(message: string) {
    super(message);
    this.name = 'NoServer';
  }
}

export function text(call: Call, option: string): string | undefined {
  const value = call.values[option];
  return typeof value === 'string' ? value : undefined;
}

export function number(call: Call, option: string): number | undefined {
  const value = text(call, option);
  if (value === undefined) return undefined;
  const parsed = Number(value);
  if (value.trim() === '' || Number.isNaN(parsed))
    throw new WrongUse(`--${option} needs a number, not "${value}".`);
  return parsed;
}

export const asJson = { json: { type: 'boolean' } } as const;
export const atServer = { server: { type: 'string' }, token: { type: 'string' } } as const;
