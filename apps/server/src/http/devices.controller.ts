import { Controller, Get, Inject, Param, Post, Query, Req, Res } from '@nestjs/common';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { type Device, deviceView, entryView, phaseView, reconcileDevice, registerDevice } from '#libs/flow';
import { RUNTIME, type Runtime } from '../runtime.js';
import { limitOf, parseJsonBody, timeOf } from './answers.js';
import { deviceWish } from './bodies.js';
import { HttpProblem } from './problem.js';

/** Devices, their queues and phases (/api/v1/devices). */
@Controller('api/v1/devices')
export class DevicesController {
  constructor(@Inject(RUNTIME) private readonly runtime: Runtime) {}

  @Get()
  async list(): Promise<unknown> {
    return { items: (await this.runtime.store.devices()).map(deviceView), next: null };
  }

  @Post()
  async register(
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<unknown> {
    const wish = deviceWish(parseJsonBody(request));
    if (request.caller?.kind === 'device' && request.caller.name !== wish.id) {
      throw new HttpProblem('FORBIDDEN', `This token speaks for ${request.caller.name} only.`);
    }
    if ((wish.driver === 'jmf' || wish.driver === 'hotFolder') && wish.url === null) {
      throw new HttpProblem('REQUEST_INVALID', '/url: a device with this driver needs an address.');
    }
    if (wish.driver === 'jmf' && !/^https?:\/\//.test(wish.url ?? '')) {
      throw new HttpProblem('REQUEST_INVALID', '/url: JMF goes over http: or https:.');
    }
    const known = await this.runtime.store.device(wish.id);
    const device = await registerDevice(this.runtime.ports, {
      ...wish,
      name: wish.name ?? known?.name ?? wish.id,
    });
    // A device that comes back may have lost what it was given; asking it must not delay the answer it waits for.
    this.runtime.clock.after(5, () => reconcileDevice(this.runtime.ports, device.id).catch(() => undefined));
    reply.status(known === null ? 201 : 200).header('location', `/api/v1/devices/${device.id}`);
    return deviceView(device);
  }

  @Get(':id')
  async one(@Param('id') id: string): Promise<unknown> {
    return deviceView(await this.device(id));
  }

  @Get(':id/queue')
  async queue(@Param('id') id: string, @Query('limit') limit?: string): Promise<unknown> {
    await this.device(id);
    return { items: (await this.runtime.store.entries(id, limitOf(limit))).map(entryView), next: null };
  }

  @Get(':id/phases')
  async phases(
    @Param('id') id: string,
    @Query('from') from?: string,
    @Query('to') to?: string,
  ): Promise<unknown> {
    await this.device(id);
    const until = timeOf('to', to) ?? this.runtime.clock.now();
    const since = timeOf('from', from) ?? until - 24 * 3600 * 1000;
    return { items: (await this.runtime.store.phases(id, since, until)).map(phaseView), next: null };
  }

  private async device(id: string): Promise<Device> {
    const device = await this.runtime.store.device(id);
    if (device === null) throw new HttpProblem('DEVICE_UNKNOWN', `There is no device ${id}.`);
    return device;
  }
}
