import { Column, Entity, ForeignKey, PrimaryColumn } from 'typeorm';
import type { StockAccount } from '#libs/flow';
import { exactAmount, key } from './columns.js';
import { StockItemEntity } from './stock-item.entity.js';

/** What all moves together leave in one account, kept up with each of them. */
@Entity('stock_balance')
export class StockBalanceEntity {
  @ForeignKey(() => StockItemEntity, { name: 'stock_balance_item_ref' })
  @PrimaryColumn(key('stock_balance'))
  item!: string;
  @PrimaryColumn(key('stock_balance')) lot!: string;
  @PrimaryColumn(key('stock_balance')) account!: StockAccount;
  @Column(exactAmount) amount!: number;
}
