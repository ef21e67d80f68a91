import { versions } from '../enumerations.js';
import { jdfDictionary, xjdfDictionary } from '../standard/index.js';
import { JDF_NAMESPACE, XJDF_NAMESPACE } from '../xml/index.js';
import type { StructureRules } from './structure-rules.js';
import { jdfValueTypes, ValueChecks, xjdfValueTypes } from './values.js';

let jdf: StructureRules | undefined;
let xjdf: StructureRules | undefined;

/** What JDF and JMF documents are checked against; made when first asked for. */
export function jdfRules(): StructureRules {
  jdf ??= {
    namespace: JDF_NAMESPACE,
    dictionary: jdfDictionary(),
    values: new ValueChecks(jdfDictionary(), jdfValueTypes),
    versions,
  };
  return jdf;
}

/** What XJDF and XJMF documents are checked against; made when first asked for. */
export function xjdfRules(): StructureRules {
  xjdf ??= {
    namespace: XJDF_NAMESPACE,
    dictionary: xjdfDictionary(),
    values: new ValueChecks(xjdfDictionary(), xjdfValueTypes),
    versions: ['2.0', '2.1', '2.2', '2.3'],
  };
  return xjdf;
}
