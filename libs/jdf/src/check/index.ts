export { jdfRules, xjdfRules } from './rules.js';
export { checkStructure } from './structure.js';
export type { StructureRules } from './structure-rules.js';
export { checkUniqueIds } from './unique-ids.js';
