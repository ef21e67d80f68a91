import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { messagesIn } from '../../../../test/kit/plant-hall.js';
import { Hub, until } from '../../../../test/kit/plant-hub.js';
import { printing } from '../../../../test/kit/plant-tickets.js';
import { JDF_TYPE, JMF_TYPE } from '../device/media-types.js';
import { writeMultipart } from '../package/multipart.js';
import { runDevice } from './run-device.js';
import { type RunningPlant, runPlant } from './run-plant.js';

const PLANT_START = Date.UTC(2026, 2, 2, 8);

/** A plant second takes as long as the test can bear: an hour passes in a second. */
const fast = () => ({ plantStart: PLANT_START, realStart: Date.now(), factor: 3600 });

const press = { id: 'press-1', kind: 'press', name: 'First press' } as const;

function post(url: string, body: string, contentType = JMF_TYPE) {
  return fetch(url, { method: 'POST', body, headers: { 'content-type': contentType, connection: 'close' } });
}

function submission(ticket: string, returnJmf: string) {
  const jmf = `<JMF xmlns="http://www.CIP4.org/JDFSchema_1_1" SenderID="hub" TimeStamp="2026-03-02T08:00:00Z" Version="1.9"><Command ID="c" Type="SubmitQueueEntry"><QueueSubmissionParams URL="cid:t@hub" ReturnJMF="${returnJmf}"/></Command></JMF>`;
  return writeMultipart(
    [
      { contentType: JMF_TYPE, contentId: null, bytes: Buffer.from(jmf) },
      { contentType: JDF_TYPE, contentId: 't@hub', bytes: Buffer.from(ticket) },
    ],
    'b',
  );
}

const query =
  '<JMF xmlns="http://www.CIP4.org/JDFSchema_1_1" SenderID="hub" TimeStamp="2026-03-02T08:00:00Z" Version="1.9"><Query ID="q" Type="Status"/></JMF>';

