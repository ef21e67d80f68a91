import type { Browser, Page } from 'playwright-core';
import { axeFindings, keepPicture, openBrowser, openPage, textOf } from './open-browser.js';
import { type RecordedServer, startRecordedServer } from './recorded-server.js';

let browser: Browser;
let server: RecordedServer;
let page: Page;
let close: () => Promise<void>;
let faults: string[];

beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(async () => {
  await browser?.close();
});
beforeEach(async () => {
  server = await startRecordedServer();
  ({ page, faults, close } = await openPage(browser, 'tablet'));
});
afterEach(async () => {
  await close();
  await server.close();
  expect(faults).toEqual([]);
});

const job = async (id: string): Promise<void> => {
  await page.goto(`${server.url}/#/jobs/${id}`);
  await page.locator('.step').first().waitFor();
};

describe('a job', () => {
  it('is told in sentences, a run of counts by its last only until all are wanted', async () => {
    await job('0195a001');
    await page.locator('.story li').first().waitFor();
    const text = await textOf(page.locator('.story'));
    expect(text).toContain('came in by demo');
    expect(text).not.toContain('counts 100 sheets');
    expect(text).toContain('counts 250 sheets');
    await page.getByLabel('Tell every count and word of a device too').check();
    expect(await textOf(page.locator('.story'))).toContain('counts 100 sheets');
  });

  it('shows front and back of its sheet with all sixteen folios', async () => {
    await job('0195a001');
    await page.locator('.side-drawing').nth(1).waitFor();
    const folios = await page.locator('.folio').allTextContents();
    expect(folios.map(Number).sort((a, b) => a - b)).toEqual([...Array(16).keys()].map((n) => n + 1));
    const front = await page.locator('.side-drawing').first().getAttribute('aria-label');
    expect(front).toContain('4, 13, 16, 1, 5, 12, 9, 8');
  });

  it('sets what was used against what was planned', async () => {
    await job('0195a001');
    const row = page.locator('tr', { hasText: 'silk-115-full-sg' });
    expect(await textOf(row)).toContain('436 sheets 441 sheets 125 sheets +5 sheets');
  });

  it('shows the usual caution at a step of folder and stitcher, and none at what is done', async () => {
    await job('0195a001');
    expect(await textOf(page.locator('[data-step="fold-body-1"] .caution'))).toContain(
      'manual and local rules',
    );
    expect(await page.locator('[data-step="stitch"] .caution').count()).toBe(1);
    expect(await page.locator('[data-step="cut-body-1"] .caution').count()).toBe(0);
  });

  it('is held by its button, which then resumes', async () => {
    await job('0195a001');
    await page.getByRole('button', { name: 'Hold the job' }).click();
    await page.getByRole('button', { name: 'Resume the job' }).waitFor();
    expect(server.received.map(({ path }) => path)).toEqual(['/api/v1/tickets/0195a001/hold']);
  });

  it('is aborted only after a question, which may be answered with no', async () => {
    await job('0195a001');
    await page.getByRole('button', { name: 'Abort the job' }).click();
    await page.getByRole('heading', { name: 'Abort the job?' }).waitFor();
    expect(await axeFindings(page)).toEqual([]);
    await keepPicture(page, 'abort-question');
    await page.getByRole('button', { name: 'Keep it' }).click();
    expect(server.received).toEqual([]);
    await page.getByRole('button', { name: 'Abort the job' }).click();
    const answered = page.waitForResponse(/abort$/);
    await page.getByRole('button', { name: 'Yes, abort' }).click();
    await answered;
    expect(server.received.map(({ path }) => path)).toEqual(['/api/v1/tickets/0195a001/abort']);
  });

  it('offers bench work at a bench only, and says why the server will not have it', async () => {
    await job('0195a001');
    expect(await page.locator('.bench').count()).toBe(1);
    await page.getByRole('button', { name: 'Start step pack' }).click();
    await page.getByText('still waits for what it needs').waitFor();
  });

  it('counts good and waste at a bench that has begun', async () => {
    const ticket = server.tickets.get('0195a001')!;
    const steps = (ticket.steps as Record<string, unknown>[]).map((step) =>
      step.id === 'pack' ? { ...step, status: 'InProgress' } : step,
    );
    server.tickets.set('0195a001', { ...ticket, steps });
    await job('0195a001');
    await page.getByLabel('Good since the last count').fill('120');
    await page.getByLabel('Waste since the last count').fill('2');
    const answered = page.waitForResponse(/finish$/);
    await page.getByRole('button', { name: 'Finish step pack' }).click();
    await answered;
    const [sent] = server.received;
    expect(sent?.path).toBe('/api/v1/tickets/0195a001/steps/pack/finish');
    expect(JSON.parse(sent?.body ?? '')).toEqual({ good: 120, waste: 2 });
  });

  it('that was refused shows its reasons with line, path and remedy', async () => {
    await page.goto(`${server.url}/#/jobs/0195a0ff`);
    await page.locator('.problems').waitFor();
    const text = await textOf(page.locator('.problems'));
    expect(text).toContain('Media_7');
    expect(text).toContain('line 41');
    expect(text).toContain('Add the resource');
    expect(await page.locator('.steps').count()).toBe(0);
  });

  it('that does not exist is said to be missing', async () => {
    await page.goto(`${server.url}/#/jobs/none`);
    await page.getByText('There is no ticket none.').waitFor();
  });
});

