import type { Instant } from '#libs/kernel';

/** Where stock can be: every move goes from one account to another, so nothing appears or vanishes unbooked. */
export type StockAccount =
  | 'supplier'
  | 'store'
  | 'reserved'
  | 'process'
  | 'good'
  | 'spoils'
  | 'scrap'
  | 'difference';

export interface StockItem {
  readonly item: string;
  readonly name: string;
  readonly unit: string;
}

export interface StockMove {
  readonly id: string;
  readonly time: Instant;
  readonly item: string;
  readonly lot: string;
  readonly unit: string;
  readonly amount: number;
  readonly from: StockAccount;
  readonly to: StockAccount;
  readonly reason: string;
  readonly ticketId: string | null;
  readonly stepId: string | null;
}

/** What the book says lies in one account of one item (all lots together). */
export interface Balance {
  readonly item: string;
  readonly store: number;
  readonly reserved: number;
}