describe('a plant over HTTP', () => {
  const folder = mkdtempSync(join(tmpdir(), 'plant-'));
  let hub: Hub;
  let plants: { stop(): Promise<void> }[] = [];
  const open = <T extends { stop(): Promise<void> }>(plant: T): T => {
    plants.push(plant);
    return plant;
  };

  beforeEach(async () => {
    hub = await new Hub().open();
    hub.clock = fast();
  });

  afterEach(async () => {
    await Promise.all(plants.map((plant) => plant.stop()));
    plants = [];
    await hub.close();
  });

  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  it('registers every device, takes the plant clock of the hub and shows its token', async () => {
    const folder2 = { id: 'folder-1', kind: 'folder', name: 'Folder' } as const;
    const plant = open(
      await runPlant({ hub: hub.url, devices: [press, folder2], seed: 1, token: 'secret-1' }),
    );
    await until(() => hub.jmf.length >= 2);
    expect([...hub.devices.values()]).toMatchObject([
      { kind: 'press', name: 'First press', driver: 'jmf', url: plant.urls['press-1'] },
      { kind: 'folder', driver: 'jmf', url: plant.urls['folder-1'] },
    ]);
    expect(new Set(hub.heard.map(({ authorization }) => authorization))).toEqual(
      new Set(['Bearer secret-1']),
    );
    expect(hub.jmf[0]).toMatch(/DeviceStatus="Idle"/);
    expect(hub.jmf[0]).toMatch(/TimeStamp="2026-03-02T0[89]/);
  });

  it('runs a job from the package to the audited ticket', async () => {
    const device = open(await runDevice({ ...press, hub: hub.url, seed: 2 }));
    await until(() => hub.jmf.length > 0);
    const pack = submission(printing(), `${hub.url}/jmf`);
    const answer = await post(device.url, pack.body, pack.contentType);
    expect(messagesIn(await answer.text())[0]).toMatchObject({
      kind: 'ResponseSubmitQueueEntry',
      returnCode: 0,
    });
    await until(() => hub.heard.some(({ contentType }) => contentType.startsWith('multipart')));
    expect(hub.jmf.some((body) => /Status="Completed".*Amount="3500"/s.test(body))).toBe(true);
  });

  it('lives through the end of the hub: says later what it had to say, to one that knows it again', async () => {
    const device = open(await runDevice({ ...press, hub: hub.url, seed: 3 }));
    await until(() => hub.jmf.length > 0);
    const pack = submission(printing(), `${hub.url}/jmf`);
    await post(device.url, pack.body, pack.contentType);
    await until(() => hub.jmf.some((body) => body.includes('Status="Setup"')));
    await hub.close();
    await new Promise((resolve) => setTimeout(resolve, 300));
    hub.devices.clear();
    await hub.open();
    await until(() => hub.heard.some(({ contentType }) => contentType.startsWith('multipart')));
    expect(hub.devices.has('press-1')).toBe(true);
    const phases = hub.jmf.flatMap((body) => {
      const message = body.startsWith('<') ? messagesIn(body)[0] : undefined;
      return message?.kind === 'SignalStatus' ? (message.body.devices?.[0]?.jobPhases ?? []) : [];
    });
    const last = new Map(phases.map((phase) => [phase.phaseStartTime, phase.phaseAmount ?? 0]));
    expect([...last.values()].reduce((sum, amount) => sum + amount, 0)).toBe(3500);
  });

  it('registers again when the hub says that it does not know the device', async () => {
    open(await runDevice({ ...press, hub: hub.url, seed: 4 }));
    await until(() => hub.jmf.length > 0);
    hub.devices.clear();
    await until(() => hub.devices.has('press-1'));
    const at = hub.jmf.length;
    await until(() => hub.jmf.length > at);
    expect(hub.devices.has('press-1')).toBe(true);
  });

  it('continues from its state file in another process, with another port', async () => {
    const options = { hub: hub.url, devices: [press], seed: 5, stateDir: folder };
    const first: RunningPlant = await runPlant(options);
    await until(() => hub.jmf.length > 0);
    const pack = submission(printing({ total: 'PT3H' }), `${hub.url}/jmf`);
    await post(first.urls['press-1']!, pack.body, pack.contentType);
    await until(() => hub.jmf.some((body) => body.includes('Status="InProgress"')));
    await first.stop();
    const kept = JSON.parse(readFileSync(join(folder, 'press-1.json'), 'utf8')) as {
      device: { entries: unknown[] };
    };
    expect(kept.device.entries).toHaveLength(1);
    const second = open(await runPlant(options));
    await until(() => hub.heard.some(({ contentType }) => contentType.startsWith('multipart')));
    expect(second.urls['press-1']).not.toBe(first.urls['press-1']);
    expect(hub.devices.get('press-1')!.url).toBe(second.urls['press-1']);
  });

  it('begins when the hub comes, and answers 503 until then', async () => {
    await hub.close();
    const device = open(await runDevice({ ...press, hub: hub.url, seed: 6 }));
    expect((await post(device.url, query)).status).toBe(503);
    await hub.open();
    await until(() => hub.jmf.length > 0);
    expect((await post(device.url, query)).status).toBe(200);
  });

  it('goes by its own clock where the hub names none', async () => {
    hub.clock = null;
    open(await runDevice({ ...press, hub: hub.url, seed: 7, speed: 600 }));
    await until(() => hub.jmf.length >= 3);
    const [first, second] = hub.jmf.slice(-2).map((body) => messagesIn(body)[0]!.time!);
    expect(second! - first!).toBeGreaterThanOrEqual(60_000);
  });

  it('accepts a connection and says nothing when it is silent', async () => {
    const device = open(await runDevice({ ...press, hub: hub.url, seed: 8, faults: ['silent'] }));
    await until(() => hub.devices.has('press-1'));
    await until(() => hub.jmf.length > 0);
    const impatient = fetch(device.url, {
      method: 'POST',
      body: query,
      headers: { 'content-type': JMF_TYPE },
      signal: AbortSignal.timeout(300),
    });
    await expect(impatient).rejects.toThrow(/timeout|aborted/i);
  });

  it('refuses what is no POST of JMF to its address', async () => {
    const device = open(await runDevice({ ...press, hub: hub.url, seed: 9 }));
    await until(() => hub.jmf.length > 0);
    expect((await fetch(device.url)).status).toBe(405);
    expect((await post(device.url.replace('/jmf', '/'), query)).status).toBe(404);
    expect((await post(device.url, query, 'text/plain')).status).toBe(415);
  });

  it('refuses to start with a wrong device, a doubled one or a port that is taken', async () => {
    const start = (...devices: object[]) => runPlant({ hub: hub.url, devices: devices as never });
    await expect(start({ ...press, kind: 'oven' })).rejects.toMatchObject({ code: 'SETTING' });
    await expect(start(press, press)).rejects.toThrow(/Two devices/);
    await expect(start({ ...press, faults: ['explode'] })).rejects.toThrow(/NAME@N/);
    const taken = createServer();
    await new Promise<void>((resolve) => taken.listen(0, '127.0.0.1', resolve));
    const { port } = taken.address() as { port: number };
    await expect(start({ ...press, port })).rejects.toThrow(/cannot be listened on/);
    await new Promise((resolve) => taken.close(resolve));
  });
});
