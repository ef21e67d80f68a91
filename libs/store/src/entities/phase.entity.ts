import { Column, Entity, ForeignKey, Index, PrimaryColumn } from 'typeorm';
import type { NodeStatus, Phase, Source } from '#libs/flow';
import type { Instant } from '#libs/kernel';
import { amount, instant, key, maybe, text } from './columns.js';
import { TicketEntity } from './ticket.entity.js';

@Entity('phase')
@Index('phase_device', ['deviceId', 'start'])
export class PhaseEntity implements Phase {
  @ForeignKey(() => TicketEntity, { name: 'phase_ticket_ref' })
  @PrimaryColumn(key('phase'))
  ticketId!: string;
  @PrimaryColumn(key('phase')) stepId!: string;
  @PrimaryColumn(key('phase')) deviceId!: string;
  @PrimaryColumn(key('phase', instant)) start!: Instant;
  @Column(maybe(instant)) end!: Instant | null;
  @Column(text) status!: NodeStatus;
  @Column(maybe(text)) statusDetails!: string | null;
  @Column(amount) good!: number;
  @Column(amount) waste!: number;
  @Column(text) source!: Source;
}
