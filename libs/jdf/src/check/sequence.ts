import type { Findings } from '../codec/index.js';
import { type ElementType, isChoice, type ParticleFact } from '../standard/index.js';
import type { XmlElement } from '../xml/index.js';
import type { StructureRules } from './structure-rules.js';

/**
 * The children of an element in the order and number that the standard asks for. One finding an element: after the
 * first, no order can be told. An element that is not known at all has been reported by the caller and is passed over.
 */
export function checkSequence(
  el: XmlElement,
  type: ElementType,
  sequence: readonly ParticleFact[],
  rules: StructureRules,
  findings: Findings,
): void {
  new SequenceCheck(el, type, rules, findings).run(sequence);
}

class SequenceCheck {
  readonly #children: readonly XmlElement[];
  #at = 0;

  constructor(
    private readonly el: XmlElement,
    private readonly type: ElementType,
    private readonly rules: StructureRules,
    private readonly findings: Findings,
  ) {
    this.#children = el.children.flatMap((child) =>
      child.kind === 'element' && this.#isKnown(child) ? [child] : [],
    );
  }

  #isKnown(child: XmlElement): boolean {
    if (child.uri !== this.rules.namespace) return this.type.foreignElements && child.uri !== '';
    return this.rules.dictionary.childType(this.type, child.local) !== undefined;
  }

  run(sequence: readonly ParticleFact[]): void {
    for (const fact of sequence) {
      const missing = this.#take(fact);
      if (missing === null) continue;
      this.#missing(missing, this.#order(sequence));
      return;
    }
    const left = this.#children[this.#at];
    if (left === undefined) return;
    const message = `${left.name} stands in the wrong place in ${this.el.name}, or once too often.`;
    this.findings.error('JDF_CHILDREN', left, message, this.#order(sequence));
  }

  /** Told at what stands in the place of the missing one, if anything does. */
  #missing(name: string, order: string): void {
    const inPlace = this.#children[this.#at];
    if (inPlace === undefined) {
      this.findings.error('JDF_MISSING', this.el, `${this.el.name} has no ${name}.`, order);
    } else {
      const message = `${inPlace.name} stands where ${this.el.name} must have ${name}.`;
      this.findings.error('JDF_MISSING', inPlace, message, order);
    }
  }

  /** Goes past what a particle takes; what is missing of it, or null. */
  #take(fact: ParticleFact): string | null {
    if (isChoice(fact)) return this.#takeChoice(fact);
    let count = 0;
    while (count < fact.max && this.#matches(fact)) {
      this.#at++;
      count++;
    }
    return count < fact.min ? fact.name : null;
  }

  #takeChoice({ choice, min, max }: Extract<ParticleFact, { choice: unknown }>): string | null {
    let count = 0;
    for (; count < max; count++) {
      const taken = choice.find((fact) => this.#matches(fact));
      if (taken === undefined) break;
      this.#take(taken);
    }
    const canBeEmpty = choice.some((fact) => fact.min === 0);
    return count < min && !canBeEmpty ? choice.map(({ name }) => name).join(' or ') : null;
  }

  #matches(fact: ParticleFact): boolean {
    const child = this.#children[this.#at];
    if (child === undefined || isChoice(fact)) return false;
    if (fact.name === 'any') return child.uri !== this.rules.namespace;
    if (child.uri !== this.rules.namespace) return false;
    return fact.head ? this.rules.dictionary.isMember(fact.name, child.local) : child.local === fact.name;
  }

  #order(sequence: readonly ParticleFact[]): string {
    return `Its elements in order: ${sequence.map(shown).join(', ')}.`;
  }
}

function shown(fact: ParticleFact): string {
  const name = isChoice(fact)
    ? fact.choice.map(shown).join(' or ')
    : fact.name === 'any'
      ? 'foreign elements'
      : fact.name;
  const often = fact.max === 1 ? '' : ' (several)';
  return `${name}${often}${fact.min === 0 ? ', if any' : ''}`;
}
