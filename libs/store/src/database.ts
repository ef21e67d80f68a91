import pg from 'pg';
import { DataSource, type MigrationInterface, type QueryRunner } from 'typeorm';
import { Fault } from '#libs/kernel';
import { entities } from './entities/index.js';
import { SnakeCase } from './entities/naming.js';
import { migrations as allMigrations } from './migrations/index.js';

type MigrationClass = new () => MigrationInterface;

export interface DatabaseOptions {
  readonly url: string;
  readonly schema: string;
  /** Connections of the pool that changes and reads use. */
  readonly connections: number;
  /** Told of connections that broke while nobody used them. */
  readonly onTrouble: (message: string, cause: unknown) => void;
  /** Only these migrations, for an import of an older database. Default: all. */
  readonly migrations?: readonly MigrationClass[];
}

/** One database, migrated: a pool for hand-written statements, and TypeORM for entities and what is simple. */
export interface Database {
  readonly schema: string;
  readonly pool: pg.Pool;
  readonly source: DataSource;
  close(): Promise<void>;
}

// Any two numbers of our own: they only must not meet another program's in the same database.
export const MIGRATION_LOCK = 0x51de1a;
export const SEQUENCE_LOCK = 0x51de1b;

const SCHEMA_NAME = /^[a-z_][a-z0-9_]{0,40}$/;

/** The schema's name, quoted. Names that would need care anywhere are refused, since they also name a channel. */
export function quoted(schema: string): string {
  if (!SCHEMA_NAME.test(schema)) throw new Fault('SETTING', `"${schema}" is no usable schema name`);
  return `"${schema}"`;
}

/** Migrations are plain SQL without a schema; this puts each of them where the store lives. */
function inSchema(Migration: MigrationClass, schema: string): MigrationClass {
  const enter = (runner: QueryRunner): Promise<unknown> =>
    runner.query(`SET LOCAL search_path TO ${quoted(schema)}`);
  return class implements MigrationInterface {
    readonly #plain = new Migration();
    readonly name = this.#plain.name;

    async up(runner: QueryRunner): Promise<void> {
      await enter(runner);
      await this.#plain.up(runner);
    }

    async down(runner: QueryRunner): Promise<void> {
      await enter(runner);
      await this.#plain.down(runner);
    }
  };
}

/**
 * Connects, creates the schema if it is not there, and brings it to this version. Servers that start together wait for
 * each other under an advisory lock, so that each migration runs once.
 */
export async function openDatabase(options: DatabaseOptions): Promise<Database> {
  const { url, schema, connections, onTrouble } = options;
  const source = new DataSource({
    type: 'postgres',
    url,
    schema,
    entities: [...entities],
    namingStrategy: new SnakeCase(),
    migrations: (options.migrations ?? allMigrations).map((migration) => inSchema(migration, schema)),
    migrationsTableName: 'migration',
    migrationsTransactionMode: 'each',
    installExtensions: false,
    poolSize: 4,
    applicationName: 'sidelay',
    poolErrorHandler: (cause: unknown) => onTrouble('a database connection broke', cause),
  });
  await migrate(source, options);
  const pool = new pg.Pool(poolConfig(url, connections));
  pool.on('error', (cause) => onTrouble('a database connection broke', cause));
  return {
    schema,
    pool,
    source,
    async close() {
      await Promise.all([pool.end(), source.destroy()]);
    },
  };
}

// Statements that follow each other are sent together; each still has its own answer.
const poolConfig = (url: string, connections: number): pg.PoolConfig => ({
  connectionString: url,
  max: connections,
  application_name: 'sidelay',
  keepAlive: true,
  pipeline: true,
});

async function migrate(source: DataSource, { url, schema, onTrouble }: DatabaseOptions): Promise<void> {
  const client = new pg.Client({ connectionString: url, application_name: 'sidelay' });
  client.on('error', (cause) => onTrouble('the connection that holds the migration lock broke', cause));
  await client.connect();
  try {
    await client.query('SELECT pg_advisory_lock($1, hashtext($2))', [MIGRATION_LOCK, schema]);
    await client.query(`CREATE SCHEMA IF NOT EXISTS ${quoted(schema)}`);
    await source.initialize();
    await source.runMigrations();
  } catch (cause) {
    if (source.isInitialized) await source.destroy();
    throw cause;
  } finally {
    await client.end();
  }
}
