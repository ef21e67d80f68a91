import { join } from 'node:path';
import type { Token, TokenKind } from '#libs/flow';
import { realClock, systemRandom, uuidV7Source } from '#libs/kernel';
import { openStore, startEmbeddedPostgres } from '#libs/store';
import { settingsOrFault } from '../run-server.js';
import { hashOf, newSecret } from './caller.js';

const DAY_MS = 24 * 3600 * 1000;

/** Care of tokens without a running server, or beside one: straight at the database. */
export interface TokenDesk {
  /** The secret is given out here and never again. */
  create(wish: {
    kind: TokenKind;
    name: string;
    days: number | null;
  }): Promise<{ token: Token; secret: string }>;
  list(): Promise<readonly Token[]>;
  /** False when there is no such token that still counts. */
  revoke(id: string): Promise<boolean>;
  close(): Promise<void>;
}

/**
 * The tokens of an installation, for the command line: opens the database that the settings name, or the embedded one.
 * Throws a Fault where neither can be opened.
 */
export async function openTokens(env: Readonly<Record<string, string | undefined>>): Promise<TokenDesk> {
  const { settings, log } = settingsOrFault(env);
  const embedded =
    settings.DATABASE_URL === undefined
      ? await startEmbeddedPostgres({
          dataDir: join(settings.DATA_DIR, 'postgres'),
          log: (message) => log('debug', message),
        })
      : null;
  const store = await openStore({ url: settings.DATABASE_URL ?? embedded!.url });
  const clock = realClock();
  const ids = uuidV7Source(clock, systemRandom);
  return {
    async create({ kind, name, days }) {
      const secret = newSecret();
      const now = clock.now();
      const token: Token = {
        id: ids.next(),
        kind,
        name,
        createdAt: now,
        expiresAt: days === null ? null : now + days * DAY_MS,
        revokedAt: null,
        lastUsedAt: null,
      };
      await store.tokens.add(token, hashOf(secret));
      return { token, secret };
    },
    list: () => store.tokens.list(),
    revoke: (id) => store.tokens.revoke(id, clock.now()),
    async close() {
      await store.close();
      // A server that runs on the same database keeps it; only what was started here is stopped.
      await embedded?.stop();
    },
  };
}
