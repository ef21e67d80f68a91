import { useEffect, useState } from 'preact/hooks';
import { ask } from '../../server/ask.js';
import type { Listing } from '../../server/shapes.js';

/** One read of a listing, again whenever `version` changes; what was read stays until the next has come. */
export function useListing<T>(path: string, version: number): readonly T[] | null {
  const [items, setItems] = useState<readonly T[] | null>(null);
  useEffect(() => {
    let current = true;
    void ask<Listing<T>>(path).then((answer) => {
      if (current && answer.ok) setItems(answer.value.items);
    });
    return () => {
      current = false;
    };
  }, [path, version]);
  return items;
}
