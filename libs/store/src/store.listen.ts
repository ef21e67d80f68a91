import pg from 'pg';
import { type WallClock, wallClock } from '#libs/kernel';
import { channelOf } from './store.sequence.js';

const FIRST_WAIT_MS = 200;
const LONGEST_WAIT_MS = 5000;

/**
 * Hears when another server gave events their positions. A connection of its own, made again when it breaks; what was
 * called out meanwhile is unknown, so after each new connection the listener is woken once for good measure.
 */
export class LogListener {
  #client: pg.Client | null = null;
  #isClosed = false;
  #waitMs = FIRST_WAIT_MS;
  #cancelRetry: () => void = () => undefined;
  #connecting: Promise<void> = Promise.resolve();

  constructor(
    private readonly url: string,
    private readonly schema: string,
    /** The sequencer here, whose own calls are not repeated. */
    private readonly self: string,
    private readonly wake: () => void,
    private readonly onTrouble: (message: string, cause: unknown) => void,
    private readonly wall: WallClock = wallClock,
  ) {}

  start(): void {
    this.#connecting = this.#connect();
  }

  async close(): Promise<void> {
    this.#isClosed = true;
    this.#cancelRetry();
    await this.#connecting;
    await this.#client?.end().catch(() => undefined);
  }

  async #connect(): Promise<void> {
    const client = new pg.Client({
      connectionString: this.url,
      application_name: 'sidelay log',
      keepAlive: true,
      // A connection that died silently is noticed within seconds, not after the usual two hours.
      keepAliveInitialDelayMillis: 10_000,
    });
    let isOver = false;
    const onEnd = (cause: unknown): void => {
      if (isOver || this.#isClosed) return;
      isOver = true;
      this.#client = null;
      this.onTrouble('the connection that hears of new events broke', cause);
      client.end().catch(() => undefined);
      this.#cancelRetry = this.wall.setTimeout(() => this.start(), this.#waitMs);
      this.#waitMs = Math.min(this.#waitMs * 2, LONGEST_WAIT_MS);
    };
    client.on('error', onEnd);
    client.on('end', () => onEnd(null));
    client.on('notification', ({ payload }) => {
      if (payload !== this.self) this.wake();
    });
    try {
      await client.connect();
      await client.query(`LISTEN "${channelOf(this.schema)}"`);
    } catch (cause) {
      onEnd(cause);
      return;
    }
    this.#client = client;
    this.#waitMs = FIRST_WAIT_MS;
    this.wake();
  }
}
