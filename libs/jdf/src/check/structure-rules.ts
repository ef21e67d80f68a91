import type { ElementType } from '../standard/index.js';
import type { Kind, KindFacts } from './kind.js';

/** What one generation's documents are checked against. */
export interface StructureRules extends KindFacts {
  readonly namespace: string;
  readonly kindOf: (type: ElementType) => Kind;
}
