import { Column, Entity, PrimaryColumn } from 'typeorm';
import type { Device, DeviceKind, DeviceStatus, Source } from '#libs/flow';
import type { Instant } from '#libs/kernel';
import { amount, instant, key, maybe, text } from './columns.js';

@Entity('device')
export class DeviceEntity implements Device {
  @PrimaryColumn(key('device')) id!: string;
  @Column(text) kind!: DeviceKind;
  @Column(text) name!: string;
  @Column(text) driver!: string;
  @Column(maybe(text)) url!: string | null;
  @Column(text) status!: DeviceStatus;
  @Column(maybe(text)) statusDetails!: string | null;
  @Column(maybe(text)) job!: string | null;
  @Column(maybe(text)) ticketId!: string | null;
  @Column(maybe(text)) stepId!: string | null;
  @Column(maybe(amount)) speed!: number | null;
  @Column(instant) since!: Instant;
  @Column(text) source!: Source;
  @Column(maybe(instant)) lastSeen!: Instant | null;
  @Column(maybe(text)) silentBecause!: string | null;
}
