import type { Dictionary } from '../standard/index.js';
import type { ValueChecks } from './values.js';

/** What one generation's documents are checked against. */
export interface StructureRules {
  readonly namespace: string;
  readonly dictionary: Dictionary;
  readonly values: ValueChecks;
  /** Its minor versions, oldest first. */
  readonly versions: readonly string[];
}
