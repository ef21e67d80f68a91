export { Dictionary, isChoice } from './dictionary.js';
export type { ChildType, ElementType } from './element-type.js';
export { foldedPageCounts, pagesOfFoldCode } from './fold-catalogue.js';
export { jdfDictionary } from './jdf/index.js';
export type { JdfDictionary } from './jdf-dictionary.js';
export { isTakenByAll, type LinkRule, type ProcessRule, processRules } from './link-rules.js';
export type { AttributeFact, ChildFact, ChoiceFact, ParticleFact, VersionRange } from './notation.js';
export { xjdfDictionary } from './xjdf/index.js';
export type { XjdfDictionary } from './xjdf-dictionary.js';
