import { type Code, error, type Problem } from '#libs/kernel';

/** Carries the first problem out of the reader, which would otherwise read on. Never leaves this folder. */
export class ReadingStopped extends Error {
  constructor(readonly problem: Problem) {
    super(problem.message);
  }
}

/** Stops at bytes that are not text in an encoding that is read. */
export function stopNotText(message: string, line: number, hint = READABLE): never {
  throw new ReadingStopped(error('NOT_TEXT' satisfies Code, message, { line, hint }));
}

const READABLE =
  'Save the file as UTF-8. Also read: UTF-16 with a byte order mark, ISO-8859-1 and US-ASCII where the XML declaration names them.';
