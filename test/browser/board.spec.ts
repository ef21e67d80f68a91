import type { Browser, Page } from 'playwright-core';
import {
  axeFindings,
  keepPicture,
  openBrowser,
  openPage,
  type SizeName,
  sizes,
  textOf,
} from './open-browser.js';
import { type RecordedServer, startRecordedServer } from './recorded-server.js';

let browser: Browser;
let server: RecordedServer;

beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(async () => {
  await browser?.close();
});
beforeEach(async () => {
  server = await startRecordedServer();
});
afterEach(async () => {
  await server.close();
});

async function onPage(
  size: SizeName,
  theme: 'light' | 'dark',
  work: (page: Page) => Promise<void>,
): Promise<void> {
  const { page, faults, close } = await openPage(browser, size, theme);
  try {
    await work(page);
    expect(faults).toEqual([]);
  } finally {
    await close();
  }
}

const board = async (page: Page): Promise<void> => {
  await page.goto(`${server.url}/`);
  await page.locator('[data-ticket="0195a001"]').waitFor();
  await page.locator('.rejected').waitFor();
  await page.locator('[data-link="live"]').waitFor();
};

const looks = (Object.keys(sizes) as SizeName[]).flatMap((size) => [
  [size, 'light'] as const,
  [size, 'dark'] as const,
]);

/** Nothing may stick out: a page that scrolls sideways is read by nobody in a hall. */
const sticksOut = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

describe.each(looks)('on a %s in %s', (size, theme) => {
  // Accessibility: axe-core's own rules for WCAG 2.2 A and AA.
  it('every screen is free of accessibility faults and fits the width', async () => {
    await onPage(size, theme, async (page) => {
      await board(page);
      expect(await axeFindings(page)).toEqual([]);
      expect(await sticksOut(page)).toBe(0);
      await keepPicture(page, `board-${size}-${theme}`);

      await page.goto(`${server.url}/#/jobs/0195a001`);
      await page.locator('.side-drawing').first().waitFor();
      await page.locator('.story li').first().waitFor();
      expect(await axeFindings(page)).toEqual([]);
      expect(await sticksOut(page)).toBe(0);
      await keepPicture(page, `job-${size}-${theme}`);

      await page.goto(`${server.url}/#/new`);
      await page.locator('form.order').waitFor();
      expect(await axeFindings(page)).toEqual([]);
      expect(await sticksOut(page)).toBe(0);
      await keepPicture(page, `new-job-${size}-${theme}`);
    });
  });

  it('an answer 401 leads to the sign-in, and a token back to the board', async () => {
    server.token = 'sl_a-token-for-a-person';
    await onPage(size, theme, async (page) => {
      await page.goto(`${server.url}/`);
      await page.locator('#token').waitFor();
      expect(await axeFindings(page)).toEqual([]);
      await keepPicture(page, `sign-in-${size}-${theme}`);

      await page.fill('#token', 'sl_not-this-one');
      await page.click('form.gate button');
      await page.getByText('does not know this token').waitFor();
      await page.fill('#token', 'sl_a-token-for-a-person');
      await page.keyboard.press('Enter');
      await page.locator('[data-ticket="0195a001"]').waitFor();
      expect(await page.getByRole('button', { name: 'Sign out' }).count()).toBe(1);
    });
  });
});

