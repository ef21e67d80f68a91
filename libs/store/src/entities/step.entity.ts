import { Column, Entity, ForeignKey, Index, PrimaryColumn } from 'typeorm';
import type { Activation, NodeStatus, Step } from '#libs/flow';
import type { Instant } from '#libs/kernel';
import { amount, instant, json, key, maybe, text } from './columns.js';
import { TicketEntity } from './ticket.entity.js';

@Entity('step')
@Index('step_horizon', ['deviceId', 'plannedEnd'], {
  where: `(status <> ALL (ARRAY['Completed'::text, 'Aborted'::text]))`,
})
export class StepEntity implements Step {
  @ForeignKey(() => TicketEntity, { name: 'step_ticket_ref' })
  @PrimaryColumn(key('step'))
  ticketId!: string;
  @PrimaryColumn(key('step')) id!: string;
  @Column({ type: 'integer' }) ordinal!: number;
  @Column(json) types!: readonly string[];
  @Column(maybe(text)) deviceId!: string | null;
  @Column(text) status!: NodeStatus;
  @Column(maybe(text)) statusDetails!: string | null;
  @Column(text) activation!: Activation;
  @Column(json) after!: readonly string[];
  @Column(json) inputs!: readonly string[];
  @Column(json) outputs!: readonly string[];
  @Column(amount) setupS!: number;
  @Column(amount) runS!: number;
  @Column(amount) waitAfterS!: number;
  @Column(amount) inAmount!: number;
  @Column(text) inUnit!: string;
  @Column(amount) outAmount!: number;
  @Column(text) unit!: string;
  @Column(maybe(instant)) plannedStart!: Instant | null;
  @Column(maybe(instant)) plannedEnd!: Instant | null;
  @Column(maybe(instant)) start!: Instant | null;
  @Column(maybe(instant)) end!: Instant | null;
  @Column(amount) good!: number;
  @Column(amount) waste!: number;
  @Column(amount) samples!: number;
}
