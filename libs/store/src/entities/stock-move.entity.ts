import { Column, Entity, ForeignKey, Index, PrimaryColumn } from 'typeorm';
import type { StockAccount, StockMove } from '#libs/flow';
import type { Instant } from '#libs/kernel';
import { exactAmount, instant, key, maybe, text } from './columns.js';
import { StockItemEntity } from './stock-item.entity.js';

@Entity('stock_move')
@Index('stock_move_newest', ['time', 'id'])
@Index('stock_move_item', ['item', 'time', 'id'])
@Index('stock_move_ticket', ['ticketId'])
export class StockMoveEntity implements StockMove {
  @PrimaryColumn(key('stock_move')) id!: string;
  @Column(instant) time!: Instant;
  @ForeignKey(() => StockItemEntity, { name: 'stock_move_item_ref' })
  @Column(text)
  item!: string;
  @Column(text) lot!: string;
  @Column(text) unit!: string;
  @Column(exactAmount) amount!: number;
  @Column(text) from!: StockAccount;
  @Column(text) to!: StockAccount;
  @Column(text) reason!: string;
  @Column(maybe(text)) ticketId!: string | null;
  @Column(maybe(text)) stepId!: string | null;
}
