import { type ArgumentsHost, Catch, type ExceptionFilter, HttpException } from '@nestjs/common';
import type { FastifyReply, FastifyRequest } from 'fastify';
import type { EnginePorts } from '#libs/flow';
import { refusalJmf } from '#libs/flow';
import { type Code, codes, Fault } from '#libs/kernel';
import { HttpProblem, PROBLEM_TYPE, problemDocument } from './problem.js';

/** The only place where something thrown becomes an answer. Unexpected causes go to the log, never to the caller. */
@Catch()
export class ProblemFilter implements ExceptionFilter {
  constructor(private readonly ports: Pick<EnginePorts, 'deviceId' | 'clock' | 'ids' | 'log'>) {}

  catch(cause: unknown, host: ArgumentsHost): void {
    const http = host.switchToHttp();
    const request = http.getRequest<FastifyRequest>();
    const reply = http.getResponse<FastifyReply>();
    answerAndLog(cause, request, reply, this.ports);
  }
}

/** Answers something thrown; what nobody expected goes to the log too. */
export function answerAndLog(
  cause: unknown,
  request: FastifyRequest,
  reply: FastifyReply,
  ports: Pick<EnginePorts, 'deviceId' | 'clock' | 'ids' | 'log'>,
): void {
  const problem = asProblem(cause);
  answerWith(problem, request, reply, ports);
  if (problem.status >= 500)
    ports.log('error', 'a request failed', { path: request.url, cause: describe(cause) });
}

/** Writes the problem in the form the path speaks: JMF at /jmf, problem+json elsewhere. */
function answerWith(
  problem: HttpProblem,
  request: FastifyRequest,
  reply: FastifyReply,
  ports: Pick<EnginePorts, 'deviceId' | 'clock' | 'ids'>,
): void {
  if (reply.sent || reply.raw.headersSent) return;
  const path = request.url.split('?')[0]!;
  void reply.status(problem.status).headers(problem.headers);
  if (path === '/jmf') {
    void reply
      .header('content-type', 'application/vnd.cip4-jmf+xml; charset=utf-8')
      .send(refusalJmf(ports, problem.code, problem.detail));
    return;
  }
  void reply
    .header('content-type', `${PROBLEM_TYPE}; charset=utf-8`)
    .send(JSON.stringify(problemDocument(problem, path)));
}

function asProblem(cause: unknown): HttpProblem {
  if (cause instanceof HttpProblem) return cause;
  if (cause instanceof Fault)
    return new HttpProblem(cause.code, codes[cause.code].title, [], codes[cause.code].http);
  const status = statusOf(cause);
  const code = CODE_BY_STATUS[status] ?? (status >= 500 ? 'BROKEN' : 'REQUEST_INVALID');
  const detail = status < 500 && cause instanceof Error ? cause.message : codes[code].title;
  return new HttpProblem(code, detail, [], status);
}

const CODE_BY_STATUS: Readonly<Record<number, Code>> = {
  401: 'UNAUTHENTICATED',
  403: 'FORBIDDEN',
  404: 'NOT_FOUND',
  413: 'BODY_TOO_LARGE',
  415: 'MEDIA_TYPE',
  429: 'TOO_MANY',
};

/** The web framework's own refusals (too large, no such route) carry their status. */
function statusOf(cause: unknown): number {
  if (cause instanceof HttpException) return cause.getStatus();
  const status = (cause as { statusCode?: unknown } | null)?.statusCode;
  return typeof status === 'number' && status >= 400 && status < 600 ? status : 500;
}

function describe(cause: unknown): string {
  return cause instanceof Error ? (cause.stack ?? cause.message) : String(cause);
}
