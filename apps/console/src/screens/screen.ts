import type { ComponentType } from 'preact';

/** A screen of the console: one folder beside this file, one line in the index. */
export interface Screen {
  readonly name: string;
  /** What of the address the screen needs, or null where the address is another screen's. */
  match(path: string): Readonly<Record<string, string>> | null;
  readonly Show: ComponentType<{ params: Readonly<Record<string, string>> }>;
  /** Place in the navigation, where it has one. */
  readonly nav?: { readonly address: string; readonly word: string };
}
