export { type LinkAmountKind, linkAmounts, type ResourceAmountKind, resourceAmounts } from './amounts.js';
export { checkIdenticals } from './check-identical.js';
export { checkInline, checkPartTree } from './check-tree.js';
export { effectivePart, partAttribute } from './effective-part.js';
export { spellingOf } from './key-value.js';
export {
  freeInAmounts,
  isOwnAttribute,
  type KeyKind,
  kindOfKey,
  type PartitionKey,
  partitionKeys,
  partOnlyKeys,
} from './keys.js';
export { LeafIndex } from './leaf-index.js';
export { explainMiss, type Miss, wordsOf } from './misses.js';
export { type PartNode, type PartUsage, partitionKeysOf, partsOf, partTreeOf } from './part-tree.js';
export { partReferredTo, partsNamed, subElements, targetOf } from './references.js';
export { type Partition, type Resolution, resolveParts } from './resolve.js';
export { partitionLeaves, resolveOne, selectPart } from './select.js';
export type { AmountGroup, AmountSum, Amounts } from './tally.js';
