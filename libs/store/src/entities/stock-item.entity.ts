import { Column, Entity, PrimaryColumn } from 'typeorm';
import type { StockItem } from '#libs/flow';
import { key, text } from './columns.js';

@Entity('stock_item')
export class StockItemEntity implements StockItem {
  @PrimaryColumn(key('stock_item')) item!: string;
  @Column(text) name!: string;
  @Column(text) unit!: string;
}
