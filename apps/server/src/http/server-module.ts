import { type DynamicModule, Module } from '@nestjs/common';
import { RUNTIME, type Runtime } from '../runtime.js';
import { DescriptionController } from './description.controller.js';
import { DevicesController } from './devices.controller.js';
import { EventsController } from './events.controller.js';
import { HealthController } from './health.controller.js';
import { JmfController } from './jmf.controller.js';
import { ParcelsController } from './parcels.controller.js';
import { SessionController } from './session.controller.js';
import { StockController } from './stock.controller.js';
import { TicketsController } from './tickets.controller.js';

@Module({})
class ServerModule {}

const hub = [
  DescriptionController,
  DevicesController,
  EventsController,
  JmfController,
  ParcelsController,
  SessionController,
  StockController,
  TicketsController,
] as const;

/** Everything that answers over HTTP. */
export const controllers = [HealthController, ...hub] as const;

/** What the hub answers over HTTP. A worker has only the health routes. */
export function serverModule(runtime: Runtime): DynamicModule {
  return {
    module: ServerModule,
    controllers: runtime.settings.ROLE === 'worker' ? [HealthController] : [...controllers],
    providers: [{ provide: RUNTIME, useValue: runtime }],
  };
}
