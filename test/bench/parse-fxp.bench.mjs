import { XMLParser } from 'fast-xml-parser';
import { parseXml } from '../../dist/libs/jdf/src/index.js';
import { alternate, perSecond } from './alternate.mjs';
import { ticketOf } from './large-ticket.mjs';

export const name = 'parse-fxp';
export const unit = 'MB/s';
export const better = 'higher';
export const target = 2;
export const note =
  'the same ticket against bare fast-xml-parser, attributes and order kept, which judges less';

const bytes = ticketOf(1);
const megabytes = bytes.length / 1e6;
const parser = new XMLParser({ ignoreAttributes: false, preserveOrder: true });

export const run = () =>
  alternate({
    ours: perSecond(megabytes, () => parseXml(bytes)),
    peer: perSecond(megabytes, () => parser.parse(new TextDecoder().decode(bytes))),
    rounds: 5,
  });
