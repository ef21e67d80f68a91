import type { ParseArgsConfig } from 'node:util';

/** 0 done · 1 the input has faults · 2 wrong use, or no file could be read · 3 no server answers. */
export const EXIT = { done: 0, faults: 1, use: 2, noServer: 3 } as const;

type Values = Readonly<Record<string, string | boolean | readonly string[] | undefined>>;

/** Where a command runs, and where its text goes. */
export interface Surroundings {
  readonly env: Readonly<Record<string, string | undefined>>;
  /** Relative files count from here. */
  readonly folder: string;
  /** A line for people, to stdout: the answer itself. */
  readonly out: (text: string) => void;
  /** A line for people, to stderr: everything beside the answer. */
  readonly err: (text: string) => void;
  /** Exactly these bytes to stdout: JSON, documents. */
  readonly raw: (data: string | Uint8Array) => void;
  /** Whether stdout is a terminal. */
  readonly isTerminal: boolean;
}

/** What a command is given. */
export interface Call extends Surroundings {
  readonly args: readonly string[];
  readonly values: Values;
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
