import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type Database, openDatabase } from '../../libs/store/src/database.js';
import { readManifest } from '../../libs/store/src/schema-manifest.js';
import { dropSchema, freshSchema, places } from './store-places.js';

const file = fileURLToPath(new URL('../../libs/store/schema.manifest.json', import.meta.url));

const open = (url: string, schema: string): Promise<Database> =>
  openDatabase({
    url,
    schema,
    connections: 2,
    onTrouble: (message, cause) => {
      throw new Error(message, { cause });
    },
  });

describe.each(places)('the schema on the $name', ({ url }) => {
  const schema = freshSchema();
  let database: Database;

  beforeAll(async () => {
    database = await open(url, schema);
  });
  afterAll(async () => {
    await database.close();
    await dropSchema(url, schema);
  });

  // SIDELAY_UPDATE_MANIFEST=1 writes the file anew after a migration was added.
  it('is after all migrations what schema.manifest.json says', async () => {
    const manifest = await readManifest(database);
    if (process.env.SIDELAY_UPDATE_MANIFEST === '1') {
      writeFileSync(file, `${JSON.stringify(manifest, null, 2)}\n`);
    }
    expect(manifest).toEqual(JSON.parse(readFileSync(file, 'utf8')));
    expect(Object.keys(manifest.tables).length).toBe(database.source.entityMetadatas.length);
  });

  it('leaves the entities nothing to add, change or drop', async () => {
    const difference = await database.source.driver.createSchemaBuilder().log();
    expect(difference.upQueries.map(({ query }) => query)).toEqual([]);
  });

  it('is migrated once when four servers start together', async () => {
    const other = freshSchema();
    const started = await Promise.all(Array.from({ length: 4 }, () => open(url, other)));
    const manifest = await readManifest(started[0]!);
    expect(manifest.migrations).toEqual((await readManifest(database)).migrations);
    await Promise.all(started.map((each) => each.close()));
    await dropSchema(url, other);
  });

  it('can be taken back to nothing and built again', async () => {
    for (const _ of (await readManifest(database)).migrations) await database.source.undoLastMigration();
    expect((await readManifest(database)).tables).toEqual({});
    await database.source.runMigrations();
    expect(await readManifest(database)).toEqual(JSON.parse(readFileSync(file, 'utf8')));
  });
});
