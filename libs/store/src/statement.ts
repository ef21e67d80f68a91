/** Puts many inserts and updates into one statement: one round trip, one plan, all or nothing even by itself. */
export class StatementBuilder {
  readonly #parts: string[] = [];
  readonly #values: unknown[] = [];
  #name = 'w';

  get isEmpty(): boolean {
    return this.#parts.length === 0;
  }

  /** `make` is given the number of its first parameter. `tag` names the text: the same tags always make the same text. */
  add(tag: string, values: readonly unknown[], make: (n: number) => string): void {
    this.#parts.push(make(this.#values.length + 1));
    this.#values.push(...values);
    this.#name += `.${tag}`;
  }

  /** The name lets a connection plan the text once; one too long for PostgreSQL (63 bytes) is planned every time. */
  build(): { readonly text: string; readonly values: readonly unknown[]; readonly name: string | undefined } {
    const text = `WITH ${this.#parts.map((part, at) => `p${at} AS (${part})`).join(',\n')} SELECT 1`;
    return { text, values: this.#values, name: this.#name.length <= 63 ? this.#name : undefined };
  }
}
