import { Column, Entity, ForeignKey, Index, PrimaryColumn } from 'typeorm';
import type { Activation, DocumentKind, Ticket, TicketStatus } from '#libs/flow';
import type { Instant, Problem } from '#libs/kernel';
import { amount, instant, json, key, maybe, text } from './columns.js';
import { DocumentEntity } from './document.entity.js';

/** A ticket without its plan, which is large, hardly ever changes, and has a table of its own. */
@Entity('ticket')
@Index('ticket_newest', ['createdAt', 'id'])
@Index('ticket_status', ['status', 'createdAt', 'id'])
@Index('ticket_job', ['jobId'])
export class TicketEntity implements Omit<Ticket, 'plan'> {
  @PrimaryColumn(key('ticket')) id!: string;
  @Column(text) jobId!: string;
  @Column(maybe(text)) jobPartId!: string | null;
  @Column(text) name!: string;
  @Column(maybe(text)) customer!: string | null;
  @Column(text) status!: TicketStatus;
  @Column(maybe(text)) statusDetails!: string | null;
  @Column(text) activation!: Activation;
  @Column(amount) quantity!: number;
  @Column(maybe(instant)) due!: Instant | null;
  @Column(amount) priority!: number;
  @Column(text) kind!: DocumentKind;
  @ForeignKey(() => DocumentEntity, { name: 'ticket_document_ref' })
  @Column(text)
  documentId!: string;
  @Column(maybe(text)) documentPart!: string | null;
  @Column(text) intake!: string;
  @Column(maybe(text)) returnUrl!: string | null;
  @Column(json) problems!: readonly Problem[];
  @Column(instant) createdAt!: Instant;
  @Column(instant) updatedAt!: Instant;
  @Column({ type: 'integer' }) revision!: number;
  /** The revision that wrote the plan; null without one. Tells a reader whether the plan it remembers is still it. */
  @Column({ type: 'integer', nullable: true }) planRevision!: number | null;
}
