import { Controller, Inject, Post, Req, Res } from '@nestjs/common';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { messageLimits } from '../intake/read-cost.js';
import { receiveMessage } from '../intake/receive-message.js';
import { RUNTIME, type Runtime } from '../runtime.js';

const JMF_TYPE = 'application/vnd.cip4-jmf+xml';

/** The one door for messages of the standard. */
@Controller('jmf')
export class JmfController {
  constructor(@Inject(RUNTIME) private readonly runtime: Runtime) {}

  @Post()
  async receive(@Req() request: FastifyRequest, @Res() reply: FastifyReply): Promise<void> {
    const { ports, documents, metrics, settings } = this.runtime;
    const limits = messageLimits(settings);
    const contentType = request.headers['content-type'] ?? JMF_TYPE;
    const bytes = (request.body as Buffer | undefined | null) ?? Buffer.alloc(0);
    const speaksFor = request.caller?.kind === 'device' ? request.caller.name : null;
    const answer = await receiveMessage(ports, documents, bytes, contentType, speaksFor, limits);
    metrics.messages.inc({ status: String(answer.status) });
    void reply.status(answer.status);
    if (answer.body === '') void reply.send('');
    else void reply.header('content-type', `${JMF_TYPE}; charset=utf-8`).send(answer.body);
  }
}
