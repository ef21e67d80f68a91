import { Column, Entity, ForeignKey, Index, PrimaryColumn } from 'typeorm';
import type { Delivery, EntryStatus, QueueEntry } from '#libs/flow';
import type { Instant } from '#libs/kernel';
import { amount, instant, key, maybe, text } from './columns.js';
import { TicketEntity } from './ticket.entity.js';

const LIVE = `(status <> ALL (ARRAY['Completed'::text, 'Aborted'::text]))`;

@Entity('queue_entry')
@Index('queue_entry_ticket', ['ticketId'])
@Index('queue_entry_device_name', ['deviceId', 'deviceEntryId'])
@Index('queue_entry_ended', ['deviceId', 'end'])
@Index('queue_entry_one_live', ['ticketId', 'stepId'], { unique: true, where: LIVE })
@Index('queue_entry_live', ['deviceId'], { where: LIVE })
@Index('queue_entry_pending', ['id'], {
  where: `((delivery = 'pending'::text) AND (status = 'Waiting'::text))`,
})
@Index('queue_entry_wanted', ['id'], { where: '(wanted IS NOT NULL)' })
export class QueueEntryEntity implements QueueEntry {
  @PrimaryColumn(key('queue_entry')) id!: string;
  @ForeignKey(() => TicketEntity, { name: 'queue_entry_ticket_ref' })
  @Column(text)
  ticketId!: string;
  @Column(text) stepId!: string;
  @Column(text) deviceId!: string;
  @Column(text) status!: EntryStatus;
  @Column(text) delivery!: Delivery;
  @Column(maybe(text)) deviceEntryId!: string | null;
  @Column({ type: 'integer' }) attempt!: number;
  @Column(maybe(instant)) notBefore!: Instant | null;
  @Column(maybe(text)) lastError!: string | null;
  @Column({ type: 'boolean' }) returned!: boolean;
  @Column(maybe(text)) wanted!: QueueEntry['wanted'];
  @Column(amount) priority!: number;
  @Column(instant) submitted!: Instant;
  @Column(maybe(instant)) start!: Instant | null;
  @Column(maybe(instant)) end!: Instant | null;
}
