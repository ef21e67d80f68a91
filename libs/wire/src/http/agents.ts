import http from 'node:http';
import https from 'node:https';

/**
 * One pool of kept-alive connections for all devices: a press sends and gets a message every few seconds, and a new
 * connection for each would cost more than the message. Idle sockets do not keep the process alive (Node unrefs them).
 */
const settings = { keepAlive: true, maxSockets: 8, maxFreeSockets: 2, scheduling: 'lifo' } as const;

/** Connections that are kept open for the next message to the same host. */
export const agents = {
  'http:': new http.Agent(settings),
  'https:': new https.Agent(settings),
};

/** Closes kept connections when a server ends; they are opened again if somebody still sends. */
export function closeConnections(): void {
  agents['http:'].destroy();
  agents['https:'].destroy();
}
