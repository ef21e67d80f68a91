import type { Store, TokenStore } from '#libs/flow';
import { exerciseChange } from './store-suite-change.js';
import { exerciseLog } from './store-suite-log.js';
import { exerciseRead } from './store-suite-read.js';
import { exerciseStock } from './store-suite-stock.js';
import { exerciseTokens } from './store-suite-tokens.js';

/** A store over an empty place of its own, and as many more servers over the same place as a test opens. */
export interface StoreUnderTest {
  readonly store: Store & { readonly tokens: TokenStore };
  another(): Promise<Store & { readonly tokens: TokenStore }>;
  /** Closes all, and leaves nothing behind. */
  drop(): Promise<void>;
}

export type MakeStore = () => Promise<StoreUnderTest>;

/** What every implementation of the store must do, whatever it keeps its rows in. */
export function exerciseStore(make: MakeStore): void {
  exerciseChange(make);
  exerciseStock(make);
  exerciseRead(make);
  exerciseLog(make);
  exerciseTokens(make);
}

/** Each test of a group starts with an empty store. */
export function freshStore(make: MakeStore): () => StoreUnderTest {
  let current: StoreUnderTest | undefined;
  beforeEach(async () => {
    current = await make();
  });
  afterEach(() => current?.drop());
  return () => current!;
}