describe('the board', () => {
  it('tells of each job where it is, since when and who said so', async () => {
    await onPage('desktop', 'light', async (page) => {
      await board(page);
      const strip = page.locator('.strip[data-ticket="0195a001"]');
      const text = await textOf(strip.locator('.strip-head'));
      expect(text).toContain('Programme: The Salt Harbour');
      expect(text).toContain('running');
      expect(text).toContain('Fold on Large folder since 10:23 (19 min), the machine says');
      expect(text).toContain('due 12:52');
    });
  });

  it('says of a waiting job in words what it waits for, and of a late one by how much', async () => {
    await onPage('desktop', 'light', async (page) => {
      await board(page);
      const waiting = page.locator('.strip[data-ticket="0195a003"]');
      expect(await waiting.locator('.gap-reason').textContent()).toContain('in the queue of press-full');
      const late = page.locator('.strip[data-ticket="0195a002"]');
      expect(await late.locator('.late-word').textContent()).toMatch(/^late by/);
    });
  });

  it('says of a silent device that it is silent, and why', async () => {
    await onPage('phone', 'light', async (page) => {
      await board(page);
      const station = page.locator('[data-device="stitcher"]');
      expect(await textOf(station)).toContain('silent');
      expect(await textOf(station)).toContain('nothing answered at its address for 9 min');
    });
  });

  it('names a refused document with its first reason and place', async () => {
    await onPage('tablet', 'light', async (page) => {
      await board(page);
      const text = await textOf(page.locator('.rejected'));
      expect(text).toContain('flyer-final-2.jdf');
      expect(text).toContain('Media_7');
      expect(text).toContain('/JDF/ResourceLinkPool/MediaLink');
    });
  });

  it('changes with an event from the stream, without being loaded again', async () => {
    await onPage('desktop', 'light', async (page) => {
      await board(page);
      await page.evaluate(() => {
        document.body.dataset.same = 'yes';
      });
      const job = server.tickets.get('0195a001')!;
      const steps = (job.steps as Record<string, unknown>[]).map((step) =>
        step.id === 'fold-body-1' ? { ...step, status: 'Stopped', statusDetails: 'Paper jam' } : step,
      );
      server.tickets.set('0195a001', { ...job, steps, revision: 8 });
      server.emit('step.statusChanged', { ticket: '0195a001', step: 'fold-body-1', device: 'folder-large' });
      await page.locator('.strip[data-ticket="0195a001"] [data-state="Stopped"]').waitFor();
      expect(await page.evaluate(() => document.body.dataset.same)).toBe('yes');
    });
  });

  it('asks once for a ticket, however many events of it come in a burst', async () => {
    await onPage('desktop', 'light', async (page) => {
      await board(page);
      const asked: string[] = [];
      page.on('request', (request) => asked.push(new URL(request.url()).pathname));
      const answered = page.waitForResponse(/tickets\/0195a002$/);
      for (let n = 0; n < 40; n += 1) server.emit('step.counted', { ticket: '0195a002', device: null });
      await answered;
      expect(asked.filter((path) => path.endsWith('/0195a002'))).toHaveLength(1);
    });
  });

  it('says loudly that the stream is cut, and resumes behind the last event by itself', async () => {
    await onPage('phone', 'light', async (page) => {
      await board(page);
      const answered = page.waitForResponse(/tickets\/0195a002$/);
      server.emit('step.counted', { ticket: '0195a002', device: null });
      await answered;
      server.cut(true);
      await page.getByText('The live stream is cut').waitFor();
      await keepPicture(page, 'board-cut');
      // Refused once: the browser itself gives up then, and the console has to come back.
      while (server.streamsFrom.length < 2) await page.waitForTimeout(50);
      server.cut(false);
      await page.getByText('The live stream is cut').waitFor({ state: 'hidden' });
      expect(server.streamsFrom.slice(0, 2)).toEqual([null, '101']);
      expect(server.streamsFrom.at(-1)).toBe('101');
    });
  });

  it('is worked by keyboard alone: the first stop skips to the screen, a job opens with Enter', async () => {
    await onPage('desktop', 'light', async (page) => {
      await board(page);
      await page.keyboard.press('Tab');
      expect(await page.evaluate(() => document.activeElement?.className)).toBe('skip');
      await page.locator('.strip[data-ticket="0195a001"] a').focus();
      await page.keyboard.press('Enter');
      await page.locator('h1', { hasText: 'The Salt Harbour' }).waitFor();
      expect(await page.evaluate(() => document.activeElement?.tagName)).toBe('H1');
    });
  });

  it('gives every target on a phone at least the 24 pixels of WCAG 2.2 criterion 2.5.8', async () => {
    await onPage('phone', 'light', async (page) => {
      await board(page);
      const small = await page.evaluate(() =>
        [...document.querySelectorAll('main a, main button, header a, header select')]
          .map((element) => ({ text: element.textContent, box: element.getBoundingClientRect() }))
          .filter(({ box }) => box.height < 24 || box.width < 24)
          .map(({ text }) => text),
      );
      expect(small).toEqual([]);
    });
  });

  it('loads less than 60 kB of script', async () => {
    await onPage('phone', 'light', async (page) => {
      const bodies: Promise<Buffer>[] = [];
      page.on('response', (response) => {
        if (/assets\/.*\.js$/.test(response.url())) bodies.push(response.body());
      });
      await board(page);
      const { gzipSync } = await import('node:zlib');
      const sizesB = (await Promise.all(bodies)).map((body) => gzipSync(body).length);
      expect(sizesB.length).toBeGreaterThan(0);
      expect(sizesB.reduce((sum, size) => sum + size, 0)).toBeLessThan(60_000);
    });
  });
});
