import { Column, Entity, ForeignKey, PrimaryColumn } from 'typeorm';
import type { Ticket } from '#libs/flow';
import { json, key } from './columns.js';
import { TicketEntity } from './ticket.entity.js';

@Entity('ticket_plan')
export class TicketPlanEntity {
  @ForeignKey(() => TicketEntity, { name: 'ticket_plan_ticket_ref' })
  @PrimaryColumn(key('ticket_plan'))
  ticketId!: string;
  @Column(json) plan!: NonNullable<Ticket['plan']>;
}
