import { hostileDocuments, hostileMessages } from '../kit/hostile-documents.js';
import { Hub } from '../kit/journey.js';

const MEGABYTES = 16;

/** Asks for one light answer after another until the heavy one is there; tells how many were served meanwhile. */
async function servedDuring<T>(heavy: Promise<T>, light: () => Promise<Response>): Promise<[T, number]> {
  let over = false;
  let served = 0;
  const ended = heavy.finally(() => {
    over = true;
  });
  while (!over) {
    const answer = await light();
    if (answer.status !== 200) throw new Error(`a light request was answered ${answer.status}`);
    await answer.arrayBuffer();
    if (!over) served += 1;
  }
  return [await ended, served];
}

describe('a body of 16 MB that is made to cost much', () => {
  let hub: Hub;
  const board = (): Promise<Response> => fetch(`${hub.server.url}/api/v1/tickets?limit=5`);
  const send = (path: string, type: string, body: string): Promise<Response> =>
    fetch(`${hub.server.url}${path}`, { method: 'POST', headers: { 'content-type': type }, body });

  beforeAll(async () => {
    hub = await Hub.open({ env: () => ({}) });
  }, 180_000);
  afterAll(() => hub.close());

  const documents = Object.entries(hostileDocuments(MEGABYTES));
  it.each(documents)(
    'as a ticket is refused with its reasons and kept, while others are served: %s',
    async (_what, body) => {
      const heavy = send('/api/v1/tickets', 'application/vnd.cip4-jdf+xml', body);
      const [answer, served] = await servedDuring(heavy, board);
      const refusal = (await answer.json()) as { problems: { code: string; hint: string | null }[] };
      expect([answer.status, refusal.problems.every(({ hint }) => hint !== null)]).toEqual([422, true]);
      // One answer would come by chance; a thread that is held gives none until it is free.
      expect(served).toBeGreaterThan(1);
    },
    120_000,
  );

  it('is kept with the others, rejected, each with its reasons', async () => {
    const list = (await (
      await fetch(`${hub.server.url}/api/v1/tickets?status=Rejected&limit=50`)
    ).json()) as {
      items: unknown[];
    };
    expect(list.items).toHaveLength(documents.length);
  });

  it.each(Object.entries(hostileMessages(MEGABYTES)))(
    'as a message is refused, while others are served: %s',
    async (_what, body) => {
      const heavy = send('/jmf', 'application/vnd.cip4-jmf+xml', body);
      const [answer, served] = await servedDuring(heavy, board);
      expect([answer.status, /ReturnCode="(\d+)"/.exec(await answer.text())?.[1]]).toEqual([400, '3']);
      expect(served).toBeGreaterThan(1);
    },
    120_000,
  );
});
