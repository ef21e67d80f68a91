import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type Browser, type BrowserContextOptions, chromium, type Locator, type Page } from 'playwright-core';

/** The three sizes that the screens are made for, in pixels. */
export const sizes = { phone: [390, 844], tablet: [820, 1180], desktop: [1440, 1000] } as const;
export type SizeName = keyof typeof sizes;

const BUILT = fileURLToPath(new URL('../../dist/console/index.html', import.meta.url));

export async function openBrowser(): Promise<Browser> {
  const executablePath = process.env.SIDELAY_TEST_CHROMIUM;
  if (!executablePath)
    throw new Error('SIDELAY_TEST_CHROMIUM must name a Chromium to test the screens with.');
  if (!existsSync(BUILT)) throw new Error('The console is not built: npm run build.');
  return chromium.launch({
    executablePath,
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-dev-shm-usage',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
    ],
  });
}

/** A page as a reader with this screen sees it; anything that the page reports as an error fails the test at `check`. */
export async function openPage(
  browser: Browser,
  size: SizeName,
  colorScheme: 'light' | 'dark' = 'light',
): Promise<{ page: Page; faults: string[]; close: () => Promise<void> }> {
  const [width, height] = sizes[size];
  const options: BrowserContextOptions = {
    viewport: { width, height },
    colorScheme,
    hasTouch: size !== 'desktop',
    timezoneId: 'UTC',
    locale: 'en-GB',
    reducedMotion: 'reduce',
  };
  const context = await browser.newContext(options);
  const page = await context.newPage();
  const faults: string[] = [];
  page.on('pageerror', (cause) => faults.push(cause.message));
  page.on('console', (message) => {
    // What a refused request logs is not the page's fault.
    if (message.type() === 'error' && !/Failed to load resource/.test(message.text()))
      faults.push(message.text());
  });
  return { page, faults, close: () => context.close() };
}

interface AxeFinding {
  readonly id: string;
  readonly nodes: readonly { readonly target: readonly unknown[]; readonly failureSummary?: string }[];
}

/** Violations that the axe-core rules for WCAG 2.2 A and AA find on the page as it stands. */
export async function axeFindings(page: Page): Promise<string[]> {
  if (!(await page.evaluate(() => 'axe' in globalThis))) await page.addScriptTag({ url: '/axe.js' });
  const violations = (await page.evaluate(async () => {
    const { axe } = globalThis as unknown as {
      axe: { run(options: unknown): Promise<{ violations: unknown }> };
    };
    const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
    return (await axe.run({ runOnly: { type: 'tag', values: tags } })).violations;
  })) as AxeFinding[];
  return violations.flatMap(({ id, nodes }) =>
    nodes.map(({ target, failureSummary }) => `${id} at ${target.join(' ')}: ${failureSummary ?? ''}`),
  );
}

/** Keeps a picture where SIDELAY_TEST_SCREENSHOTS names a folder, so that people can look at what was tested. */
export async function keepPicture(page: Page, name: string): Promise<void> {
  const folder = process.env.SIDELAY_TEST_SCREENSHOTS;
  if (folder) await page.screenshot({ path: join(folder, `${name}.png`), fullPage: true });
}

/** What a reader sees of an element, with every run of white space as one blank. */
export async function textOf(place: Locator): Promise<string> {
  // biome-ignore lint/performance/useDomNodeTextContent: hidden text must not count, and cells must not run together
  return (await place.innerText()).replace(/\s+/g, ' ');
}
