import { XML_NAMESPACE, XMLNS_NAMESPACE } from './namespaces.js';
import type { XmlAttribute } from './node.js';

/** What an element's own declarations replaced, to be put back when it ends. */
type Replaced = readonly (readonly [prefix: string, uri: string | undefined])[];

const NOTHING: Replaced = [];

/**
 * The namespaces in force while a document is read; '' is the prefix of the default one. Source: Namespaces in XML 1.0
 * (third edition). Each prefix is found at once, however deep the element lies that declares it.
 */
export class NamespaceScope {
  readonly #bound = new Map<string, string>([
    ['', ''],
    ['xml', XML_NAMESPACE],
    ['xmlns', XMLNS_NAMESPACE],
  ]);
  readonly #replaced: Replaced[] = [];

  uriOf(prefix: string): string | undefined {
    return this.#bound.get(prefix);
  }

  /** Enters an element that declares nothing. */
  enter(): void {
    this.#replaced.push(NOTHING);
  }

  /** Enters an element with its declarations; answers what is wrong with one, or null. */
  enterWith(declarations: readonly XmlAttribute[]): string | null {
    const replaced: [string, string | undefined][] = [];
    for (const { prefix, local, value } of declarations) {
      const of = prefix === '' ? '' : local;
      const fault = faultOf(of, value);
      if (fault !== null) return fault;
      replaced.push([of, this.#bound.get(of)]);
      this.#bound.set(of, value);
    }
    this.#replaced.push(replaced);
    return null;
  }

  leave(): void {
    for (const [prefix, uri] of this.#replaced.pop() ?? NOTHING) {
      if (uri === undefined) this.#bound.delete(prefix);
      else this.#bound.set(prefix, uri);
    }
  }
}

/** The constraints on declarations: reserved prefixes and namespace names, no undeclaring of a prefix. */
function faultOf(prefix: string, uri: string): string | null {
  if (prefix === 'xmlns') return 'The prefix xmlns may not be declared.';
  if (uri === XMLNS_NAMESPACE) return `Nothing may be bound to ${XMLNS_NAMESPACE}.`;
  if (prefix === 'xml' && uri !== XML_NAMESPACE) return `The prefix xml stands for ${XML_NAMESPACE} alone.`;
  if (prefix !== 'xml' && uri === XML_NAMESPACE)
    return `Only the prefix xml may be bound to ${XML_NAMESPACE}.`;
  if (prefix !== '' && uri === '') return `The prefix ${prefix} is bound to no namespace.`;
  return null;
}
