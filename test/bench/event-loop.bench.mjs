/** How long the serving thread is held while a body of 16 MB, made to cost much, is taken in: the longest wait for a light answer. */
import { performance } from 'node:perf_hooks';
import { durableDatabase } from './ground.mjs';
import { startServer } from './server-run.mjs';

export const name = 'event-loop';
export const unit = 'ms';
export const better = 'lower';
export const target = 10;
export const note =
  'longest wait for GET /health/live while 16 MB of siblings, dangling links or messages are taken in, against a loop of 20 million steps';

const BYTES = 16 * 1024 * 1024 - 1024;
const NAMESPACE = 'http://www.CIP4.org/JDFSchema_1_1';
const filled = (piece) => piece.repeat(Math.floor(BYTES / piece.length) - 20);
const ticket = (content) =>
  `<JDF xmlns="${NAMESPACE}" ID="n" JobPartID="p" JobID="b" Type="Product" Status="Waiting" Version="1.7">${content}</JDF>`;
const links = `<ComponentLink rRef="none" Usage="Input"${' '.repeat(50)}/>`;
const queries = '<Query ID="q" Type="KnownDevices"/>';

const bodies = () => [
  ['/api/v1/tickets', 'application/vnd.cip4-jdf+xml', ticket(filled('<Comment/>'))],
  [
    '/api/v1/tickets',
    'application/vnd.cip4-jdf+xml',
    ticket(`<ResourceLinkPool>${filled(links)}</ResourceLinkPool>`),
  ],
  [
    '/jmf',
    'application/vnd.cip4-jmf+xml',
    `<JMF xmlns="${NAMESPACE}" SenderID="b" TimeStamp="2026-01-05T08:00:00Z" Version="1.7">${filled(queries)}</JMF>`,
  ],
];

async function longestWait(url, [path, type, body]) {
  let over = false;
  const heavy = fetch(url + path, { method: 'POST', headers: { 'content-type': type }, body }).finally(() => {
    over = true;
  });
  let longest = 0;
  while (!over) {
    const begin = performance.now();
    await (await fetch(`${url}/health/live`)).arrayBuffer();
    longest = Math.max(longest, performance.now() - begin);
  }
  await (await heavy).arrayBuffer();
  return longest;
}

function loopMs() {
  const begin = performance.now();
  let state = 1;
  for (let step = 0; step < 20_000_000; step++) state = (Math.imul(state, 1_664_525) + 1_013_904_223) | 0;
  // Handed out, so that the engine cannot leave the loop away.
  return [performance.now() - begin, state][0];
}

export async function run() {
  const database = await durableDatabase();
  const server = await startServer({ SIDELAY_DATABASE_URL: database.url });
  try {
    const ours = [];
    const peer = [];
    for (const body of bodies()) {
      await longestWait(server.url, body);
      for (let round = 0; round < 3; round++) {
        ours.push(await longestWait(server.url, body));
        peer.push(loopMs());
      }
    }
    const median = (values) => values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)];
    return { ours: Math.max(...ours), peer: median(peer) };
  } finally {
    await server.stop();
    await database.stop();
  }
}
