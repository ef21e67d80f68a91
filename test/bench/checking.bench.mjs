import { SaxesParser } from 'saxes';
import { checkDocument, parseXml, readAudits, readProcessNode } from '../../dist/libs/jdf/src/index.js';
import { alternate, perSecond } from './alternate.mjs';
import { largeTicket } from './large-ticket.mjs';

export const name = 'checking';
export const unit = 'MB/s';
export const better = 'higher';
export const target = 0.4;
export const note =
  'a sound ticket of 1 MB read, viewed as node with its links and resources and as audits, and checked, against a pass of the strict parser over the same bytes with namespaces';

const MEGABYTE = 1_000_000;
const bytes = new TextEncoder().encode(largeTicket(MEGABYTE));
const TIMES = 4;

function ours() {
  for (let i = 0; i < TIMES; i++) {
    const doc = parseXml(bytes);
    if (!doc.ok) throw new Error(doc.problems[0].message);
    const node = readProcessNode(doc.value);
    const audits = readAudits(doc.value);
    const { problems } = checkDocument(doc.value);
    const faults = [node, audits, { problems }].flatMap((result) => result.problems ?? []);
    if (faults.length > 0) throw new Error(JSON.stringify(faults[0]));
  }
}

function peer() {
  for (let i = 0; i < TIMES; i++) {
    let elements = 0;
    const parser = new SaxesParser({ xmlns: true });
    parser.on('opentag', () => elements++);
    parser.on('text', () => undefined);
    parser.write(new TextDecoder('utf-8', { fatal: true }).decode(bytes)).close();
    if (elements === 0) throw new Error('nothing was read');
  }
}

export const run = () => {
  const amount = (TIMES * bytes.length) / MEGABYTE;
  return alternate({ ours: perSecond(amount, ours), peer: perSecond(amount, peer), rounds: 7, warmUp: 5 });
};
