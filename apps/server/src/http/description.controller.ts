import { Controller, Get, Inject } from '@nestjs/common';
import { RUNTIME, type Runtime } from '../runtime.js';
import { asyncApiDocument } from './asyncapi.js';
import { openApiDocument } from './openapi.js';

/** The descriptions of the outside interface, for people and for generated clients. */
@Controller('api')
export class DescriptionController {
  constructor(@Inject(RUNTIME) private readonly runtime: Runtime) {}

  @Get('openapi.json')
  openapi(): unknown {
    return openApiDocument(this.runtime.version);
  }

  @Get('asyncapi.json')
  asyncapi(): unknown {
    return asyncApiDocument(this.runtime.version);
  }
}
