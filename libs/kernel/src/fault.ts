import type { Code } from './codes.js';

/**
 * The one base class of what nobody expected: a database that went away, an invariant that broke. Thrown, caught only at
 * a border (HTTP filter, queue consumer, command line). The cause is kept; the text never holds a secret.
 */
export class Fault extends Error {
  constructor(
    readonly code: Code,
    message: string,
    options?: { cause?: unknown },
  ) {
    super(message, options);
    this.name = 'Fault';
  }
}
