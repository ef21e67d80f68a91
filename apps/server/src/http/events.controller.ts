import { once } from 'node:events';
import type { ServerResponse } from 'node:http';
import { Controller, Get, Inject, Query, Req, Res } from '@nestjs/common';
import type { FastifyReply, FastifyRequest } from 'fastify';
import type { EventFilter } from '#libs/flow';
import { wallClock } from '#libs/kernel';
import { cloudEvent } from '../events/cloud-event.js';
import { RUNTIME, type Runtime } from '../runtime.js';
import { HttpProblem } from './problem.js';

const BATCH = 500;
/** Proxies close a stream that says nothing; a phone's board must not freeze unseen. */
const HEARTBEAT_MS = 15_000;
/** A reader that takes nothing for so long is dropped; it resumes by Last-Event-ID. */
const SLOW_MS = 30_000;

/**
 * The log as server-sent events (/api/v1/events): from now, from any position, or behind the last event that a reader
 * had.
 */
@Controller('api/v1/events')
export class EventsController {
  constructor(@Inject(RUNTIME) private readonly runtime: Runtime) {}

  /** The log as server-sent events: from a position on, without gap or repeat, then live. */
  @Get()
  async stream(
    @Req() request: FastifyRequest,
    @Res() reply: FastifyReply,
    @Query('after') after?: string,
    @Query('ticket') ticketId?: string,
    @Query('device') deviceId?: string,
    @Query('type') type?: string,
  ): Promise<void> {
    const from = request.headers['last-event-id'] ?? after;
    const position = from === undefined ? await this.runtime.store.head() : Number(from);
    if (!Number.isInteger(position) || position < 0) {
      throw new HttpProblem(
        'REQUEST_INVALID',
        'after and Last-Event-ID must be a position of the log: a whole number from 0.',
      );
    }
    reply.hijack();
    reply.raw.writeHead(200, {
      'content-type': 'text/event-stream; charset=utf-8',
      'cache-control': 'no-store',
      'x-accel-buffering': 'no',
      connection: 'keep-alive',
    });
    const { liveStreams } = this.runtime.metrics;
    liveStreams.inc();
    try {
      await this.follow(reply.raw, position, { ticketId, deviceId, type });
    } catch {
      // The reader is gone or the database is: either way it comes back and resumes where it was.
    } finally {
      liveStreams.dec();
      reply.raw.destroy();
    }
  }

  private async follow(out: ServerResponse, start: number, filter: EventFilter): Promise<void> {
    const { store } = this.runtime;
    let position = start;
    let news = deferred();
    const stop = store.onEvents(() => news.resolve());
    const closed = once(out, 'close').then(() => 'closed' as const);
    try {
      await write(out, 'retry: 2000\n\n');
      while (!out.destroyed) {
        // Ask for news before reading: what is given a position in between wakes the next round.
        news = deferred();
        const head = await store.head();
        const events = await store.eventsAfter(position, BATCH, filter);
        for (const event of events) {
          await write(
            out,
            `id: ${event.position}\nevent: ${event.type}\ndata: ${JSON.stringify(cloudEvent(event, this.runtime.settings.DEVICE_ID))}\n\n`,
          );
          position = event.position;
        }
        if (events.length === BATCH) continue;
        // Filtered out events lie behind us as well.
        position = Math.max(position, head);
        const beat = heartbeat();
        const why = await Promise.race([news.promise, closed, beat.promise]);
        beat.cancel();
        if (why === 'closed') return;
        if (why === 'beat') await write(out, ': still here\n\n');
      }
    } finally {
      stop();
    }
  }
}

async function write(out: ServerResponse, text: string): Promise<void> {
  if (out.destroyed) throw new Error('the reader is gone');
  if (out.write(text)) return;
  let cancel = (): void => undefined;
  const slow = new Promise<never>((_, reject) => {
    cancel = wallClock.setTimeout(() => reject(new Error('the reader is too slow')), SLOW_MS);
  });
  try {
    await Promise.race([once(out, 'drain'), once(out, 'close'), slow]);
  } finally {
    cancel();
  }
}

function deferred(): { promise: Promise<'news'>; resolve: () => void } {
  let resolve = (): void => undefined;
  const promise = new Promise<'news'>((settle) => {
    resolve = () => settle('news');
  });
  return { promise, resolve };
}

function heartbeat(): { promise: Promise<'beat'>; cancel: () => void } {
  let cancel = (): void => undefined;
  const promise = new Promise<'beat'>((settle) => {
    cancel = wallClock.setTimeout(() => settle('beat'), HEARTBEAT_MS);
  });
  return { promise, cancel };
}
