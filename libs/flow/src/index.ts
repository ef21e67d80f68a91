export * from './ports.js';
export * from './state/device.js';
export * from './state/event.js';
export * from './state/stock.js';
export * from './state/ticket.js';
