import { openStore } from '#libs/store';
import { dropSchema, freshSchema, places } from './store-places.js';
import { exerciseStore } from './store-suite.js';

describe.each(places)('the store over the $name', ({ url }) => {
  exerciseStore(async () => {
    const schema = freshSchema();
    const open = () => openStore({ url, schema, connections: 6 });
    const opened = [await open()];
    return {
      store: opened[0]!,
      async another() {
        const next = await open();
        opened.push(next);
        return next;
      },
      async drop() {
        await Promise.all(opened.map((store) => store.close()));
        await dropSchema(url, schema);
      },
    };
  });

  it('says that the database does not answer rather than that something broke', async () => {
    const nowhere = openStore({ url: 'postgres://nobody@127.0.0.1:9/none' });
    await expect(nowhere).rejects.toMatchObject({ name: 'Fault', code: 'DATABASE' });
  });

  it('refuses a schema name that would need quoting', async () => {
    await expect(openStore({ url, schema: 'a"b' })).rejects.toMatchObject({ code: 'SETTING' });
  });
});
