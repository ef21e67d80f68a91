import saxes from 'saxes';
import { parseXml } from '../../dist/libs/jdf/src/index.js';
import { alternate, perSecond } from './alternate.mjs';
import { ticketOf } from './large-ticket.mjs';

export const name = 'parse';
export const unit = 'MB/s';
export const better = 'higher';
export const target = 0.4;
export const note =
  'a ticket of 1 MB read into the lossless tree, against a bare pass of the strict parser with namespaces';

const bytes = ticketOf(1);
const ROUNDS = 5;

/** What is timed; whoever wants to time more than reading adds it here. */
function ours() {
  const read = parseXml(bytes);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
}

function peer() {
  const parser = new saxes.SaxesParser({ xmlns: true });
  let events = 0;
  parser.on('error', (fault) => {
    throw fault;
  });
  parser.on('opentag', () => events++);
  parser.on('closetag', () => events++);
  parser.on('text', () => events++);
  parser.write(new TextDecoder('utf-8', { fatal: true }).decode(bytes)).close();
  return events;
}

const times = (work) =>
  perSecond((bytes.length * ROUNDS) / 1e6, () => {
    for (let round = 0; round < ROUNDS; round++) work();
  });

export const run = () => alternate({ ours: times(ours), peer: times(peer), rounds: 9 });
