import { createHash } from 'node:crypto';
import pg from 'pg';
import { takeIn } from '../../dist/libs/flow/src/index.js';
import { alternate, perSecond } from './alternate.mjs';
import { crew, demoOrder, durableDatabase, enginePorts } from './ground.mjs';

export const name = 'intake';
export const unit = 'tickets/s';
export const better = 'higher';
export const target = 0.05;
export const note =
  'orders read, checked, planned and kept, 8 at once, against one raw commit each of the same rows over 8 connections; what is missing is planning';

const COUNT = 60;
const AT_ONCE = 8;

const sent = (n) => {
  const bytes = Buffer.from(JSON.stringify({ ...demoOrder(), jobId: `B-${n}` }));
  return {
    bytes,
    sha256: createHash('sha256').update(bytes).digest('hex'),
    mediaType: 'application/json',
    name: null,
    intake: 'http',
    ticket: { bytes, part: null },
    problems: [],
    key: null,
  };
};

/** The rows that one ticket wrote, table by table, and copies of the tables to write them to without their keys. */
async function rowsOf(client, ticketId) {
  const { rows: tables } = await client.query(
    "SELECT c.table_name AS name, bool_or(c.column_name = 'ticket_id') AS by_ticket FROM information_schema.columns c WHERE c.table_schema = 'ours' GROUP BY 1",
  );
  const found = [];
  await client.query('CREATE SCHEMA raw');
  for (const { name: table, by_ticket } of tables) {
    const where =
      table === 'ticket'
        ? 'id = $1'
        : by_ticket
          ? 'ticket_id = $1'
          : table === 'document'
            ? 'id = (SELECT document_id FROM ours.ticket WHERE id = $1)'
            : null;
    if (where === null) continue;
    const { rows } = await client.query(
      `SELECT coalesce(jsonb_agg(t), '[]') AS rows FROM ours."${table}" t WHERE ${where}`,
      [ticketId],
    );
    if (rows[0].rows.length === 0) continue;
    await client.query(`CREATE TABLE raw."${table}" (LIKE ours."${table}")`);
    found.push({ table, json: JSON.stringify(rows[0].rows) });
  }
  return found;
}

export async function run() {
  const database = await durableDatabase();
  const ports = await enginePorts(database.url, 'ours');
  const pool = new pg.Pool({ connectionString: database.url, max: AT_ONCE });
  try {
    const first = await takeIn(ports, sent('first'));
    const client = await pool.connect();
    const rows = await rowsOf(client, first.value.file.ticket.id);
    client.release();
    let n = 0;
    const ours = perSecond(COUNT, () =>
      crew(COUNT, AT_ONCE, async () => void (await takeIn(ports, sent(n++)))),
    );
    const peer = perSecond(COUNT, () =>
      crew(COUNT, AT_ONCE, async () => {
        const connection = await pool.connect();
        await connection.query('BEGIN');
        for (const { table, json } of rows) {
          await connection.query({
            name: `raw-${table}`,
            text: `INSERT INTO raw."${table}" SELECT * FROM jsonb_populate_recordset(null::raw."${table}", $1)`,
            values: [json],
          });
        }
        await connection.query('COMMIT');
        connection.release();
      }),
    );
    return await alternate({ ours, peer, rounds: 3 });
  } finally {
    await pool.end();
    await ports.store.close();
    await database.stop();
  }
}
