import type { Token, TokenStore } from '#libs/flow';
import type { Instant } from '#libs/kernel';
import { ask, askRows } from './ask.js';
import type { Database } from './database.js';
import { TokenEntity } from './entities/index.js';
import { asJson, type Table, tableOf } from './tables.js';

/** Who may come in. Secrets are looked up by their hash and never leave the table. */
export class Tokens implements TokenStore {
  readonly #table: Table;

  constructor(private readonly database: Database) {
    this.#table = tableOf(database.source, TokenEntity);
  }

  async add(token: Token, secretHash: string): Promise<void> {
    await ask(this.database.pool, this.#table.insert(1), [asJson([{ ...token, secretHash }])]);
  }

  async byHash(secretHash: string): Promise<Token | null> {
    return (await this.#read('WHERE secret_hash = $1', [secretHash], 'token'))[0] ?? null;
  }

  list(): Promise<readonly Token[]> {
    return this.#read('ORDER BY created_at, id', []);
  }

  /** false if there is none, or it was revoked before: the first time counts. */
  async revoke(id: string, at: Instant): Promise<boolean> {
    const sql = `UPDATE ${this.#table.name} SET revoked_at = $2 WHERE id = $1 AND revoked_at IS NULL RETURNING id`;
    return (await ask(this.database.pool, sql, [id, at])).length > 0;
  }

  async touch(id: string, at: Instant): Promise<void> {
    await ask(this.database.pool, `UPDATE ${this.#table.name} SET last_used_at = $2 WHERE id = $1`, [id, at]);
  }

  async #read(rest: string, values: readonly unknown[], name?: string): Promise<readonly Token[]> {
    const rows = await askRows<Token & { secretHash: string }>(
      this.database.pool,
      `SELECT ${this.#table.select('t')} FROM ${this.#table.name} t ${rest}`,
      values,
      name,
    );
    return rows.map(({ secretHash: _secretHash, ...token }) => token);
  }
}
