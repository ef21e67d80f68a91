import { Column, Entity, PrimaryColumn } from 'typeorm';
import type { Receipt } from '#libs/flow';
import type { Instant } from '#libs/kernel';
import { instant, key, text } from './columns.js';

@Entity('receipt')
export class ReceiptEntity implements Receipt {
  @PrimaryColumn(key('receipt')) scope!: string;
  @PrimaryColumn(key('receipt')) key!: string;
  @Column(text) bodyHash!: string;
  @Column(text) ticketId!: string;
  @Column(instant) createdAt!: Instant;
}
