import { pino } from 'pino';
import type { Log } from '#libs/flow';

/** One JSON line for each thing worth knowing, on stderr: stdout is for the ready line and for people. */
export function makeLog(level: string): Log {
  const logger = pino(
    { level, base: undefined, timestamp: pino.stdTimeFunctions.isoTime },
    pino.destination({ dest: 2, sync: true }),
  );
  return (at, message, facts = {}) => logger[at](facts, message);
}
