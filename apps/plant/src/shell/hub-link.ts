import type { ClockSetting } from '#libs/kernel';
import type { Answered } from '../device/outbox.js';
import type { DeviceKind } from '../profiles/index.js';

const PATIENCE_MS = 10_000;
const MOST_CHARACTERS = 32 * 1024 * 1024;

export interface Registration {
  readonly id: string;
  readonly kind: DeviceKind;
  readonly name: string;
  readonly url: string;
}

/** `clock` is null when the hub is there and says nothing of a plant clock. */
export type Health =
  | { readonly there: true; readonly clock: ClockSetting | null }
  | { readonly there: false };

/** What a plant asks and tells the hub over HTTP beside JMF. Nothing here throws for a hub that is away. */
export class HubLink {
  readonly #hub: URL;
  readonly #token: string | null;

  constructor(hub: string, token: string | null) {
    this.#hub = new URL(hub.endsWith('/') ? hub : `${hub}/`);
    this.#token = token;
  }

  get jmf(): string {
    return new URL('jmf', this.#hub).href;
  }

  isHub(url: string): boolean {
    return URL.canParse(url) && new URL(url).origin === this.#hub.origin;
  }

  /** This machine and the hub: a simulated device speaks to nobody else. */
  mayReach(url: string): boolean {
    if (!URL.canParse(url)) return false;
    const { protocol, hostname } = new URL(url);
    const here = ['127.0.0.1', 'localhost', '[::1]'].includes(hostname);
    return (protocol === 'http:' || protocol === 'https:') && (here || this.isHub(url));
  }

  async health(): Promise<Health> {
    const answer = await this.#ask('GET', new URL('health/ready', this.#hub).href);
    if (answer.status < 200 || answer.status >= 300) return { there: false };
    return { there: true, clock: clockIn(answer.body) };
  }

  /** Tells the hub where a device is; true when it knows now. */
  async register(device: Registration): Promise<boolean> {
    const body = JSON.stringify({ ...device, driver: 'jmf' });
    const url = new URL('api/v1/devices', this.#hub).href;
    const { status } = await this.#ask('POST', url, body, 'application/json');
    return status >= 200 && status < 300;
  }

  post(url: string, body: string, contentType: string): Promise<Answered> {
    return this.#ask('POST', url, body, contentType);
  }

  /** A ticket by its address; null when it cannot be read. */
  async fetchTicket(url: string): Promise<string | null> {
    const { status, body } = await this.#ask('GET', url);
    return status === 200 ? body : null;
  }

  /** Status 0: no answer. The token goes to the hub only. */
  async #ask(method: string, url: string, body?: string, contentType?: string): Promise<Answered> {
    const headers: Record<string, string> = { connection: 'close' };
    if (contentType !== undefined) headers['content-type'] = contentType;
    if (this.#token !== null && this.isHub(url)) headers.authorization = `Bearer ${this.#token}`;
    try {
      const response = await fetch(url, {
        method,
        headers,
        body,
        redirect: 'error',
        signal: AbortSignal.timeout(PATIENCE_MS),
      });
      const text = await response.text();
      return { status: response.status, body: text.slice(0, MOST_CHARACTERS) };
    } catch {
      // Whatever the reason, nobody answered; the sender tries again.
      return { status: 0, body: '' };
    }
  }
}

function clockIn(text: string): ClockSetting | null {
  let clock: unknown;
  try {
    clock = (JSON.parse(text) as { clock?: unknown }).clock;
  } catch {
    return null;
  }
  const { plantStart, realStart, factor } = (clock ?? {}) as Record<string, unknown>;
  if (typeof plantStart !== 'number' || typeof realStart !== 'number' || typeof factor !== 'number')
    return null;
  return factor > 0 ? { plantStart, realStart, factor } : null;
}
