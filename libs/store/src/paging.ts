import type { Page } from '#libs/flow';
import { Fault } from '#libs/kernel';

interface Place {
  readonly at: number | string;
  readonly id: string;
}

/** A page of a list that was asked for one row more than the page holds, newest first by (at, id). */
export function pageOf<T extends Place>(rows: readonly T[], limit: number): Page<T> {
  const items = rows.slice(0, limit);
  const last = items.at(-1);
  const hasMore = rows.length > limit && last !== undefined;
  return { items, next: hasMore ? Buffer.from(`${last.at} ${last.id}`).toString('base64url') : null };
}

/** Where a cursor points; null for none. One that was not made by `pageOf` is the caller's mistake. */
export function placeOf(cursor: string | undefined): Place | null {
  if (cursor === undefined || cursor === '') return null;
  const [, at, id] = /^(-?\d{1,16}) (.+)$/s.exec(Buffer.from(cursor, 'base64url').toString()) ?? [];
  if (at === undefined || id === undefined)
    throw new Fault('REQUEST_INVALID', 'the cursor is none that was given out');
  return { at: Number(at), id };
}
