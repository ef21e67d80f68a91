import { Counter, collectDefaultMetrics, Gauge, Registry } from 'prom-client';

/** What Prometheus can ask for. */
export interface Metrics {
  readonly registry: Registry;
  readonly ticketsTakenIn: Counter<'intake' | 'outcome'>;
  readonly messages: Counter<'status'>;
  readonly liveStreams: Gauge;
}

/** The counters and gauges of this process, in a registry of their own (Prometheus). */
export function makeMetrics(): Metrics {
  const registry = new Registry();
  collectDefaultMetrics({ register: registry });
  return {
    registry,
    ticketsTakenIn: new Counter({
      name: 'sidelay_tickets_taken_in_total',
      help: 'Tickets taken in, by door and outcome',
      labelNames: ['intake', 'outcome'],
      registers: [registry],
    }),
    messages: new Counter({
      name: 'sidelay_messages_total',
      help: 'JMF documents received, by HTTP status of the answer',
      labelNames: ['status'],
      registers: [registry],
    }),
    liveStreams: new Gauge({
      name: 'sidelay_event_streams',
      help: 'Event streams that are open now',
      registers: [registry],
    }),
  };
}
