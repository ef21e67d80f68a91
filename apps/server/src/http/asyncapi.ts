import { eventTypes } from '#libs/flow';

/** AsyncAPI 3.0: the event stream, with one message for each row of the table of event types. */
export function asyncApiDocument(version: string): Record<string, unknown> {
  const messages = Object.fromEntries(
    Object.entries(eventTypes).map(([type, summary]) => [
      type.replace('.', '-'),
      {
        name: type,
        summary,
        contentType: 'application/cloudevents+json',
        payload: {
          allOf: [{ $ref: '#/components/schemas/CloudEvent' }, { properties: { type: { const: type } } }],
        },
      },
    ]),
  );
  const references = Object.fromEntries(
    Object.keys(messages).map((key) => [key, { $ref: `#/components/messages/${key}` }]),
  );
  return {
    asyncapi: '3.0.0',
    info: { title: 'Sidelay events', version, license: { name: 'Apache-2.0' } },
    defaultContentType: 'application/json',
    channels: {
      events: {
        address: '/api/v1/events',
        description:
          'Server-sent events. The SSE id is the position in the log; Last-Event-ID or ?after= resumes without loss or repeat.',
        messages: references,
      },
    },
    operations: { follow: { action: 'send', channel: { $ref: '#/channels/events' } } },
    components: {
      messages,
      schemas: {
        CloudEvent: {
          type: 'object',
          required: ['specversion', 'id', 'source', 'type', 'time', 'data'],
          properties: {
            specversion: { const: '1.0' },
            id: {
              type: 'string',
              pattern: '^[0-9]+$',
              description: 'Position in the log, strictly increasing',
            },
            source: { type: 'string' },
            type: { enum: Object.keys(eventTypes) },
            time: { type: 'string', format: 'date-time', description: 'Plant time' },
            subject: { type: 'string' },
            datacontenttype: { const: 'application/json' },
            data: {
              type: 'object',
              properties: {
                ticket: { type: ['string', 'null'] },
                step: { type: ['string', 'null'] },
                device: { type: ['string', 'null'] },
              },
            },
          },
        },
      },
    },
  };
}
