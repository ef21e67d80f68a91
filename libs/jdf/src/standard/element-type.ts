import type { AttributeFact, ParticleFact, VersionRange } from './notation.js';

/** A child that an element may have, with the key of its type. */
export interface ChildType {
  readonly name: string;
  readonly key: string;
  readonly min: number;
  readonly max: number;
  readonly versions: VersionRange | null;
}

/** What the standard says of one kind of element in one form. */
export interface ElementType {
  /** Kind, with its form where it is a resource: `Media.root`, `Media.part`, `Media` (inline). */
  readonly key: string;
  readonly base: ElementType | null;
  readonly versions: VersionRange | null;
  readonly attributes: ReadonlyMap<string, AttributeFact>;
  readonly required: readonly AttributeFact[];
  /** Children by name, without those that stand for a head. */
  readonly children: ReadonlyMap<string, ChildType>;
  /** Those of the children whose number is limited, by name and by the name of a reference to them. */
  readonly limited: ReadonlyMap<string, ChildType>;
  /** Those of them that must be there. */
  readonly needed: readonly ChildType[];
  readonly heads: readonly string[];
  /** The children in order where order counts; else null. */
  readonly sequence: readonly ParticleFact[] | null;
  /** Children whose number is enforced where order does not count. */
  readonly counted: boolean;
  /** Elements of other namespaces may stand in it. */
  readonly foreignElements: boolean;
  readonly foreignAttributes: boolean;
  /** Text may stand in it. */
  readonly text: boolean;
  readonly abstract: boolean;
  /** A part of a resource that holds Identical holds nothing else. */
  readonly identical: boolean;
}
