import { Column, Entity, ForeignKey, PrimaryColumn } from 'typeorm';
import type { Source, Use, UseUnit } from '#libs/flow';
import { amount, key, maybe, text } from './columns.js';
import { TicketEntity } from './ticket.entity.js';

@Entity('use')
export class UseEntity implements Use {
  @ForeignKey(() => TicketEntity, { name: 'use_ticket_ref' })
  @PrimaryColumn(key('use'))
  ticketId!: string;
  @PrimaryColumn(key('use')) stepId!: string;
  @PrimaryColumn(key('use')) item!: string;
  @Column(maybe(text)) deviceId!: string | null;
  @Column(text) unit!: UseUnit;
  @Column(amount) planned!: number;
  @Column(amount) reserved!: number;
  @Column(amount) actual!: number;
  @Column(amount) waste!: number;
  @Column(text) source!: Source;
}
