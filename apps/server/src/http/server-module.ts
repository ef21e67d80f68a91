import { type DynamicModule, Module } from '@nestjs/common';
import { RUNTIME, type Runtime } from '../runtime.js';
import { DescriptionController } from './description.controller.js';
import { DevicesController } from './devices.controller.js';
import { EventsController } from './events.controller.js';
import { HealthController } from './health.controller.js';
import { JmfController } from './jmf.controller.js';
import { SessionController } from './session.controller.js';
import { StockController } from './stock.controller.js';
import { TicketsController } from './tickets.controller.js';

@Module({})
class ServerModule {}

/** What the hub answers over HTTP. A worker has only the health routes. */
export function serverModule(runtime: Runtime): DynamicModule {
  const hub = [
    DescriptionController,
    DevicesController,
    EventsController,
    JmfController,
    SessionController,
    StockController,
    TicketsController,
  ];
  return {
    module: ServerModule,
    controllers: runtime.settings.ROLE === 'worker' ? [HealthController] : [HealthController, ...hub],
    providers: [{ provide: RUNTIME, useValue: runtime }],
  };
}
