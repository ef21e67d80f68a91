import type { ValueType } from '../codec/index.js';
import { versions } from '../enumerations.js';
import { type Dictionary, jdfDictionary, xjdfDictionary } from '../standard/index.js';
import { JDF_NAMESPACE, XJDF_NAMESPACE } from '../xml/index.js';
import { kindsOf } from './kind.js';
import type { StructureRules } from './structure-rules.js';
import { jdfValueTypes, ValueChecks, xjdfValueTypes } from './values.js';

let jdf: StructureRules | undefined;
let xjdf: StructureRules | undefined;

/** What JDF and JMF documents are checked against; made when first asked for. */
export function jdfRules(): StructureRules {
  jdf ??= rulesOf(JDF_NAMESPACE, jdfDictionary(), jdfValueTypes, versions);
  return jdf;
}

/** What XJDF and XJMF documents are checked against; made when first asked for. */
export function xjdfRules(): StructureRules {
  xjdf ??= rulesOf(XJDF_NAMESPACE, xjdfDictionary(), xjdfValueTypes, [
    ...(xjdfDictionary().listOf('Version') ?? []),
  ]);
  return xjdf;
}

function rulesOf(
  namespace: string,
  dictionary: Dictionary,
  types: Readonly<Record<string, ValueType<unknown>>>,
  minor: readonly string[],
): StructureRules {
  const facts = { dictionary, values: new ValueChecks(dictionary, types), versions: minor };
  return { namespace, kindOf: kindsOf(facts), ...facts };
}
