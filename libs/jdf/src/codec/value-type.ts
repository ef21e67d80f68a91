/** How one kind of attribute value is read and written. */
export interface ValueType<T> {
  /** What it must look like, for the message when it does not. */
  readonly expects: string;
  /** Undefined when the text is not such a value. */
  read(text: string): T | undefined;
  write(value: T): string;
}
