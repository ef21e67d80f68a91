/**
 * Names of the events on the live stream. A browser hears only names it has asked for, so the list must hold all of
 * them; test/browser/event-names.spec.ts compares it with the server's own table.
 */
export const eventNames = [
  'ticket.accepted',
  'ticket.rejected',
  'ticket.statusChanged',
  'ticket.held',
  'ticket.resumed',
  'ticket.aborted',
  'step.queued',
  'step.delivered',
  'step.deferred',
  'step.refused',
  'step.statusChanged',
  'step.counted',
  'step.held',
  'step.resumed',
  'step.aborted',
  'step.returned',
  'resource.available',
  'stock.moved',
  'stock.short',
  'device.registered',
  'device.statusChanged',
  'device.silent',
  'device.heard',
  'notification.raised',
  'clock.set',
] as const;
