import { Controller, Get, Inject, Res } from '@nestjs/common';
import type { FastifyReply } from 'fastify';
import { isoTime } from '#libs/kernel';
import { RUNTIME, type Runtime } from '../runtime.js';

/** Whether the process lives and whether it can serve (/health, without a token), and its figures (/metrics). */
@Controller()
export class HealthController {
  constructor(@Inject(RUNTIME) private readonly runtime: Runtime) {}

  @Get('health/live')
  live(): unknown {
    return { status: 'live' };
  }

  /** Ready, or why not and what would help. Devices read the plant clock here. */
  @Get('health/ready')
  async ready(@Res({ passthrough: true }) reply: FastifyReply): Promise<unknown> {
    const because = await this.runtime.readiness();
    if (because.length > 0) reply.status(503).header('retry-after', '2');
    const { clockSetting, clock, version, settings } = this.runtime;
    return {
      status: because.length === 0 ? 'ready' : 'notReady',
      because,
      version,
      role: settings.ROLE,
      demo: settings.DEMO,
      plantTime: isoTime(clock.now()),
      clock: clockSetting,
    };
  }

  @Get('metrics')
  async metrics(@Res() reply: FastifyReply): Promise<void> {
    const { registry } = this.runtime.metrics;
    void reply.header('content-type', registry.contentType).send(await registry.metrics());
  }
}
