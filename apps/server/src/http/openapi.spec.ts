import 'reflect-metadata';
import { RequestMethod } from '@nestjs/common';
import { eventTypes } from '#libs/flow';
import { asyncApiDocument } from './asyncapi.js';
import { openApiDocument, routes } from './openapi.js';
import { controllers } from './server-module.js';

/** Routes as Nest knows them, in OpenAPI's way of writing. */
function served(): string[] {
  return controllers.flatMap((controller) => {
    const base = Reflect.getMetadata('path', controller) as string;
    const names = Object.getOwnPropertyNames(controller.prototype) as (keyof typeof controller.prototype)[];
    return names.flatMap((name) => {
      const handler = controller.prototype[name] as object;
      const path = Reflect.getMetadata('path', handler) as string | undefined;
      if (name === 'constructor' || path === undefined) return [];
      const method = RequestMethod[Reflect.getMetadata('method', handler) as number]!.toLowerCase();
      const whole = `/${base}/${path}`.replace(/\/+/g, '/').replace(/(.)\/$/, '$1');
      return [`${method} ${whole.replace(/:(\w+)/g, '{$1}')}`];
    });
  });
}

describe('the description of the interface', () => {
  it('has every route that is served, and no other', () => {
    expect(routes.map(({ method, path }) => `${method} ${path}`).sort()).toEqual(served().sort());
  });

  it('is OpenAPI 3.1 with a problem document for everything that goes wrong', () => {
    const document = openApiDocument('1.2.3') as {
      openapi: string;
      paths: Record<string, Record<string, { responses: Record<string, unknown> }>>;
    };
    expect(document.openapi).toBe('3.1.0');
    for (const methods of Object.values(document.paths)) {
      for (const { responses } of Object.values(methods)) expect(responses.default).toBeDefined();
    }
  });

  it('describes every type of event there is', () => {
    const { components } = asyncApiDocument('1.2.3') as {
      components: { messages: Record<string, { name: string }> };
    };
    expect(Object.values(components.messages).map(({ name }) => name)).toEqual(Object.keys(eventTypes));
  });
});
