/**
 * What is expected to go wrong is a returned value, never an exception (docs/decisions/0003).
 * A `Problem` is one finding with its place and its remedy; a refusal is a list of them.
 */
import type { Code } from './codes.js';

export type Severity = 'error' | 'warning';

/** One finding about an input. `path` is an XPath (XML) or a JSON Pointer (JSON); `line` counts from 1. */
export interface Problem {
  readonly severity: Severity;
  readonly code: Code;
  readonly line: number | null;
  readonly path: string | null;
  readonly message: string;
  /** How to mend it, in words for the person who sent it. */
  readonly hint: string | null;
}

export interface Done<T> {
  readonly ok: true;
  readonly value: T;
  /** Warnings that did not stop the work. */
  readonly problems: readonly Problem[];
}

export interface Refused {
  readonly ok: false;
  readonly problems: readonly Problem[];
}

export type Result<T> = Done<T> | Refused;

export function done<T>(value: T, problems: readonly Problem[] = []): Done<T> {
  return { ok: true, value, problems };
}

/** A refusal must name at least one error, or nobody can mend it. */
export function refuse(...problems: readonly Problem[]): Refused {
  return { ok: false, problems };
}

interface Where {
  readonly line?: number | null;
  readonly path?: string | null;
  readonly hint?: string | null;
}

export function error(code: Code, message: string, where: Where = {}): Problem {
  return problem('error', code, message, where);
}

export function warning(code: Code, message: string, where: Where = {}): Problem {
  return problem('warning', code, message, where);
}

function problem(severity: Severity, code: Code, message: string, where: Where): Problem {
  return {
    severity,
    code,
    line: where.line ?? null,
    path: where.path ?? null,
    message,
    hint: where.hint ?? null,
  };
}

export function hasErrors(problems: readonly Problem[]): boolean {
  return problems.some((p) => p.severity === 'error');
}
