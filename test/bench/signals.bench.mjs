import { fork } from 'node:child_process';
import { once } from 'node:events';
import { Agent, request } from 'node:http';
import { fileURLToPath } from 'node:url';
import { alternate, perSecond } from './alternate.mjs';
import { crew, demoOrder, durableDatabase } from './ground.mjs';
import { startServer } from './server-run.mjs';

export const name = 'signals';
export const unit = 'signals/s';
export const better = 'higher';
export const target = 0.08;
export const note =
  'JMF Status signals over HTTP, booked and committed, on 8 connections, against a bare HTTP server that parses the same bodies';

const COUNT = 240;
const JOBS = 8;
const JMF = 'application/vnd.cip4-jmf+xml';
const agent = new Agent({ keepAlive: true, maxSockets: 8 });

function post(url, body, type) {
  return new Promise((settle, fail) => {
    const sent = request(
      url,
      { agent, method: 'POST', headers: { 'content-type': type, 'content-length': Buffer.byteLength(body) } },
      (response) => {
        let text = '';
        response.on('data', (chunk) => {
          text += chunk;
        });
        response.on('end', () =>
          response.statusCode < 300 ? settle(text) : fail(new Error(`${response.statusCode} ${text}`)),
        );
      },
    );
    sent.once('error', fail);
    sent.end(body);
  });
}

const signal = (job, good) => `<?xml version="1.0" encoding="UTF-8"?>
<JMF xmlns="http://www.CIP4.org/JDFSchema_1_1" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance" SenderID="prepress-${job}" TimeStamp="2026-01-05T08:00:00Z" Version="1.9">
  <Signal ID="s${job}-${good}" Type="Status" xsi:type="SignalStatus">
    <DeviceInfo DeviceID="prepress" DeviceStatus="Running" Speed="5000" CounterUnit="plates">
      <JobPhase JobID="B-${job}" JobPartID="prepress" Status="InProgress" StartTime="2026-01-05T07:00:00Z" PhaseStartTime="2026-01-05T07:30:00Z" PhaseAmount="${good}" PhaseWaste="0" Amount="${good}" Waste="0" TotalAmount="100000" PercentCompleted="1" Speed="5000"/>
    </DeviceInfo>
  </Signal>
</JMF>`;

export async function run() {
  const database = await durableDatabase();
  const server = await startServer({ SIDELAY_DATABASE_URL: database.url, SIDELAY_DATA_DIR: database.folder });
  const bare = fork(fileURLToPath(new URL('parsing-server.mjs', import.meta.url)));
  try {
    const [{ port }] = await once(bare, 'message');
    // Its own workstation would finish the steps by itself: here a device that only reports takes them.
    await post(
      `${server.url}/api/v1/devices`,
      JSON.stringify({ id: 'prepress', kind: 'prepress', driver: 'bench' }),
      'application/json',
    );
    for (let job = 0; job < JOBS; job++)
      await post(
        `${server.url}/api/v1/tickets`,
        JSON.stringify({ ...demoOrder(), jobId: `B-${job}` }),
        'application/json',
      );
    let good = 0;
    const say = (url) =>
      perSecond(COUNT, () => crew(COUNT, 8, (n) => post(url, signal(n % JOBS, ++good), JMF)));
    return await alternate({
      ours: say(`${server.url}/jmf`),
      peer: say(`http://127.0.0.1:${port}/`),
      rounds: 3,
    });
  } finally {
    bare.disconnect();
    await server.stop();
    await database.stop();
    agent.destroy();
  }
}
