import 'reflect-metadata';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { NestFactory } from '@nestjs/core';
import { FastifyAdapter, type NestFastifyApplication } from '@nestjs/platform-fastify';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { Fault } from '#libs/kernel';
import { accessHook } from '../access/access-hook.js';
import type { Runtime } from '../runtime.js';
import { answerAndLog, ProblemFilter } from './problem.filter.js';
import { serverModule } from './server-module.js';

/** Scripts and styles only from here; nothing may frame these pages (OWASP ASVS 5.0 V3.4). */
const HEADERS: Readonly<Record<string, string>> = {
  'content-security-policy':
    "default-src 'self'; img-src 'self' data:; object-src 'none'; base-uri 'none'; form-action 'self'; frame-ancestors 'none'",
  'x-content-type-options': 'nosniff',
  'referrer-policy': 'no-referrer',
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-resource-policy': 'same-origin',
};

export interface WebServer {
  readonly url: string;
  close(): Promise<void>;
}

/** Serves the hub's HTTP side. `consoleDir` holds the built console; without it `/` says where to find the interface. */
export async function serveWeb(runtime: Runtime, consoleDir: string): Promise<WebServer> {
  const { settings, ports } = runtime;
  const tls =
    settings.TLS_CERT !== undefined && settings.TLS_KEY !== undefined
      ? {
          https: {
            cert: readFileSync(settings.TLS_CERT),
            key: readFileSync(settings.TLS_KEY),
            ...(settings.CLIENT_CA === undefined
              ? {}
              : { ca: readFileSync(settings.CLIENT_CA), requestCert: true, rejectUnauthorized: true }),
          },
        }
      : {};
  const adapter = new FastifyAdapter({
    bodyLimit: Math.floor(settings.BODY_LIMIT_MB * 1024 * 1024),
    forceCloseConnections: true,
    ...tls,
  } as ConstructorParameters<typeof FastifyAdapter>[0]);
  const app = await NestFactory.create<NestFastifyApplication>(serverModule(runtime), adapter, {
    bodyParser: false,
    logger: false,
    abortOnError: false,
  });
  const fastify = adapter.getInstance();
  fastify.removeAllContentTypeParsers();
  // Every body is bytes: tickets are kept byte for byte, and each route reads its own kind strictly.
  fastify.addContentTypeParser('*', { parseAs: 'buffer' }, (_request, body, done) => done(null, body));
  fastify.addHook('onRequest', async (_request, reply) => {
    void reply.headers(HEADERS);
  });
  const access = accessHook(runtime);
  fastify.addHook('onRequest', async (request, reply) => {
    try {
      await access(request as FastifyRequest);
    } catch (cause) {
      answerAndLog(cause, request as FastifyRequest, reply as FastifyReply, ports);
      return reply;
    }
  });
  app.useGlobalFilters(new ProblemFilter(ports));
  if (settings.ROLE !== 'worker' && existsSync(join(consoleDir, 'index.html'))) {
    app.useStaticAssets({ root: consoleDir, prefix: '/', index: ['index.html'], cacheControl: false });
  }
  try {
    await app.listen(settings.PORT, settings.HOST);
  } catch (cause) {
    const { code } = cause as NodeJS.ErrnoException;
    if (code !== 'EADDRINUSE' && code !== 'EACCES' && code !== 'EADDRNOTAVAIL') throw cause;
    const why = code === 'EADDRINUSE' ? 'something else listens there already' : 'it may not be used';
    throw new Fault('SETTING', `SIDELAY_HOST ${settings.HOST}, SIDELAY_PORT ${settings.PORT}: ${why}.`, {
      cause,
    });
  }
  const address = fastify.server.address();
  const port = typeof address === 'object' && address !== null ? address.port : settings.PORT;
  const name = settings.HOST.includes(':') ? `[${settings.HOST}]` : settings.HOST;
  return {
    url: `${settings.TLS_CERT === undefined ? 'http' : 'https'}://${name}:${port}`,
    close: () => app.close(),
  };
}
