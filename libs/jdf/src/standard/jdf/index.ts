import { JdfDictionary } from '../jdf-dictionary.js';
import { processRules } from '../link-rules.js';
import { readKinds, readLists } from '../notation.js';
import { capabilities } from './capabilities.js';
import { enumerations } from './enumerations.js';
import { forms } from './forms.js';
import { goods } from './goods.js';
import { heads } from './heads.js';
import { intents } from './intents.js';
import { messageParts } from './message-parts.js';
import { messages } from './messages.js';
import { parametersAToB } from './parameters-a-b.js';
import { parametersC } from './parameters-c.js';
import { parametersDToG } from './parameters-d-g.js';
import { parametersHToL } from './parameters-h-l.js';
import { parametersMToP } from './parameters-m-p.js';
import { parametersQToR } from './parameters-q-r.js';
import { parametersSToZ } from './parameters-s-z.js';
import { structure } from './structure.js';
import { subElementsAToL } from './sub-elements-a-l.js';
import { subElementsMToZ } from './sub-elements-m-z.js';

const KINDS = [
  capabilities,
  forms,
  goods,
  intents,
  messageParts,
  messages,
  parametersAToB,
  parametersC,
  parametersDToG,
  parametersHToL,
  parametersMToP,
  parametersQToR,
  parametersSToZ,
  structure,
  subElementsAToL,
  subElementsMToZ,
];

let made: JdfDictionary | undefined;

/** The first generation of the standard, JDF and JMF 1.0 to 1.9; read from the tables when first asked for. */
export function jdfDictionary(): JdfDictionary {
  made ??= new JdfDictionary({
    kinds: KINDS.flatMap(readKinds),
    heads: readLists(heads),
    lists: readLists(enumerations),
    processes: processRules,
  });
  return made;
}
