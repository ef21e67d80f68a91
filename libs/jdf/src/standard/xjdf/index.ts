import { readKinds, readLists } from '../notation.js';
import { XjdfDictionary } from '../xjdf-dictionary.js';
import { elementsAToF } from './elements-a-f.js';
import { elementsGToO } from './elements-g-o.js';
import { elementsPToR } from './elements-p-r.js';
import { elementsSToZ } from './elements-s-z.js';
import { enumerations } from './enumerations.js';
import { heads } from './heads.js';
import { intents } from './intents.js';
import { messages } from './messages.js';
import { resourcesAToD } from './resources-a-d.js';
import { resourcesEToZ } from './resources-e-z.js';

const KINDS = [
  elementsAToF,
  elementsGToO,
  elementsPToR,
  elementsSToZ,
  intents,
  messages,
  resourcesAToD,
  resourcesEToZ,
];

let made: XjdfDictionary | undefined;

/** The second generation of the standard, XJDF and XJMF 2.0 to 2.3; read from the tables when first asked for. */
export function xjdfDictionary(): XjdfDictionary {
  made ??= new XjdfDictionary({
    kinds: KINDS.flatMap(readKinds),
    heads: readLists(heads),
    lists: readLists(enumerations),
  });
  return made;
}
