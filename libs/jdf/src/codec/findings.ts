import { type Code, error, type Problem, type Severity, warning } from '#libs/kernel';
import { lineOfAttribute, pathOf, type XmlDocument, type XmlElement } from '../xml/index.js';

// A document can repeat one mistake thousands of times; nobody reads further than this.
const MOST = 100;

/** Gathers what is wrong while a document is read, each with its line and XPath, up to a limit. */
export class Findings {
  readonly #problems: Problem[] = [];
  #errors = 0;

  constructor(
    readonly doc: XmlDocument,
    /** The code for something left out, and the code for a value that is not possible. */
    readonly codes: { readonly missing: Code; readonly wrong: Code },
  ) {}

  get problems(): readonly Problem[] {
    return this.#problems;
  }

  /** No further error is gathered. Warnings have a count of their own, so that they never hide an error. */
  get full(): boolean {
    return this.#errors >= MOST;
  }

  /** An error of an element, or of one of its attributes, which may stand some lines further down. */
  error(
    code: Code,
    el: XmlElement,
    message: string,
    hint: string | null = null,
    attribute: string | null = null,
  ): void {
    if (this.full) return;
    this.#errors++;
    this.#problems.push(error(code, message, this.#where(el, hint, attribute)));
  }

  /** What does not refuse the document; counted apart from errors, so that neither hides the other. */
  warning(code: Code, el: XmlElement, message: string, hint: string | null = null): void {
    if (this.#problems.length - this.#errors >= MOST) return;
    this.#problems.push(warning(code, message, this.#where(el, hint)));
  }

  /** An error or a warning, where the same fault weighs differently by its place. */
  tell(severity: Severity, code: Code, el: XmlElement, message: string, hint: string | null = null): void {
    if (severity === 'error') this.error(code, el, message, hint);
    else this.warning(code, el, message, hint);
  }

  /** Something required is not there. */
  missing(el: XmlElement, what: string): void {
    this.error(this.codes.missing, el, `${el.name} has no ${what}.`, `Add ${what}.`);
  }

  /** A value that cannot be; `expects` says in words what could. Long ones are cut. */
  wrong(el: XmlElement, attribute: string, value: string, expects: string): void {
    const shown = value.length > 80 ? `${value.slice(0, 80)}…` : value;
    this.error(
      this.codes.wrong,
      el,
      `${attribute}="${shown}" is not possible in ${el.name}.`,
      `${attribute} is ${expects}.`,
      attribute,
    );
  }

  #where(
    el: XmlElement,
    hint: string | null,
    attribute: string | null = null,
  ): { line: number | null; path: string | null; hint: string | null } {
    return {
      line: (attribute === null ? el.line : lineOfAttribute(el, attribute)) || null,
      path: pathOf(this.doc, el) || null,
      hint,
    };
  }
}
