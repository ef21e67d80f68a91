/** In a process of its own: bytes of memory that a document holds when it has been read, by byte of its text. */
import { ticketOf } from './large-ticket.mjs';

const side = process.argv[2];
const read =
  side === 'ours'
    ? (await import('../../dist/libs/jdf/src/index.js')).parseXmlStream
    : new (await import('fast-xml-parser')).XMLParser({ ignoreAttributes: false, preserveOrder: true });
let bytes = ticketOf(16);
const { length } = bytes;

async function* chunks() {
  for (let at = 0; at < length; at += 50_000) yield bytes.subarray(at, at + 50_000);
}

globalThis.gc();
const before = process.memoryUsage();
const unlimited = { bytes: Infinity, elements: Infinity, nodes: Infinity };
const kept = side === 'ours' ? await read(chunks(), unlimited) : read.parse(new TextDecoder().decode(bytes));
bytes = null;
globalThis.gc();
const after = process.memoryUsage();
const heap = after.heapUsed - before.heapUsed + after.external - before.external + length;
process.stdout.write(String(kept ? heap / length : 0));
