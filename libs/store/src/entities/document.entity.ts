import { Column, Entity, PrimaryColumn } from 'typeorm';
import type { StoredDocument } from '#libs/flow';
import type { Instant } from '#libs/kernel';
import { instant, key, maybe, text } from './columns.js';

@Entity('document')
export class DocumentEntity implements StoredDocument {
  @PrimaryColumn(key('document')) id!: string;
  @Column(text) sha256!: string;
  @Column(text) mediaType!: string;
  @Column(maybe(text)) name!: string | null;
  @Column({ type: 'bytea' }) bytes!: Uint8Array;
  @Column(instant) receivedAt!: Instant;
}
