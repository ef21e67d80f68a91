import { Column, Entity, ForeignKey, PrimaryColumn } from 'typeorm';
import type { Resource, ResourceStatus } from '#libs/flow';
import type { Instant } from '#libs/kernel';
import { amount, instant, key, maybe, text } from './columns.js';
import { TicketEntity } from './ticket.entity.js';

@Entity('resource')
export class ResourceEntity implements Resource {
  @ForeignKey(() => TicketEntity, { name: 'resource_ticket_ref' })
  @PrimaryColumn(key('resource'))
  ticketId!: string;
  @PrimaryColumn(key('resource')) id!: string;
  @Column(text) name!: string;
  @Column(text) status!: ResourceStatus;
  @Column(text) unit!: string;
  @Column(amount) planned!: number;
  @Column(amount) produced!: number;
  @Column(maybe(instant)) usableFrom!: Instant | null;
}