describe('a new job', () => {
  const problem = (path: string, message: string, hint: string | null) => ({
    severity: 'error',
    code: 'ORDER_INVALID',
    line: null,
    path,
    message,
    hint,
  });

  const write = async (): Promise<void> => {
    await page.goto(`${server.url}/#/new`);
    await page.getByLabel('Job number').fill('D2-01');
    await page.getByLabel('Name', { exact: false }).nth(0).waitFor();
    await page.locator('#order-name').fill('Programme: The Salt Harbour');
    await page.locator('#order-quantity').fill('300');
    await page.locator('#order-size').selectOption('A4');
    await page.locator('#order-pages').fill('16');
    await page.locator('#order-stock').fill('silk-115-full-sg');
  };

  // Field names are those of the JSON order.
  it('is sent as a JSON order', async () => {
    server.orderAnswer = { status: 201, body: server.tickets.get('0195a001') };
    await write();
    await page.getByRole('button', { name: 'Send the order' }).click();
    await page.getByRole('link', { name: 'Open D1-01' }).waitFor();
    const inks = ['Black', 'Cyan', 'Magenta', 'Yellow'];
    expect(JSON.parse(server.received[0]?.body ?? '')).toEqual({
      jobId: 'D2-01',
      name: 'Programme: The Salt Harbour',
      quantity: 300,
      trimWidthMm: 210,
      trimHeightMm: 297,
      pages: 16,
      binding: 'SaddleStitch',
      stock: 'silk-115-full-sg',
      inksFront: inks,
      inksBack: inks,
    });
  });

  it('that cannot be shows each problem in the list and beside its field, and leads there', async () => {
    server.orderAnswer = {
      status: 422,
      location: '/api/v1/tickets/0195a0ff',
      body: {
        title: 'The order cannot be made',
        status: 422,
        detail: 'x',
        code: 'ORDER_INVALID',
        problems: [
          problem('/pages', '18 pages cannot be saddle-stitched.', 'Make it 16 or 20.'),
          problem('/stock', 'The plant has no paper silk-115.', 'Possible: silk-115-full-sg.'),
        ],
      },
    };
    await write();
    await page.getByRole('button', { name: 'Send the order' }).click();
    await page.getByRole('heading', { name: '2 things stand in the way' }).waitFor();
    expect(await textOf(page.locator('.problems'))).toContain('Make it 16 or 20.');
    const pages = page.locator('#order-pages');
    expect(await pages.getAttribute('aria-invalid')).toBe('true');
    expect(await textOf(page.locator('.field', { has: pages }))).toContain(
      '18 pages cannot be saddle-stitched.',
    );
    expect(await axeFindings(page)).toEqual([]);
    await keepPicture(page, 'new-job-problems');
    await page.locator('.problems').getByRole('button', { name: 'Paper' }).click();
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('order-stock');
  });

  it('may come as a file, sent under the media type of the standard', async () => {
    server.orderAnswer = { status: 201, body: server.tickets.get('0195a001') };
    await page.goto(`${server.url}/#/new`);
    await page.locator('#file').setInputFiles({
      name: 'brochure.jdf',
      mimeType: '',
      buffer: Buffer.from('<JDF xmlns="http://www.CIP4.org/JDFSchema_1_1"/>'),
    });
    await page.getByRole('link', { name: 'Open D1-01' }).waitFor();
    expect(server.received[0]?.type).toBe('application/vnd.cip4-jdf+xml');
    expect(server.received[0]?.body).toContain('<JDF');
  });
});
