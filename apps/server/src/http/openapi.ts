import { z } from 'zod';
import { benchCountsSchema, deviceSchema, sessionSchema, stockMoveSchema } from './bodies.js';

type Method = 'get' | 'post' | 'delete';

interface Route {
  readonly method: Method;
  readonly path: string;
  readonly summary: string;
  readonly query?: readonly string[];
  /** Media types of the body, or the schema of a JSON body. */
  readonly body?: readonly string[] | z.ZodType;
  /** Media type of the good answer; JSON where left out. */
  readonly answers?: string;
  readonly status?: string;
}

/** Every route, in one table; a test compares it with the routes that the server really has. */
export const routes: readonly Route[] = [
  {
    method: 'post',
    path: '/api/v1/tickets',
    summary: 'Take a ticket in',
    body: ['application/vnd.cip4-jdf+xml', 'application/json', 'multipart/related', 'application/zip'],
    status: '201',
  },
  {
    method: 'get',
    path: '/api/v1/tickets',
    summary: 'List tickets, newest first',
    query: ['status', 'q', 'cursor', 'limit'],
  },
  { method: 'get', path: '/api/v1/tickets/{id}', summary: 'One ticket with its steps' },
  {
    method: 'get',
    path: '/api/v1/tickets/{id}/document',
    summary:
      'The ticket as JDF, or XJDF if Accept says so, with its audits; Accept multipart/related or application/zip: with the files it came with; a rejected one as it came',
    answers: 'application/vnd.cip4-jdf+xml',
  },
  { method: 'get', path: '/api/v1/tickets/{id}/plan', summary: 'The plan document' },
  {
    method: 'get',
    path: '/api/v1/tickets/{id}/story',
    summary: 'Every event, sentence by sentence, each page in the order of time',
    query: ['cursor', 'limit'],
  },
  { method: 'get', path: '/api/v1/tickets/{id}/consumption', summary: 'Planned against used' },
  { method: 'post', path: '/api/v1/tickets/{id}/{verb}', summary: 'hold, resume or abort a ticket' },
  {
    method: 'post',
    path: '/api/v1/tickets/{id}/steps/{step}/{verb}',
    summary: 'hold, resume, abort a step; start, pause, finish bench work',
    body: benchCountsSchema,
  },
  { method: 'get', path: '/api/v1/devices', summary: 'All devices with their status' },
  {
    method: 'post',
    path: '/api/v1/devices',
    summary: 'Register a device',
    body: deviceSchema,
    status: '201',
  },
  { method: 'get', path: '/api/v1/devices/{id}', summary: 'One device' },
  { method: 'get', path: '/api/v1/devices/{id}/queue', summary: 'The queue of a device', query: ['limit'] },
  {
    method: 'get',
    path: '/api/v1/devices/{id}/phases',
    summary: 'What a device did, phase by phase',
    query: ['from', 'to'],
  },
  { method: 'get', path: '/api/v1/stock', summary: 'Stock by item and lot' },
  {
    method: 'get',
    path: '/api/v1/stock/moves',
    summary: 'Moves of stock',
    query: ['cursor', 'limit', 'item', 'ticket'],
  },
  {
    method: 'post',
    path: '/api/v1/stock/moves',
    summary: 'Book a move of stock',
    body: stockMoveSchema,
    status: '201',
  },
  {
    method: 'get',
    path: '/api/v1/events',
    summary: 'The event log as server-sent events',
    query: ['after', 'ticket', 'device', 'type'],
    answers: 'text/event-stream',
  },
  {
    method: 'post',
    path: '/api/v1/session',
    summary: 'Sign in at the console with a token',
    body: sessionSchema,
    status: '204',
  },
  { method: 'delete', path: '/api/v1/session', summary: 'Sign out', status: '204' },
  { method: 'get', path: '/api/openapi.json', summary: 'This description' },
  { method: 'get', path: '/api/asyncapi.json', summary: 'The description of the events' },
  {
    method: 'post',
    path: '/jmf',
    summary: 'JMF messages',
    body: ['application/vnd.cip4-jmf+xml', 'multipart/related'],
    answers: 'application/vnd.cip4-jmf+xml',
  },
  {
    method: 'get',
    path: '/jmf/tickets/{ticket}/{entry}',
    summary: 'The ticket of one queue entry, for the device that was given its address',
    answers: 'application/vnd.cip4-jdf+xml',
  },
  { method: 'get', path: '/health/live', summary: 'Whether the process lives' },
  { method: 'get', path: '/health/ready', summary: 'Whether it can serve, and why not' },
  { method: 'get', path: '/metrics', summary: 'Figures for Prometheus', answers: 'text/plain' },
];

/** OpenAPI 3.1, made from the table of routes and the schemas that the routes check with. */
export function openApiDocument(version: string): Record<string, unknown> {
  const paths: Record<string, Record<string, unknown>> = {};
  for (const route of routes) {
    paths[route.path] = { ...paths[route.path], [route.method]: operation(route) };
  }
  return {
    openapi: '3.1.0',
    info: { title: 'Sidelay', version, license: { name: 'Apache-2.0', identifier: 'Apache-2.0' } },
    paths,
    components: {
      securitySchemes: { token: { type: 'http', scheme: 'bearer' } },
      schemas: { Problem: problemSchema },
    },
    security: [{}, { token: [] }],
  };
}

function operation(route: Route): Record<string, unknown> {
  const inPath = [...route.path.matchAll(/\{(\w+)\}/g)].map(([, name]) => ({
    name,
    in: 'path',
    required: true,
    schema: { type: 'string' },
  }));
  const inQuery = (route.query ?? []).map((name) => ({ name, in: 'query', schema: { type: 'string' } }));
  const answer = {
    [route.answers ?? 'application/json']: {
      schema: route.answers === undefined ? { type: 'object' } : { type: 'string' },
    },
  };
  return {
    summary: route.summary,
    parameters: [...inPath, ...inQuery],
    ...(route.body === undefined ? {} : { requestBody: { content: bodyContent(route.body) } }),
    responses: {
      [route.status ?? '200']:
        route.status === '204' ? { description: 'Done' } : { description: 'Done', content: answer },
      default: {
        description: 'What is wrong, where, and how to mend it',
        content: { 'application/problem+json': { schema: { $ref: '#/components/schemas/Problem' } } },
      },
    },
  };
}

function bodyContent(body: readonly string[] | z.ZodType): Record<string, unknown> {
  if (body instanceof z.ZodType)
    return { 'application/json': { schema: z.toJSONSchema(body, { io: 'input' }) } };
  return Object.fromEntries(
    body.map((type) => [type, { schema: { type: type === 'application/json' ? 'object' : 'string' } }]),
  );
}

const problemSchema = {
  type: 'object',
  required: ['type', 'title', 'status', 'detail', 'instance', 'code'],
  properties: {
    type: { type: 'string' },
    title: { type: 'string' },
    status: { type: 'integer' },
    detail: { type: 'string' },
    instance: { type: 'string' },
    code: { type: 'string' },
    remedy: { type: 'string' },
    problems: { type: 'array', items: { type: 'object' } },
  },
};
