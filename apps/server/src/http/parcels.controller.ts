import { Controller, Get, Inject, Param, Res } from '@nestjs/common';
import type { FastifyReply } from 'fastify';
import { processTicket } from '#libs/flow';
import { RUNTIME, type Runtime } from '../runtime.js';
import { okOr } from './answers.js';
import { HttpProblem } from './problem.js';

/**
 * Where a device fetches the ticket that it was submitted by address. The entry's id is 74 random bits that only the
 * device was told, so the address itself is the permission; it ends with the entry.
 */
@Controller('jmf/tickets')
export class ParcelsController {
  constructor(@Inject(RUNTIME) private readonly runtime: Runtime) {}

  @Get(':ticket/:entry')
  async parcel(
    @Param('ticket') ticketId: string,
    @Param('entry') entryId: string,
    @Res() reply: FastifyReply,
  ): Promise<void> {
    const { store, ports, clock } = this.runtime;
    const file = await store.ticketFile(ticketId);
    const entry = file?.entries.find((row) => row.id === entryId);
    if (file == null || entry === undefined || entry.status === 'Completed' || entry.status === 'Aborted') {
      throw new HttpProblem('ENTRY_UNKNOWN', 'There is no such entry, or it has ended.');
    }
    const { jmfUrl, deviceId: senderId, plant } = ports;
    const original = await ports.ticketDocument(file);
    const document = okOr(
      processTicket(file, original, entry.stepId, { now: clock.now(), jmfUrl, senderId, plant }),
    );
    void reply.header('content-type', 'application/vnd.cip4-jdf+xml; charset=utf-8').send(document);
  }
}
