import { Controller, Get, HttpCode, Inject, Param, Post, Query, Req, Res } from '@nestjs/common';
import type { FastifyReply, FastifyRequest } from 'fastify';
import {
  command,
  consumptionView,
  inOrderOfTime,
  sentenceOf,
  type TicketFile,
  takeIn,
  ticketStatuses,
  ticketView,
  workAtBench,
} from '#libs/flow';
import { isoTime } from '#libs/kernel';
import { sha256, unpack } from '../intake/unpack.js';
import { RUNTIME, type Runtime } from '../runtime.js';
import { cursorPage, ifMatch, limitOf, okOr, parseJsonBody, withTag } from './answers.js';
import { benchCounts } from './bodies.js';
import { documentAnswer } from './document-answer.js';
import { HttpProblem } from './problem.js';

/** Verbs of a ticket or step that people give. */
const COMMANDS = ['hold', 'resume', 'abort'] as const;
const BENCH = ['start', 'pause', 'finish'] as const;
/** What a ticket can come as; what it really is, its own bytes say. */
const ACCEPTED =
  /^(application\/(vnd\.cip4-x?jdf\+xml|xml|json|zip|octet-stream)|text\/(xml|plain)|multipart\/related)\s*(;|$)/i;

/**
 * Tickets: taken in, listed, shown with plan, document, story and consumption, and commanded (/api/v1/tickets).
 * Refusals are thrown as HttpProblem.
 */
@Controller('api/v1/tickets')
export class TicketsController {
  constructor(@Inject(RUNTIME) private readonly runtime: Runtime) {}

  @Post()
  async create(
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<unknown> {
    const bytes = request.body as Buffer | undefined;
    if (bytes === undefined || bytes.length === 0) {
      throw new HttpProblem('REQUEST_INVALID', 'The body is empty: send a JDF, a package or a JSON order.');
    }
    const mediaType = request.headers['content-type'] ?? 'application/octet-stream';
    if (!ACCEPTED.test(mediaType)) {
      const sent = mediaType.split(';')[0];
      throw new HttpProblem(
        'MEDIA_TYPE',
        `${sent} is no ticket; send JDF, a JSON order, or a package of either.`,
      );
    }
    const key = request.headers['idempotency-key'];
    const unpacked = await unpack(bytes, mediaType);
    const outcome = await takeIn(this.runtime.ports, {
      bytes,
      sha256: sha256(bytes),
      mediaType,
      name: null,
      intake: request.headers['x-sidelay-intake'] === 'commandLine' ? 'commandLine' : 'http',
      ...unpacked,
      key: typeof key === 'string' ? { scope: `http:${request.caller?.name ?? ''}`, key } : null,
    });
    const { file, repeated } = okOr(outcome);
    const rejected = file.ticket.status === 'Rejected';
    this.runtime.metrics.ticketsTakenIn.inc({
      intake: file.ticket.intake,
      outcome: rejected ? 'rejected' : 'accepted',
    });
    reply.header('location', `/api/v1/tickets/${file.ticket.id}`);
    if (rejected) {
      const problem = HttpProblem.from(file.ticket.problems, 422);
      throw new HttpProblem(problem.code, problem.detail, file.ticket.problems, 422, {
        location: `/api/v1/tickets/${file.ticket.id}`,
      });
    }
    reply.status(repeated ? 200 : 201);
    return withTag(reply, file);
  }

  @Get()
  async list(
    @Query('status') status?: string,
    @Query('q') q?: string,
    @Query('cursor') cursor?: string,
    @Query('limit') limit?: string,
  ): Promise<unknown> {
    if (status !== undefined && !ticketStatuses.some((known) => known === status)) {
      const detail = `A ticket is never "${status}"; it is ${ticketStatuses.join(', ')}.`;
      throw new HttpProblem('REQUEST_INVALID', detail);
    }
    const page = await this.runtime.store.tickets({ status, q, cursor, limit: limitOf(limit) });
    return cursorPage(page, ticketView);
  }

  @Get(':id')
  async one(@Param('id') id: string, @Res({ passthrough: true }) reply: FastifyReply): Promise<unknown> {
    return withTag(reply, await this.file(id));
  }

  @Get(':id/plan')
  async plan(@Param('id') id: string): Promise<unknown> {
    const { ticket } = await this.file(id);
    if (ticket.plan !== null) return ticket.plan;
    throw new HttpProblem('PLAN_MISSING', `Ticket ${id} has no plan.`, ticket.problems, 409);
  }

  @Get(':id/document')
  async document(
    @Param('id') id: string,
    @Req() request: FastifyRequest,
    @Res() reply: FastifyReply,
  ): Promise<void> {
    const { contentType, body } = await documentAnswer(
      this.runtime,
      await this.file(id),
      request.headers.accept ?? '*/*',
    );
    void reply.header('content-type', contentType).send(body);
  }

  @Get(':id/story')
  async story(
    @Param('id') id: string,
    @Query('cursor') cursor?: string,
    @Query('limit') limit?: string,
  ): Promise<unknown> {
    await this.file(id);
    const size = limitOf(limit, 500);
    const events = await this.runtime.store.eventsAfter(Number(cursor ?? 0) || 0, size, { ticketId: id });
    return {
      items: inOrderOfTime(events).map((event) => ({
        id: String(event.position),
        time: isoTime(event.time),
        type: event.type,
        step: event.stepId,
        device: event.deviceId,
        sentence: sentenceOf(event),
        data: event.data,
      })),
      next: events.length === size ? String(events.at(-1)!.position) : null,
    };
  }

  @Get(':id/consumption')
  async consumption(@Param('id') id: string): Promise<unknown> {
    return { items: consumptionView(await this.file(id)), next: null };
  }

  @Post(':id/:verb')
  @HttpCode(200)
  async command(
    @Param('id') id: string,
    @Param('verb') verb: string,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<unknown> {
    const known = COMMANDS.find((name) => name === verb);
    if (known === undefined) throw new HttpProblem('NOT_FOUND', `A ticket knows ${COMMANDS.join(', ')}.`);
    const by = request.caller?.name ?? 'someone';
    return withTag(reply, okOr(await command(this.runtime.ports, id, null, known, by, ifMatch(request))));
  }

  @Post(':id/steps/:step/:verb')
  @HttpCode(200)
  async stepCommand(
    @Param('id') id: string,
    @Param('step') step: string,
    @Param('verb') verb: string,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<unknown> {
    const by = request.caller?.name ?? 'someone';
    const { ports } = this.runtime;
    const bench = BENCH.find((name) => name === verb);
    if (bench !== undefined) {
      const counts = benchCounts(parseJsonBody(request));
      return withTag(reply, okOr(await workAtBench(ports, id, step, bench, counts, ifMatch(request))));
    }
    const known = COMMANDS.find((name) => name === verb);
    if (known === undefined)
      throw new HttpProblem('NOT_FOUND', `A step knows ${[...COMMANDS, ...BENCH].join(', ')}.`);
    return withTag(reply, okOr(await command(ports, id, step, known, by, ifMatch(request))));
  }

  private async file(id: string): Promise<TicketFile> {
    const file = await this.runtime.store.ticketFile(id);
    if (file === null) throw new HttpProblem('NOT_FOUND', `There is no ticket ${id}.`);
    return file;
  }
}
