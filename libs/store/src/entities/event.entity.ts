import { Column, Entity, Index, PrimaryGeneratedColumn } from 'typeorm';
import type { EventType, NewEvent } from '#libs/flow';
import type { Instant } from '#libs/kernel';
import { instant, json, maybe, place, text } from './columns.js';

/**
 * The log. `id` is drawn when a row is inserted, so a transaction that commits late shows a low id late: readers never
 * use it. `position` is given afterwards to rows that are committed, without gaps, and is what readers go by.
 */
@Entity('event')
@Index('event_position', ['position'], { unique: true, where: '("position" IS NOT NULL)' })
@Index('event_unplaced', ['id'], { where: '("position" IS NULL)' })
@Index('event_ticket', ['ticketId', 'position'])
@Index('event_device', ['deviceId', 'position'], { where: '(device_id IS NOT NULL)' })
export class EventEntity implements NewEvent {
  @PrimaryGeneratedColumn('identity', {
    type: 'bigint',
    generatedIdentity: 'BY DEFAULT',
    primaryKeyConstraintName: 'event_pkey',
  })
  id!: number;
  @Column(maybe(place)) position!: number | null;
  @Column(text) type!: EventType;
  @Column(instant) time!: Instant;
  @Column(maybe(text)) ticketId!: string | null;
  @Column(maybe(text)) stepId!: string | null;
  @Column(maybe(text)) deviceId!: string | null;
  @Column(json) data!: Readonly<Record<string, unknown>>;
}
